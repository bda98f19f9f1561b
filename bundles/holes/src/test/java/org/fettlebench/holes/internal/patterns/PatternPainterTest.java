package org.fettlebench.holes.internal.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.holes.internal.Drawn;
import org.fettlebench.holes.patterns.HolePattern;
import org.fettlebench.holes.patterns.MeasuredPattern;
import org.fettlebench.holes.patterns.MeasuredPattern.Hole;
import org.fettlebench.holes.patterns.MeasuredPattern.MeasuredPart;
import org.fettlebench.holes.patterns.PatternFit;
import org.fettlebench.holes.patterns.PatternFit.HoleFit;
import org.fettlebench.holes.patterns.PatternFit.Opening;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;

/** A ring of six, 5.4 mm over 5 mm screws, its third tapped hole 1 mm out to the right. */
class PatternPainterTest {
  private static final double EXACT = 1e-9;
  private static final List<Point> RING = HolePattern.circle("ring", 40, 6, 20).centres();

  private static MeasuredPart part(String name, OptionalDouble hole, List<Point> centres) {
    return new MeasuredPart(name, centres.stream().map(at -> new Hole(at, hole)).toList());
  }

  private static List<Point> out() {
    List<Point> out = new ArrayList<>(RING);
    out.set(2, RING.get(2).moved(1, 0));
    return out;
  }

  private static PatternFit fit(List<Point> upper, List<Point> lower, boolean circle) {
    return new PatternsService()
        .fit(
            new MeasuredPattern(
                "flange",
                5,
                part("cover", OptionalDouble.of(5.4), upper),
                part("body", OptionalDouble.empty(), lower),
                circle));
  }

  private static Drawn drawn(PatternFit fit) {
    return new Drawn(new PatternPainter().draw(fit, LengthUnit.MILLIMETRE));
  }

  @Test
  void everyPairIsDrawnAsItLiesTogether() {
    PatternFit fit = fit(RING, out(), false);
    Drawn drawn = drawn(fit);
    List<Item.Circle> upper = new ArrayList<>(drawn.circles(LineKind.OUTLINE));
    upper.addAll(drawn.circles(LineKind.GOVERNING));
    assertEquals(6, upper.size());
    for (HoleFit hole : fit.holes()) {
      LineKind line = hole.governs() ? LineKind.GOVERNING : LineKind.OUTLINE;
      assertTrue(upper.contains(new Item.Circle(line, hole.upper(), 2.7)), hole.toString());
      // Tapped: as wide as the screw.
      assertTrue(
          drawn
              .circles(LineKind.HIDDEN)
              .contains(new Item.Circle(LineKind.HIDDEN, hole.lower(), 2.5)));
      Item.Label label =
          drawn.labels().stream()
              .filter(each -> each.words().startsWith(hole.upperNumber() + ": "))
              .findFirst()
              .orElseThrow();
      assertEquals(hole.upper().moved(0, 2.7), label.at());
      assertEquals(hole.governs(), label.strong());
    }
    assertEquals(fit.holes().stream().map(HoleFit::upper).toList(), drawn.markers(Item.Mark.CROSS));
    assertEquals(
        fit.holes().stream().map(HoleFit::lower).toList(), drawn.markers(Item.Mark.SALTIRE));
    assertTrue(drawn.circles(LineKind.GOVERNING).size() >= 2);
  }

  @Test
  void theMetalToFileIsDrawnOnItsHole() {
    PatternFit fit = fit(RING, out(), false);
    Opening file = fit.cures().get(0).openings().get(0);
    Drawn drawn = drawn(fit);
    List<Point> crescent = drawn.areas(Tone.ALLOWED).get(0).shell();
    double reach = crescent.stream().mapToDouble(RING.get(2)::distanceMm).max().orElseThrow();
    assertEquals(2.7 + file.fileMm(), reach, EXACT);
    assertEquals(1, drawn.areas(Tone.ALLOWED).size());
    Item.Label words =
        drawn.labels().stream()
            .filter(each -> each.words().startsWith("file "))
            .findFirst()
            .orElseThrow();
    assertEquals(RING.get(2).xMm(), words.at().xMm(), EXACT);
    assertEquals(RING.get(2).yMm() - reach, words.at().yMm(), EXACT);
  }

  @Test
  void whatGoesTogetherHasNothingToFile() {
    Drawn drawn = drawn(fit(RING, RING, false));
    assertEquals(List.of(), drawn.areas(Tone.ALLOWED));
    assertEquals(
        "flange: goes together, 0.20 mm to spare at the worst hole", drawn.drawing().title());
    PatternFit fails = fit(RING, out(), false);
    assertTrue(
        drawn(fails)
            .drawing()
            .title()
            .matches("flange: does not go together, 0\\.\\d+ mm lacking at the worst hole"),
        drawn(fails).drawing().title());
  }

  @Test
  void aRingTurnedOnNamesBothNumbers() {
    List<Point> lower = new ArrayList<>(out());
    Collections.rotate(lower, 2);
    Drawn drawn = drawn(fit(out(), lower, true));
    assertEquals("1 on 3: 0.20 mm", drawn.labels().get(0).words());
  }

  @Test
  void everythingLiesInTheFrame() {
    Drawing.Frame frame = drawn(fit(RING, out(), false)).drawing().frame();
    double reach = 20 + 2.7;
    assertTrue(frame.maxYMm() > reach && frame.maxYMm() < reach + 6, frame.toString());
    assertTrue(frame.minYMm() < -reach && frame.minYMm() > -reach - 6, frame.toString());
  }
}
