package org.fettlebench.holes.internal.correct;

import static org.fettlebench.holes.internal.correct.Lug.TARGET;
import static org.fettlebench.holes.internal.correct.Lug.ask;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.fits.internal.SeatChecker;
import org.fettlebench.holes.correct.CorrectionQuestion.Around;
import org.fettlebench.holes.internal.Drawn;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;

/** The hole alone, 4 mm wide and to become 6 mm. */
class HolePictureTest {
  private static final double EXACT = 1e-9;
  private final CorrectionFinder finder = new CorrectionFinder(new SeatChecker());

  private Drawn drawn(double dx, double dy) {
    return new Drawn(
        finder.drawHole(finder.correct(ask(dx, dy, 0.02, Around.NOTHING)), LengthUnit.MILLIMETRE));
  }

  @Test
  void metalIsDrawnRoundTheHoleAndNothingInIt() {
    Drawn drawn = drawn(0.5, 0);
    Point found = TARGET.moved(0.5, 0);
    double metal = Drawn.radius(drawn.areas(Tone.PART).get(0), TARGET);
    assertTrue(metal > 3.3 && metal < 4.5, "metal past the finished hole: " + metal);
    assertEquals(2, Drawn.radius(drawn.areas(Tone.EMPTY).get(0), found), EXACT);
    assertEquals(List.of(TARGET), drawn.markers(Item.Mark.CROSS));
    assertEquals(List.of(found), drawn.markers(Item.Mark.SALTIRE));
    assertEquals(2, drawn.paths(LineKind.CENTRE).size());
    double length = drawn.paths(LineKind.CENTRE).get(0).points().get(0).distanceMm(TARGET);
    assertTrue(length > 3 && length < metal, "centre line past the finished hole: " + length);
  }

  /** Where the hole found reaches past the finished one, the metal is drawn past both. */
  @Test
  void metalIsDrawnRoundAHoleFarOut() {
    double metal = Drawn.radius(drawn(3, 0).areas(Tone.PART).get(0), TARGET);
    assertTrue(metal > 5 && metal < 7, "metal past 3 + 2: " + metal);
  }

  /** 150 degrees to both sides of the left, where it is filed. */
  @Test
  void theFiledOutlineLeavesTheUntouchedSideFree() {
    List<Point> arc = drawn(0.5, 0).paths(LineKind.GOVERNING).get(0).points();
    double half = Math.toRadians(150);
    Point start = TARGET.moved(-2.5 * Math.cos(half), 2.5 * Math.sin(half));
    Point end = TARGET.moved(-2.5 * Math.cos(half), -2.5 * Math.sin(half));
    assertEquals(0, arc.get(0).distanceMm(start), EXACT);
    assertEquals(0, arc.get(arc.size() - 1).distanceMm(end), EXACT);
  }

  @Test
  void sizesHaveLinesFromTheHoleToTheirDimensions() {
    Drawn drawn = drawn(0.5, 0);
    for (String words : List.of("finished 6.00 mm", "filed 5.00 mm")) {
      Item.Dimension size = drawn.dimension(words);
      for (Point end : List.of(size.from(), size.to())) {
        assertTrue(
            drawn.paths(LineKind.THIN).stream()
                .anyMatch(
                    line -> line.points().equals(List.of(new Point(end.xMm(), TARGET.yMm()), end))),
            words + " at " + end);
      }
    }
    assertEquals(4, drawn.paths(LineKind.THIN).size());
  }

  @Test
  void theTitleTellsWhatToFileOrHowFarOut() {
    assertEquals(
        "the hole: file 1.00 mm off the side towards 9 o'clock (left)",
        drawn(0.5, 0).drawing().title());
    assertEquals("the hole, out by 1.20 mm", drawn(0, 1.2).drawing().title());
    assertEquals("the hole: on target", drawn(0, 0).drawing().title());
  }

  @Test
  void aHoleOnTargetHasNothingToFileAndNoErrorDrawn() {
    Drawn drawn = drawn(0, 0);
    assertEquals(List.of(), drawn.paths(LineKind.HATCH));
    assertEquals(1, drawn.dimensions().size());
  }
}
