package org.fettlebench.holes.internal.otherface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.internal.SeatChecker;
import org.fettlebench.holes.correct.ExpectedError;
import org.fettlebench.holes.correct.HoleException;
import org.fettlebench.holes.otherface.FaceMark;
import org.fettlebench.holes.otherface.MarkQuestion;
import org.fettlebench.holes.otherface.MarkQuestion.Faces;
import org.fettlebench.holes.otherface.MarkQuestion.Hole;
import org.fettlebench.holes.otherface.Turn;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;

/** What is told beside the mark, and what is refused with its figure. */
class FaceCautionsTest {
  private static final List<Point> UPPER = rectangle(0, 0, 20, 12);
  private static final List<Point> WIDER = rectangle(-4, -4, 24, 16);
  private static final ExpectedError DOTTING = new ExpectedError("dotting", 0.2, "a test");

  private final FaceMarker marker = new FaceMarker(new SeatChecker());

  private static List<Point> rectangle(double left, double near, double right, double far) {
    return List.of(
        new Point(left, near), new Point(right, near), new Point(right, far), new Point(left, far));
  }

  private FaceMark mark(Point target, List<Point> upper, List<Point> far, Integer... chosen) {
    return marker.mark(
        new MarkQuestion(
            "foot",
            target,
            new Hole(3, 10, DOTTING, 0.01, "a test"),
            new Faces(upper, far),
            Turn.SIDEWAYS,
            List.of(chosen),
            Optional.empty()));
  }

  @Test
  void aGoodMarkNeedsNoCaution() {
    assertEquals(List.of(), mark(new Point(5, 8), UPPER, WIDER).cautions());
    // Just touching the edge is not yet breaking out.
    assertEquals(List.of(), mark(new Point(1.5, 6), UPPER, WIDER).cautions());
  }

  @Test
  void eachFaceThatTheHoleBreaksOutOfIsNamed() {
    // 1 mm from the upper face's side with a radius of 1.5 mm; below there is metal enough.
    assertEquals(
        List.of("the hole breaks out of the upper face by 0.50 mm (0.020 in) at its edge"),
        mark(new Point(1, 6), UPPER, WIDER).cautions());
    assertEquals(
        List.of("the hole breaks out of the far face by 0.50 mm (0.020 in) at its edge"),
        mark(new Point(1, 6), WIDER, UPPER).cautions());
  }

  @Test
  void edgesThatCrossAtASmallAngleAreTold() {
    // A wedge: its sides run away at 20 degrees; 1 / sin 20 = 2.92.
    double rise = 60 * Math.tan(Math.toRadians(20));
    List<Point> wedge = List.of(new Point(-20, -4), new Point(40, -4), new Point(40, rise - 4));
    FaceMark small = mark(new Point(15, 1), rectangle(5, -4, 30, 4), wedge, 1, 3);
    assertEquals(
        List.of(
            "the two edges cross at a small angle, so a slip in marking counts 2.9 times along"
                + " them; mark from a third edge too"),
        small.cautions());
    // At 40 degrees a slip counts 1.6 times: not worth a word.
    rise = 60 * Math.tan(Math.toRadians(40));
    List<Point> wider = List.of(new Point(-20, -4), new Point(40, -4), new Point(40, rise - 4));
    assertEquals(
        List.of(), mark(new Point(15, 1), rectangle(5, -4, 30, 9), wider, 1, 3).cautions());
  }

  private FaceMark seated(double headMm, double hole) {
    SeatedHead head =
        new SeatedHead(
            "round",
            headMm,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            "");
    Seat seat = Seat.flat("foot", Outline.of(UPPER), new Point(9, 6));
    return marker.mark(
        new MarkQuestion(
            "foot",
            new Point(5, 8),
            new Hole(hole, 10, DOTTING, 0.01, "a test"),
            new Faces(UPPER, WIDER),
            Turn.SIDEWAYS,
            List.of(),
            Optional.of(new SeatQuestion(seat, head, hole, 0.2, "a test"))));
  }

  /** Room of 4 mm to the far side: 7 mm clears with 0.3 mm to be expected, 9 mm fouls. */
  @Test
  void theHeadAboveIsToldWhenItFoulsOrIsTight() {
    assertEquals(List.of(), seated(7, 3).cautions());
    assertEquals(
        List.of(
            "above there is room for 0.25 mm (0.010 in) only: drill a pilot first, measure where"
                + " it comes out, and correct"),
        seated(7.5, 3).cautions());
    assertEquals(
        List.of("the head above fouls even when the hole comes out just right"),
        seated(9, 3).cautions());
  }

  private void refused(String words, double diameter, double depth, double lead) {
    MarkQuestion question =
        new MarkQuestion(
            "foot",
            new Point(5, 8),
            new Hole(diameter, depth, DOTTING, lead, "a test"),
            new Faces(UPPER, WIDER),
            Turn.SIDEWAYS,
            List.of(),
            Optional.empty());
    HoleException wrong = assertThrows(HoleException.class, () -> marker.mark(question));
    assertTrue(wrong.getMessage().startsWith(words), wrong.getMessage());
  }

  @Test
  void figuresOutOfRangeAreNamed() {
    refused("hole diameter 0.0 mm is not above 0", 0, 10, 0.01);
    refused("hole diameter -3.0 mm", -3, 10, 0.01);
    refused("hole diameter 100000.1 mm", 100_000.1, 10, 0.01);
    refused("depth from face to face 0.0 mm", 3, 0, 0.01);
    refused("wander of the drill 1.1 mm per mm", 3, 10, 1.1);
    for (double allowed : new double[] {0, 1}) {
      Hole hole = new Hole(3, 100_000, DOTTING, allowed, "a test");
      MarkQuestion question =
          new MarkQuestion(
              "foot",
              new Point(5, 8),
              hole,
              new Faces(UPPER, WIDER),
              Turn.SIDEWAYS,
              List.of(),
              Optional.empty());
      assertEquals(new Point(-5, 8), marker.mark(question).mark());
    }
  }

  /** Edges are told in the order of how much a slip counts from them. */
  @Test
  void whatBearsBestComesFirst() {
    FaceMark mark = mark(new Point(19, 11), UPPER, WIDER);
    List<Double> slips = mark.distances().stream().map(EdgePair::slips).toList();
    assertEquals(slips.stream().sorted().toList(), slips);
    assertTrue(slips.get(0) < slips.get(3), slips.toString());
    assertEquals(EdgePair.slips(mark.pair().get(0), mark.pair().get(1)), mark.slips());
  }
}
