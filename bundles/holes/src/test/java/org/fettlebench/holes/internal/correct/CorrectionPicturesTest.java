package org.fettlebench.holes.internal.correct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.internal.SeatChecker;
import org.fettlebench.holes.correct.CleanUp;
import org.fettlebench.holes.correct.CorrectionAnswer;
import org.fettlebench.holes.correct.CorrectionQuestion;
import org.fettlebench.holes.correct.CorrectionQuestion.Around;
import org.fettlebench.holes.correct.CorrectionQuestion.Found;
import org.fettlebench.holes.correct.CorrectionQuestion.Rules;
import org.fettlebench.holes.correct.CorrectionQuestion.Tools;
import org.fettlebench.holes.correct.ExpectedError;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The pictures are measured: what is drawn must be what was worked out, on the right side. */
class CorrectionPicturesTest {
  private static final double EXACT = 1e-9;
  private static final Point TARGET = new Point(10, 8);
  private static final double ERROR = 0.5;
  private static final double DRILLED = 2;
  private static final double FILED = 2.5;
  private static final double FINISHED = 3;

  private final CorrectionFinder finder = new CorrectionFinder(new SeatChecker());

  private CorrectionAnswer out(double degrees, double error) {
    double turn = Math.toRadians(degrees);
    Point found = TARGET.moved(error * Math.cos(turn), error * Math.sin(turn));
    Seat seat =
        Seat.flat(
            "lug",
            Outline.of(
                List.of(new Point(0, 0), new Point(20, 0), new Point(20, 16), new Point(0, 16))),
            TARGET);
    SeatedHead head =
        new SeatedHead(
            "round",
            15.5,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            "");
    return finder.correct(
        new CorrectionQuestion(
            TARGET,
            new Found(found, 2 * DRILLED, 0.02),
            2 * FINISHED,
            new Rules(
                new CleanUp(0.1, "a test"),
                new ExpectedError("filing", 0.1, "a test"),
                1,
                "a test"),
            new Tools(List.of(), List.of()),
            new Around(
                Optional.of(new SeatQuestion(seat, head, 6, 0.1, "a test")), List.of(), false)));
  }

  private static List<List<Point>> paths(Drawing drawing, LineKind kind) {
    return drawing.items().stream()
        .filter(Item.Path.class::isInstance)
        .map(Item.Path.class::cast)
        .filter(path -> path.line() == kind)
        .map(Item.Path::points)
        .toList();
  }

  private static double degreesFrom(Point centre, Point at) {
    return Math.toDegrees(Math.atan2(at.yMm() - centre.yMm(), at.xMm() - centre.xMm()));
  }

  private static double apart(double one, double other) {
    double difference = Math.abs(one - other) % 360;
    return Math.min(difference, 360 - difference);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 30, 90, 135, 200, 270, 313})
  void theHatchedCrescentIsTheMetalBetweenBothCircles(double degrees) {
    CorrectionAnswer answer = out(degrees, ERROR);
    Point found = answer.question().found().centre();
    List<List<Point>> hatches =
        paths(finder.drawHole(answer, LengthUnit.MILLIMETRE), LineKind.HATCH);
    double length = 0;
    for (List<Point> hatch : hatches) {
      Point a = hatch.get(0);
      Point b = hatch.get(1);
      for (Point end : hatch) {
        double toRim = Math.abs(end.distanceMm(found) - DRILLED);
        double toFiled = Math.abs(end.distanceMm(TARGET) - FILED);
        assertEquals(0, Math.min(toRim, toFiled), EXACT, "ends on one of both circles");
      }
      Point middle = new Point((a.xMm() + b.xMm()) / 2, (a.yMm() + b.yMm()) / 2);
      assertTrue(middle.distanceMm(found) >= DRILLED - EXACT, "not over the hole");
      assertTrue(middle.distanceMm(TARGET) <= FILED + EXACT, "not past the filed circle");
      assertEquals(b.yMm() - a.yMm(), b.xMm() - a.xMm(), EXACT, "at 45 degrees");
      length += a.distanceMm(b);
    }
    // Lines FILED / 12 apart over the crescent: their length is its area over that distance.
    double area = Math.PI * (FILED * FILED - DRILLED * DRILLED);
    assertEquals(area, length * FILED / 12, 0.05 * area);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 30, 90, 135, 200, 270, 313})
  void theHolesPictureHasItsSizes(double degrees) {
    CorrectionAnswer answer = out(degrees, ERROR);
    Drawing drawing = finder.drawHole(answer, LengthUnit.MILLIMETRE);
    assertTrue(
        drawing
            .items()
            .contains(
                new Item.Circle(LineKind.OUTLINE, answer.question().found().centre(), DRILLED)));
    assertTrue(drawing.items().contains(new Item.Circle(LineKind.HIDDEN, TARGET, FINISHED)));
    List<Item.Dimension> sizes =
        drawing.items().stream()
            .filter(Item.Dimension.class::isInstance)
            .map(Item.Dimension.class::cast)
            .toList();
    Item.Dimension finished = sized(sizes, "finished 6.00 mm");
    assertEquals(TARGET.xMm() - FINISHED, finished.from().xMm(), EXACT);
    assertEquals(TARGET.xMm() + FINISHED, finished.to().xMm(), EXACT);
    assertTrue(finished.from().yMm() < TARGET.yMm() - FINISHED, "clear below the hole");
    Item.Dimension filed = sized(sizes, "filed 5.00 mm");
    assertEquals(TARGET.xMm() - FILED, filed.from().xMm(), EXACT);
    assertEquals(TARGET.xMm() + FILED, filed.to().xMm(), EXACT);
    assertTrue(filed.from().yMm() > TARGET.yMm() + FINISHED, "clear above the hole");
    for (Point place : paths(drawing, LineKind.GOVERNING).get(0)) {
      assertEquals(FILED, place.distanceMm(TARGET), EXACT);
    }
    for (List<Point> leader : paths(drawing, LineKind.THIN)) {
      assertEquals(leader.get(0).xMm(), leader.get(1).xMm(), EXACT);
      assertEquals(TARGET.yMm(), leader.get(0).yMm(), EXACT);
    }
    Drawing.Frame frame = drawing.frame();
    assertTrue(frame.maxXMm() - frame.minXMm() < 8.5, "hardly wider than the hole");
  }

  private static Item.Dimension sized(List<Item.Dimension> all, String words) {
    return all.stream().filter(size -> size.words().equals(words)).findFirst().orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 30, 90, 135, 200, 270, 313})
  void theArrowOnTheFacePointsToTheSideToFile(double degrees) {
    CorrectionAnswer answer = out(degrees, ERROR);
    Point found = answer.question().found().centre();
    Drawing drawing = finder.drawFace(answer, LengthUnit.MILLIMETRE);
    List<List<Point>> heavy = paths(drawing, LineKind.OUTLINE);
    Point tip = heavy.get(heavy.size() - 1).get(1);
    assertEquals(DRILLED, tip.distanceMm(found), EXACT, "ends on the rim");
    assertEquals(0, apart(degreesFrom(found, tip), degrees + 180), 1e-6, "opposite the error");
    List<Point> arc = paths(drawing, LineKind.GOVERNING).get(0);
    for (Point place : arc) {
      assertEquals(FILED, place.distanceMm(TARGET), EXACT);
      assertTrue(apart(degreesFrom(TARGET, place), degrees + 180) <= 75 + 1e-6);
    }
    List<Point> leader = paths(drawing, LineKind.THIN).get(0);
    assertEquals(0, apart(degreesFrom(TARGET, leader.get(0)), degrees + 180), 1e-6);
    double level = leader.get(1).yMm();
    assertTrue(level > 16 || level < 0, "the words stand off the face: " + level);
    assertTrue(drawing.items().contains(new Item.Circle(LineKind.CENTRE, TARGET, 15.5 / 2)));
    assertTrue(drawing.items().contains(new Item.Marker(TARGET, Item.Mark.CROSS)));
    assertTrue(drawing.items().contains(new Item.Marker(found, Item.Mark.SALTIRE)));
    assertTrue(
        drawing.items().contains(new Item.Label(new Point(20, 16), "3", Item.Side.RIGHT, false)));
    assertTrue(
        drawing.items().contains(new Item.Label(new Point(0, 16), "4", Item.Side.LEFT, false)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {20, 110})
  void pastCureThePictureSaysHowFarOut(double degrees) {
    CorrectionAnswer answer = out(degrees, 1.2);
    Drawing drawing = finder.drawHole(answer, LengthUnit.MILLIMETRE);
    Item.Dimension out =
        drawing.items().stream()
            .filter(Item.Dimension.class::isInstance)
            .map(Item.Dimension.class::cast)
            .filter(Item.Dimension::strong)
            .findFirst()
            .orElseThrow();
    assertEquals("out 1.20 mm", out.words());
    assertEquals(TARGET, out.from());
    assertEquals(answer.question().found().centre(), out.to());
    assertTrue(paths(drawing, LineKind.HATCH).isEmpty());
    assertTrue(paths(finder.drawFace(answer, LengthUnit.MILLIMETRE), LineKind.GOVERNING).isEmpty());
  }
}
