package org.fettlebench.castings.internal;

import static org.fettlebench.castings.internal.TrialDrawings.all;
import static org.fettlebench.castings.internal.TrialDrawings.area;
import static org.fettlebench.castings.internal.TrialDrawings.draw;
import static org.fettlebench.castings.internal.TrialDrawings.face;
import static org.fettlebench.castings.internal.TrialDrawings.label;
import static org.fettlebench.castings.internal.TrialDrawings.lines;
import static org.fettlebench.castings.internal.TrialDrawings.place;
import static org.fettlebench.castings.internal.TrialDrawings.round;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.fettlebench.castings.CastingView;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.castings.Towards;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;

/** Bores and bosses on the drawing: areas and places against sums done on paper. */
class RoundPictureTest {
  /** A circle in 96 chords has this share of its area: (96 / 2 pi) sin(2 pi / 96). */
  private static final double CHORDS = 96 / (2 * Math.PI) * Math.sin(2 * Math.PI / 96);

  /** A bar 38 mm thick and 50 long out of one 42 thick and 54 long, bored 20 out of 16. */
  private static Placing bar() {
    return place(
        face("front", Towards.NEAR, 0, new Spot(0, -2, 0)),
        face("back", Towards.FAR, 50, new Spot(0, 52, 0)),
        round(RoundFace.Kind.BOSS, 0, 0, 38, 42),
        round(RoundFace.Kind.BORE, 0, 0, 20, 16));
  }

  @Test
  void fromTheEndRingsOfMetalComeOff() {
    Drawing end = draw(bar(), CastingView.FRONT);
    // The rim as a disc under the part's, and the bore as one under the core's.
    double rim = Math.PI * 21 * 21 * CHORDS;
    double bore = Math.PI * 10 * 10 * CHORDS;
    assertEquals(rim + bore, area(end, Tone.WALL), 1e-6);
    assertEquals(Math.PI * 8 * 8 * CHORDS, area(end, Tone.EMPTY), 1e-6);
    // The body is the boss, drawn once for itself and once over its ring.
    assertEquals(2 * Math.PI * 19 * 19 * CHORDS, area(end, Tone.PART), 1e-6);
    assertEquals(
        List.of(21.0, 19.0, 8.0, 10.0),
        all(end, Item.Circle.class).stream().map(Item.Circle::radiusMm).toList());
  }

  @Test
  void fromBesideTheRoughOfABossStandsOutAndABoreIsDashedThoughItGoverns() {
    Placing bar = bar();
    assertTrue(bar.features().stream().allMatch(Placing.Coming::governs), "all have 1.5 to spare");
    Drawing beside = draw(bar, CastingView.PLAN);
    // 2 mm over 38 x 50 at both ends, and 2 mm along both sides.
    assertEquals(2 * 2 * 38 + 2 * 2 * 50, area(beside, Tone.WALL), 1e-6);
    List<List<Point>> dashed = lines(beside, LineKind.HIDDEN);
    assertEquals(2, dashed.size());
    for (List<Point> side : dashed) {
      assertEquals(10, Math.abs(side.get(0).xMm()), 1e-6);
      assertEquals(10, Math.abs(side.get(1).xMm()), 1e-6);
      assertEquals(50, Math.abs(side.get(0).yMm() - side.get(1).yMm()), 1e-6);
    }
    // Both ends and both sides of the boss.
    assertEquals(4, lines(beside, LineKind.GOVERNING).size());
    assertEquals(1, lines(beside, LineKind.CENTRE).stream().distinct().count(), "one axis");
  }

  @Test
  void aLeaderRunsFromTheCircleToWordsOutsideThePart() {
    Drawing end = draw(bar(), CastingView.FRONT);
    Item.Label boss = label(end, "boss\n2.00 mm per side");
    Item.Label bore = label(end, "bore\n2.00 mm per side");
    assertTrue(boss.at().xMm() > 21 && bore.at().xMm() < -21, "on either side, outside");
    assertEquals(Item.Side.RIGHT, boss.side());
    assertEquals(Item.Side.LEFT, bore.side());
    leadsTo(end, boss.at(), 19);
    leadsTo(end, bore.at(), 10);
  }

  private static void leadsTo(Drawing drawing, Point words, double radius) {
    List<Point> leader =
        lines(drawing, LineKind.THIN).stream()
            .filter(line -> line.get(1).equals(words))
            .findFirst()
            .orElseThrow();
    Point centre = new Point(0, 0);
    assertEquals(radius, leader.get(0).distanceMm(centre), 1e-6);
    double straight = words.distanceMm(leader.get(0)) + radius;
    assertEquals(words.distanceMm(centre), straight, 1e-6, "it points at the centre");
  }

  /** Words of faces at the right leave the left side to the bore's. */
  @Test
  void wordsStandWhereNoFaceHasItsOwn() {
    Placing placing =
        place(
            face("left end", Towards.LEFT, -30, new Spot(-32, 0, 0)),
            face("right end", Towards.RIGHT, 30, new Spot(32, 0, 0)),
            round(RoundFace.Kind.BORE, 0, 0, 20, 16));
    Feature right = placing.casting().features().get(1);
    Feature bore = placing.casting().features().get(2);
    CastingPainter painter = new CastingPainter();
    Drawing drawing =
        painter.draw(placing, CastingView.FRONT, LengthUnit.MILLIMETRE, Set.of(right, bore));
    assertEquals(2, all(drawing, Item.Label.class).size(), "only two are named");
    assertEquals(Item.Side.LEFT, label(drawing, "bore").side());
    Drawing whole = draw(placing, CastingView.FRONT);
    assertEquals(3, all(whole, Item.Label.class).size());
    double up = label(whole, "bore").at().yMm() - label(whole, "right end").at().yMm();
    assertTrue(up > 5, "between two named sides it stands in a corner: " + up);
  }
}
