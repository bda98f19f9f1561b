package org.fettlebench.desktop.seats.internal;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.holes.correct.ExpectedError;
import org.fettlebench.holes.otherface.FaceMark;
import org.fettlebench.holes.otherface.MarkQuestion;
import org.fettlebench.holes.otherface.OtherFaces;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;

/**
 * Where to mark for drilling from the other face, asked of the service for it and said in words.
 */
final class OtherFace {
  private final SeatBook book;

  OtherFace(SeatBook book) {
    this.book = book;
  }

  /** What came of asking; the trouble says why nothing can be said. */
  record Marked(Optional<FaceMark> mark, String trouble) {}

  Marked ask(Sketch sketch, SeatAnswer answer, OtherFaces faces) {
    if (sketch.hole().practice().over().depthMm().isEmpty()) {
      return new Marked(
          Optional.empty(),
          "Type above the drawing how thick the part is, from face to face: the drill wanders over"
              + " that depth.");
    }
    try {
      return new Marked(Optional.of(faces.mark(question(sketch, answer))), "");
    } catch (IllegalArgumentException refused) {
      return new Marked(Optional.empty(), SeatWords.upper(refused.getMessage()) + ".");
    }
  }

  private MarkQuestion question(Sketch sketch, SeatAnswer answer) {
    Shape shape = sketch.shape();
    Practice.Over over = sketch.hole().practice().over();
    Outline upper = shape.outline(shape.corners());
    return new MarkQuestion(
        answer.question().seat().name(),
        answer.question().seat().intended(),
        new MarkQuestion.Hole(
            answer.question().holeDiameterMm(),
            over.depthMm().orElseThrow(),
            marking(sketch, answer),
            over.lead(),
            leadMeans(over)),
        new MarkQuestion.Faces(upper, shape.underside().map(shape::outline).orElse(upper)),
        over.turn(),
        List.of(),
        Optional.of(answer.question()));
  }

  private ExpectedError marking(Sketch sketch, SeatAnswer answer) {
    HoleMethod method = book.method(sketch).orElseThrow();
    String share = SeatWords.percent(sketch.hole().confidence()) + " of holes; ";
    return new ExpectedError(
        method.title(), answer.question().expectedErrorMm(), share + method.standing());
  }

  private static String leadMeans(Practice.Over over) {
    return over.lead() == Practice.Over.USUAL_LEAD ? Practice.Margins.HABIT : "as said on the page";
  }

  /** Says where to mark, the deed first. */
  static String say(FaceMark mark, LengthUnit unit) {
    MarkQuestion question = mark.question();
    StringBuilder words = new StringBuilder("With the part " + question.turn().words());
    words.append(", mark ");
    words.append(
        mark.pair().stream()
            .map(each -> SeatWords.both(each.distanceMm(), unit) + " from the " + each.name())
            .collect(Collectors.joining(", and ")));
    words.append(". It is then expected above within ");
    words.append(SeatWords.both(question.hole().errorAboveMm(), unit));
    words.append(mark.above().map(above -> ": the head then " + above.verdict().word()).orElse(""));
    return words.append('.').toString();
  }

  /** Says what to look out for, one thing a line. */
  static String cautions(FaceMark mark, LengthUnit unit) {
    return mark.cautions().stream()
        .map(each -> "\u2022 " + SeatWords.upper(LengthFormat.turned(each, unit)) + ".")
        .collect(Collectors.joining("\n"));
  }

  /** Says what that takes for granted. */
  static String assumed(FaceMark mark, LengthUnit unit) {
    MarkQuestion.Hole hole = mark.question().hole();
    return "The drill is taken to wander "
        + SeatWords.both(hole.wanderMm(), unit)
        + " over the depth ("
        + hole.lead()
        + " of it; "
        + hole.leadMeans()
        + "). Distances square to their edge; corners keep their numbers.";
  }
}
