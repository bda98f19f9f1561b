package org.fettlebench.castings.internal;

import static org.fettlebench.castings.internal.TrialDrawings.all;
import static org.fettlebench.castings.internal.TrialDrawings.area;
import static org.fettlebench.castings.internal.TrialDrawings.draw;
import static org.fettlebench.castings.internal.TrialDrawings.face;
import static org.fettlebench.castings.internal.TrialDrawings.place;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Casting;
import org.fettlebench.castings.CastingView;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Freedom;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.PlacingWords;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.castings.Towards;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.SvgWriter;
import org.fettlebench.drawing.Tone;
import org.fettlebench.measure.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is drawn is measured: areas and places against sums done on paper. */
class CastingPainterTest {
  /** A block 40 by 20 by 25 finished, rough 43 by 22 by 28. */
  private static Placing block(double rightMm) {
    return place(
        face("left", Towards.LEFT, 0, new Spot(-1.5, 0, 12)),
        face("right", Towards.RIGHT, 40, new Spot(rightMm, 0, 12)),
        face("near", Towards.NEAR, 0, new Spot(20, -1, 12)),
        face("far", Towards.FAR, 20, new Spot(20, 21, 12)),
        face("foot", Towards.DOWN, 0, new Spot(0, 0, -1.8), new Spot(40, 20, -1.8)),
        face("top", Towards.UP, 25, new Spot(0, 0, 26.2), new Spot(40, 20, 26.2)),
        new RoundFace(
            "bore",
            RoundFace.Kind.BORE,
            Axis.Y,
            new Spot(20, 0, 12),
            10,
            0.5,
            List.of(new RoundFace.Rough(new Spot(20, 0, 12), 6)),
            0));
  }

  @Test
  void theHatchedMetalIsTheRoughLessTheFinished() {
    double hatched = area(draw(block(41.5), CastingView.PLAN), Tone.WALL);
    assertEquals(43 * 22 - 40 * 20, hatched, 1e-6);
  }

  @Test
  void finishedFacesAreWideAndWhatGovernsIsWider() {
    Placing placing = block(41.5);
    List<Item.Path> paths = all(draw(placing, CastingView.PLAN), Item.Path.class);
    // Near and far have least spare, and a bore lies between them in its own way.
    assertEquals(2, paths.stream().filter(p -> p.line() == LineKind.GOVERNING).count());
    assertEquals(2, paths.stream().filter(p -> p.line() == LineKind.OUTLINE).count());
    assertEquals(2, paths.stream().filter(p -> p.line() == LineKind.HIDDEN).count(), "the bore");
    Item.Path near =
        paths.stream().filter(p -> p.line() == LineKind.GOVERNING).findFirst().orElseThrow();
    assertEquals(40, Math.abs(near.points().get(0).xMm() - near.points().get(1).xMm()), 1e-6);
  }

  @Test
  void aBoreIsACircleFromItsEndWithItsFigure() {
    Drawing front = draw(block(41.5), CastingView.FRONT);
    List<Item.Circle> circles = all(front, Item.Circle.class);
    assertEquals(List.of(3.0, 5.0), circles.stream().map(Item.Circle::radiusMm).toList());
    assertTrue(
        all(front, Item.Label.class).stream()
            .anyMatch(label -> label.words().equals("bore\n1.70 mm per side")),
        front.toString());
  }

  @Test
  void aTurnedPartLiesTurnedInTheRough() {
    // The foot rises 1 in 40; the part may follow it by a turn about y.
    Placing placing =
        new CastingPlacer()
            .place(
                new Casting(
                    "wedge",
                    List.of(
                        face("foot", Towards.DOWN, 0, new Spot(0, 0, 0), new Spot(40, 0, 1)),
                        face("top", Towards.UP, 25, new Spot(0, 0, 28), new Spot(40, 0, 29))),
                    new Freedom(Set.of(Axis.Z), Set.of(Axis.Y), 3)));
    Item.Path foot =
        all(draw(placing, CastingView.FRONT), Item.Path.class).stream()
            .filter(path -> path.line() == LineKind.GOVERNING)
            .findFirst()
            .orElseThrow();
    var from = foot.points().get(0);
    var to = foot.points().get(1);
    assertEquals(1 / 40.0, (to.yMm() - from.yMm()) / (to.xMm() - from.xMm()), 1e-4);
  }

  @ParameterizedTest
  @EnumSource
  void everyViewOfEveryCastingCanBeDrawn(CastingView view) {
    Placing single =
        new CastingPlacer()
            .place(
                new Casting(
                    "plate",
                    List.of(
                        face("foot", Towards.DOWN, 0, new Spot(0, 0, 0.2)),
                        face("top", Towards.UP, 25, new Spot(0, 0, 25.4))),
                    new Freedom(Set.of(Axis.Z), Set.of(), 1)));
    for (Placing placing : List.of(single, block(41.5), block(39))) {
      String svg = SvgWriter.write(draw(placing, view), 180, 120);
      assertTrue(svg.contains(placing.cleansUp() ? "cleans up" : "will not clean up"), svg);
    }
  }

  /** 40.5 rough, 40 finished, 0.5 each: short 0.25, so a cut of 0.25 is left on both. */
  @Test
  void lessCutIsWhatCleansUpWhenItAloneIsAsked() {
    Placing placing = block(39);
    assertEquals(-0.25, placing.spareMm(), 5e-6);
    List<Placing.LessCut> less = placing.lessCuts();
    assertEquals(
        List.of("left", "right"), less.stream().map(each -> each.feature().name()).toList());
    Casting again = placing.casting();
    for (Placing.LessCut each : less) {
      FlatFace face = (FlatFace) each.feature();
      assertEquals(0.25, each.cutMm(), 5e-6);
      again =
          again.with(
              new FlatFace(
                  face.name(), face.towards(), face.finishedMm(), each.cutMm(), face.rough(), 0));
    }
    assertEquals(0, new CastingPlacer().place(again).spareMm(), 5e-6);
  }

  @Test
  void wordsSayWhatGivesAndWhatSkinStays() {
    PlacingWords words = new PlacingWords(block(39), LengthUnit.MILLIMETRE);
    assertEquals("will not clean up", words.verdict());
    assertEquals("by 0.25 mm (0.010 in)", words.spare());
    assertEquals("left and right govern", words.governs());
    assertTrue(
        words
            .givings()
            .contains(
                "right gives 0.50 mm (0.020 in) (deeper): x 39.50 mm (1.555 in) in place of 40.00 mm (1.575 in)"),
        words.givings().toString());
    assertEquals(
        "left: a cut of 0.25 mm (0.010 in) in place of 0.50 mm (0.020 in); skin may show",
        words.lessCuts().get(0));
    PlacingWords worse = new PlacingWords(block(37), LengthUnit.MILLIMETRE);
    assertTrue(
        worse.lessCuts().stream().anyMatch(each -> each.contains("a hollow stays")),
        worse.lessCuts().toString());
  }
}
