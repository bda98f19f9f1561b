package org.fettlebench.holes.internal.correct;

import static org.fettlebench.holes.internal.correct.Lug.TARGET;
import static org.fettlebench.holes.internal.correct.Lug.ask;
import static org.fettlebench.holes.internal.correct.Lug.round;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.internal.SeatChecker;
import org.fettlebench.holes.correct.CorrectionQuestion.Around;
import org.fettlebench.holes.internal.Drawn;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The face is drawn with all that stands on it, and the words for the file outside it. */
class FacePictureTest {
  private static final double EXACT = 1e-9;
  private static final List<Point> FLAT =
      List.of(new Point(0, 0), new Point(20, 0), new Point(20, 16), new Point(0, 16));
  private static final List<Point> CAVITY =
      List.of(new Point(1, 1), new Point(2, 1), new Point(2, 2));

  private final CorrectionFinder finder = new CorrectionFinder(new SeatChecker());

  private static Around walled() {
    Seat seat =
        new Seat(
            "lug",
            Outline.of(FLAT),
            Optional.empty(),
            List.of(new Seat.Wall("barrel", new Point(0, 16), new Point(20, 16), 9, 0)),
            List.of(Outline.of(CAVITY)),
            List.of(),
            TARGET,
            0);
    return new Around(
        Optional.of(new SeatQuestion(seat, round(15.5), 6, 0.3, "a test")), List.of(), false);
  }

  private Drawn drawn(double dx, double dy, Around around) {
    return new Drawn(
        finder.drawFace(finder.correct(ask(dx, dy, 0.02, around)), LengthUnit.MILLIMETRE));
  }

  @Test
  void theFaceHasItsWallAndItsCavity() {
    Drawn drawn = drawn(0.5, 0, walled());
    assertEquals(FLAT, drawn.areas(Tone.PART).get(0).shell());
    assertEquals(FLAT, drawn.paths(LineKind.OUTLINE).get(0).points());
    assertEquals(CAVITY, drawn.paths(LineKind.HIDDEN).get(0).points());
    assertEquals(
        List.of(new Point(0, 16), new Point(20, 16)),
        drawn.paths(LineKind.GOVERNING).get(0).points());
    assertEquals(
        new Item.Label(new Point(10, 16), "barrel", Item.Side.ABOVE, false), drawn.label("barrel"));
  }

  @Test
  void theHoleIsDrawnAsFoundAndAsItShallBe() {
    Drawn drawn = drawn(0.5, 0, walled());
    Point found = TARGET.moved(0.5, 0);
    assertEquals(2, Drawn.radius(drawn.areas(Tone.EMPTY).get(0), found), EXACT);
    assertEquals(
        new Item.Circle(LineKind.OUTLINE, found, 2), drawn.circles(LineKind.OUTLINE).get(0));
    assertEquals(
        List.of(new Item.Circle(LineKind.HIDDEN, TARGET, 3)), drawn.circles(LineKind.HIDDEN));
    List<Item.Path> lines = drawn.paths(LineKind.CENTRE);
    assertEquals(2, lines.size());
    for (Item.Path line : lines) {
      Point from = line.points().get(0);
      Point to = line.points().get(1);
      assertEquals(TARGET.xMm(), (from.xMm() + to.xMm()) / 2, EXACT);
      assertEquals(TARGET.yMm(), (from.yMm() + to.yMm()) / 2, EXACT);
      assertTrue(from.distanceMm(to) > 6 && from.distanceMm(to) < 12, "past the finished hole");
    }
  }

  @Test
  void theTitleTellsTheErrorAndTheOutcome() {
    assertEquals(
        "the face: hole out by 0.50 mm towards 3 o'clock (right), leave it",
        drawn(0.5, 0, walled()).drawing().title());
    assertEquals("the face: hole on target", drawn(0, 0, walled()).drawing().title());
  }

  /** Above the face for what is filed on its far side, below it for its near side. */
  @ParameterizedTest
  @ValueSource(doubles = {0.5, -0.5})
  void theWordsStandOffTheFace(double dy) {
    Drawn drawn = drawn(0, dy, walled());
    Item.Label words = drawn.label("file 1.00 mm here");
    assertEquals(dy > 0 ? Item.Side.BELOW : Item.Side.ABOVE, words.side());
    double off = dy > 0 ? -words.at().yMm() : words.at().yMm() - 16;
    assertTrue(off > 1 && off < 4, "off the face by " + off);
    assertTrue(words.strong());
  }

  @Test
  void filedStraightSidewaysTheWordsStandAboveAndTowardsThatSide() {
    Item.Label left = drawn(0.5, 0, walled()).label("file 1.00 mm here");
    assertEquals(Item.Side.ABOVE, left.side());
    assertTrue(left.at().xMm() < TARGET.xMm() - 3, left.toString());
    Item.Label right = drawn(-0.5, 0, walled()).label("file 1.00 mm here");
    assertTrue(right.at().xMm() > TARGET.xMm() + 3, right.toString());
  }

  /** Without a face the words stand clear of the finished hole. */
  @ParameterizedTest
  @ValueSource(doubles = {0.5, -0.5})
  void withoutAFaceTheHoleStandsAlone(double dy) {
    Drawn drawn = drawn(0, dy, Around.NOTHING);
    assertEquals(List.of(), drawn.areas(Tone.PART));
    Item.Label words = drawn.label("file 1.00 mm here");
    double away = words.at().yMm() - TARGET.yMm();
    assertTrue(dy > 0 ? away < -3 : away > 3, "clear of the finished hole: " + away);
    assertTrue(Math.abs(away) < 10, "but beside it: " + away);
    assertEquals(dy > 0 ? Item.Side.BELOW : Item.Side.ABOVE, words.side());
  }

  /** The arrow's head is part of the way from the middle of the hole to its rim. */
  @Test
  void theArrowsHeadIsSeen() {
    Drawn drawn = drawn(0.5, 0, Around.NOTHING);
    List<Item.Path> arrow = drawn.paths(LineKind.OUTLINE);
    Point neck = arrow.get(0).points().get(1);
    Point found = TARGET.moved(0.5, 0);
    assertEquals(found, arrow.get(0).points().get(0));
    assertTrue(neck.distanceMm(found) > 0.8 && neck.distanceMm(found) < 1.6, neck.toString());
    List<Point> arc = drawn.paths(LineKind.GOVERNING).get(0).points();
    // 75 degrees to both sides of the left, where it is filed.
    double half = Math.toRadians(75);
    Point end = TARGET.moved(-2.5 * Math.cos(half), 2.5 * Math.sin(half));
    assertEquals(0, arc.get(0).distanceMm(end), EXACT);
  }

  @Test
  void theFrameHoldsTheFaceAndTheWords() {
    Drawing.Frame frame = drawn(0, -0.5, walled()).drawing().frame();
    assertTrue(frame.minXMm() < -0.5 && frame.minXMm() > -2, frame.toString());
    assertTrue(frame.minYMm() < -0.5 && frame.minYMm() > -2, frame.toString());
    assertTrue(frame.maxYMm() > 17 && frame.maxYMm() < 20, frame.toString());
  }
}
