package org.fettlebench.holes.internal.otherface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.fits.internal.SeatChecker;
import org.fettlebench.holes.correct.ExpectedError;
import org.fettlebench.holes.internal.Drawn;
import org.fettlebench.holes.otherface.FaceMark;
import org.fettlebench.holes.otherface.MarkQuestion;
import org.fettlebench.holes.otherface.MarkQuestion.Faces;
import org.fettlebench.holes.otherface.MarkQuestion.Hole;
import org.fettlebench.holes.otherface.Turn;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;

class FarFacePictureTest {
  private static final double EXACT = 1e-9;
  private static final List<Point> UPPER =
      List.of(new Point(0, 0), new Point(20, 0), new Point(20, 12), new Point(0, 12));

  /** Its left side leans: it runs from (-4, -1) up to (-1, 15). */
  private static final List<Point> FAR =
      List.of(new Point(-4, -1), new Point(22, -1), new Point(22, 15), new Point(-1, 15));

  private final FaceMarker marker = new FaceMarker(new SeatChecker());
  private final FaceMark mark =
      marker.mark(
          new MarkQuestion(
              "foot",
              new Point(5, 8),
              new Hole(3, 10, new ExpectedError("dotting", 0.2, "a test"), 0.01, "a test"),
              new Faces(UPPER, FAR),
              Turn.SIDEWAYS,
              List.of(4, 3),
              Optional.empty()));
  private final Drawn far = new Drawn(marker.draw(mark, LengthUnit.MILLIMETRE));
  private final Drawn above = new Drawn(marker.drawAbove(mark, LengthUnit.MILLIMETRE));

  private static List<Point> turned(List<Point> points) {
    return points.stream().map(at -> new Point(0 - at.xMm(), at.yMm())).toList();
  }

  @Test
  void theFaceTowardsThePersonIsFullAndTheOtherHidden() {
    assertEquals(turned(FAR), far.areas(Tone.PART).get(0).shell());
    assertEquals(turned(FAR), far.paths(LineKind.OUTLINE).get(0).points());
    assertEquals(turned(UPPER), far.paths(LineKind.HIDDEN).get(0).points());
    assertEquals(UPPER, above.areas(Tone.PART).get(0).shell());
    assertEquals(UPPER, above.paths(LineKind.OUTLINE).get(0).points());
    assertEquals(FAR, above.paths(LineKind.HIDDEN).get(0).points());
  }

  @Test
  void theHoleStandsWhereItIsMarked() {
    assertEquals(
        List.of(new Item.Circle(LineKind.THIN, new Point(-5, 8), 1.5)), far.circles(LineKind.THIN));
    assertEquals(List.of(new Point(-5, 8)), far.markers(Item.Mark.CROSS));
    assertEquals(
        List.of(new Item.Circle(LineKind.THIN, new Point(5, 8), 1.5)),
        above.circles(LineKind.THIN));
    assertEquals(List.of(new Point(5, 8)), above.markers(Item.Mark.CROSS));
    for (Item.Path line : far.paths(LineKind.CENTRE)) {
      Point from = line.points().get(0);
      Point to = line.points().get(1);
      assertEquals(
          new Point(-5, 8), new Point((from.xMm() + to.xMm()) / 2, from.yMm() / 2 + to.yMm() / 2));
      assertTrue(from.distanceMm(to) > 3 && from.distanceMm(to) < 6, "just past the circle");
    }
    assertEquals(2, far.paths(LineKind.CENTRE).size());
  }

  /** Each edge measured from is heavy; its distance stands square to it, with a square's mark. */
  @Test
  void theDistancesStandSquareToTheirEdges() {
    for (int i = 0; i < 2; i++) {
      FaceMark.EdgeDistance told = mark.pair().get(i);
      Item.Path edge = far.paths(LineKind.GOVERNING).get(i);
      assertEquals(List.of(told.start(), told.end()), edge.points());
      Item.Dimension size = far.dimensions().get(i);
      assertEquals(told.foot(), size.from());
      assertEquals(mark.mark(), size.to());
      assertEquals(0, size.offsetMm());
      assertTrue(size.strong());
      List<Point> square = far.paths(LineKind.THIN).get(i).points();
      double side = square.get(0).distanceMm(told.foot());
      assertTrue(side > 0.02 * 20 && side < 0.06 * 30, "side of the square " + side);
      // A square on the foot: one corner on the edge, one on the distance, one opposite.
      assertEquals(side, square.get(2).distanceMm(told.foot()), EXACT);
      assertEquals(side * Math.sqrt(2), square.get(1).distanceMm(told.foot()), EXACT);
      assertEquals(told.distanceMm() - side, square.get(2).distanceMm(mark.mark()), EXACT);
      assertEquals(
          told.start().distanceMm(told.end()),
          told.start().distanceMm(square.get(0)) + square.get(0).distanceMm(told.end()),
          EXACT);
    }
  }

  @Test
  void cornersAreNumberedOnTheirOwnSides() {
    assertEquals(Item.Side.RIGHT, far.label("1").side());
    assertEquals(Item.Side.LEFT, far.label("2").side());
    assertEquals(Item.Side.LEFT, far.label("3").side());
    assertEquals(Item.Side.RIGHT, far.label("4").side());
    assertEquals(new Point(-22, 15), far.label("3").at());
    assertEquals(Item.Side.LEFT, above.label("1").side());
    assertEquals(Item.Side.RIGHT, above.label("2").side());
  }

  @Test
  void theTitleTellsTheMark() {
    // Square to the leaning side: |16 x 9 - 3 x 9| / hypot(3, 16) = 117 / 16.28.
    assertEquals(
        "far face with that face towards you, turned over sideways, like a page of a book: mark"
            + " 7.19 mm from the right-hand edge, corner 4 to 1 and 7.00 mm from the far edge,"
            + " corner 3 to 4",
        far.drawing().title());
    assertEquals("upper face before the part is turned", above.drawing().title());
  }
}
