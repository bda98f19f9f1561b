package org.fettlebench.paper.internal;

import static org.fettlebench.paper.internal.CardText.read;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
import org.fettlebench.holes.correct.Cutter;
import org.fettlebench.holes.correct.ExpectedError;
import org.fettlebench.holes.internal.correct.CorrectionFinder;
import org.fettlebench.holes.internal.otherface.FaceMarker;
import org.fettlebench.holes.otherface.MarkQuestion;
import org.fettlebench.holes.otherface.Turn;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HoleCardServiceTest {
  private static final List<Point> FACE =
      List.of(new Point(0, 0), new Point(14.4, 0.2), new Point(14, 12), new Point(0.4, 12.6));
  private static final Point TARGET = new Point(7, 6);

  private final CorrectionFinder corrections = new CorrectionFinder(new SeatChecker());
  private final FaceMarker faces = new FaceMarker(new SeatChecker());
  private final HoleCardService cards = new HoleCardService(corrections, faces);

  private static SeatedHead round(double diameter) {
    return new SeatedHead(
        "round " + diameter,
        diameter,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        "");
  }

  private CorrectionAnswer out(double dx, double dy, double head) {
    Seat seat = Seat.flat("lug", Outline.of(FACE), TARGET);
    return corrections.correct(
        new CorrectionQuestion(
            TARGET,
            new Found(TARGET.moved(dx, dy), 4, 0.02),
            6,
            new Rules(
                new CleanUp(0.1, "common practice, no source"),
                new ExpectedError("filing", 0.1, "common practice, no source"),
                1,
                "common practice, no source"),
            new Tools(
                List.of(new Cutter("6.0 mm", 6), new Cutter("5.1 mm", 5.1), new Cutter("7 mm", 7)),
                List.of(new Cutter("round file 3 mm", 3))),
            new Around(
                Optional.of(new SeatQuestion(seat, round(head), 6, 0.3, "a test")),
                List.of(round(9)),
                true)));
  }

  @Test
  void aHoleOutToTheLeftIsFiledOnTheRight() throws IOException {
    CorrectionAnswer answer = out(-0.4, 0, 13.2);
    String text = read(pdf -> cards.correctionCard("lug", answer, LengthUnit.MILLIMETRE, pdf));
    assertTrue(
        text.contains(
            "File 0.80 mm (0.031 in) off the side towards 3 o'clock (right), the edge from corner 2"
                + " to corner 3."),
        text);
    assertTrue(text.contains("file 0.80 mm here"), text);
    assertTrue(text.contains("Scribe a circle of 4.80 mm (0.189 in)"), text);
    assertTrue(text.contains("round file 3 mm"), text);
    assertTrue(text.contains("50 mm when printed at full size"), text);
    assertTrue(text.contains("common practice, no source"), text);
    assertTrue(text.contains("Caution."), text);
  }

  @Test
  void inInchesTheFirstFigureIsInInches() throws IOException {
    CorrectionAnswer answer = out(-0.4, 0, 13.2);
    String text = read(pdf -> cards.correctionCard("lug", answer, LengthUnit.INCH, pdf));
    assertTrue(text.contains("File 0.031 in (0.80 mm) off the side towards 3 o'clock"), text);
    assertTrue(text.contains("2 in when printed"), text);
  }

  @Test
  void pastCureTheCardSaysWhatElse() throws IOException {
    CorrectionAnswer answer = out(1.2, 0.9, 12);
    assertEquals(CorrectionAnswer.Outcome.PAST_CURE, answer.outcome());
    assertFalse(answer.waysOut().isEmpty());
    String text = read(pdf -> cards.correctionCard("lug", answer, LengthUnit.MILLIMETRE, pdf));
    assertTrue(text.contains("past cure"), text);
    assertTrue(text.contains("What else is possible"), text);
    assertTrue(text.contains("use round 9"), text);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.01, 0.2, 0.6})
  void everyOutcomeMakesOnePage(double out) throws IOException {
    for (double head : new double[] {8, 11.9, 13.9}) {
      CorrectionAnswer answer = out(out, -out, head);
      read(pdf -> cards.correctionCard("lug", answer, LengthUnit.MILLIMETRE, pdf));
    }
  }

  @Test
  void theMarkingCardTellsBothDistancesFromTheSideAsSeen() throws IOException {
    MarkQuestion question =
        new MarkQuestion(
            "lug",
            TARGET,
            new MarkQuestion.Hole(
                4, 12, new ExpectedError("dotting", 0.3, "a test"), 0.01, "a test"),
            new MarkQuestion.Faces(
                FACE,
                List.of(new Point(0, 0), new Point(16, 0), new Point(16, 13), new Point(0, 13))),
            Turn.SIDEWAYS,
            List.of(2, 1),
            Optional.empty());
    String text = read(pdf -> cards.markingCard(faces.mark(question), LengthUnit.MILLIMETRE, pdf));
    assertTrue(text.contains("9.00 mm (0.354 in) from the left-hand edge, corner 2 to 3"), text);
    assertTrue(text.contains("6.00 mm (0.236 in) from the near edge, corner 1 to 2"), text);
    assertTrue(text.contains("like a page of a book"), text);
    assertTrue(text.contains("50 mm when printed at full size"), text);
    assertTrue(text.contains("Before it is turned"), text);
    assertTrue(text.contains("within 0.42 mm (0.017 in), radius"), text);
  }
}
