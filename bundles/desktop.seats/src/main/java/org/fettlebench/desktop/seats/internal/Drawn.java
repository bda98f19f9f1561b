package org.fettlebench.desktop.seats.internal;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.fettlebench.desktop.seats.internal.Mending.Advice;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatDrawings;
import org.fettlebench.holes.correct.Corrections;
import org.fettlebench.holes.correct.ExpectedError;
import org.fettlebench.holes.otherface.FaceMark;
import org.fettlebench.holes.otherface.MarkQuestion;
import org.fettlebench.holes.otherface.OtherFaces;
import org.fettlebench.holes.otherface.Turn;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** Makes the drawing that is wanted, and the sentence that goes with it. */
final class Drawn {
  private static final String HABIT = "common practice, no source";

  /** A drill's wander over the depth, radius per length. */
  private static final double LEAD = 0.01;

  private final SeatBook book;
  private final SeatPicture picture;
  private final Mending mending;
  private final Supplier<Optional<Corrections>> corrections;
  private final Supplier<Optional<OtherFaces>> faces;

  Drawn(
      SeatBook book,
      SeatDrawings drawings,
      Supplier<Optional<Corrections>> corrections,
      Supplier<Optional<OtherFaces>> faces) {
    this.book = book;
    this.picture = new SeatPicture(drawings);
    this.mending = new Mending(book);
    this.corrections = corrections;
    this.faces = faces;
  }

  /**
   * What is shown.
   *
   * @param drawing empty while there is nothing to draw
   * @param words what to do, or why there is nothing; may be empty
   * @param remark what that takes for granted; may be empty
   */
  record Shown(Optional<Drawing> drawing, String words, String remark) {}

  /** Returns whether a view can be had of a sketch. */
  boolean possible(ViewChoice view, Sketch sketch) {
    return switch (view) {
      case SEAT -> true;
      case FACE, HOLE -> sketch.hole().found().isPresent() && corrections.get().isPresent();
      case OTHER_FACE -> sketch.shape().underside().isPresent() && faces.get().isPresent();
    };
  }

  /**
   * Draws.
   *
   * @param depthMm thickness of the part, for the far face
   */
  Shown draw(ViewChoice view, Bench bench, LengthUnit unit, double depthMm) {
    Sketch sketch = bench.sketch();
    Optional<SeatAnswer> answer = bench.reply().answer();
    if (view == ViewChoice.OTHER_FACE && answer.isPresent()) {
      return otherFace(sketch, answer.get(), unit, depthMm);
    }
    Optional<Drawing> seat = picture.draw(sketch, bench.reply(), unit);
    boolean found = sketch.hole().found().isPresent() && answer.isPresent();
    if (!found || corrections.get().isEmpty()) {
      return new Shown(seat, "", "");
    }
    Advice advice = mending.ask(sketch, answer.get(), corrections.get().get());
    if (advice.answer().isEmpty()) {
      return new Shown(seat, advice.trouble(), "");
    }
    var said = advice.answer().get();
    Optional<Drawing> shown =
        switch (view) {
          case FACE -> Optional.of(corrections.get().get().drawFace(said, unit));
          case HOLE -> Optional.of(corrections.get().get().drawHole(said, unit));
          default -> seat;
        };
    StringBuilder words = new StringBuilder(Mending.say(said, unit));
    if (said.filing().isEmpty() || said.outcome().word().startsWith("past")) {
      said.waysOut().stream()
          .limit(3)
          .forEach(way -> words.append("\n\u2022 ").append(turned(way.sentence(), unit)));
    }
    return new Shown(shown, words.toString(), Mending.assumed(unit));
  }

  private static String turned(String sentence, LengthUnit unit) {
    return org.fettlebench.measure.LengthFormat.turned(sentence, unit);
  }

  private Shown otherFace(Sketch sketch, SeatAnswer answer, LengthUnit unit, double depthMm) {
    List<Point> upper = sketch.shape().corners();
    MarkQuestion question =
        new MarkQuestion(
            answer.question().seat().name(),
            answer.question().seat().intended(),
            new MarkQuestion.Hole(
                answer.question().holeDiameterMm(),
                depthMm,
                new ExpectedError(
                    book.method(sketch).orElseThrow().title(),
                    answer.question().expectedErrorMm(),
                    answer.question().errorMeans()),
                LEAD,
                HABIT),
            new MarkQuestion.Faces(upper, sketch.shape().underside().orElse(upper)),
            Turn.SIDEWAYS,
            List.of(),
            Optional.of(answer.question()));
    try {
      FaceMark mark = faces.get().orElseThrow().mark(question);
      StringBuilder words =
          new StringBuilder("Seen with the part " + Turn.SIDEWAYS.words() + ": mark ");
      words.append(
          mark.pair().stream()
              .map(each -> SeatWords.both(each.distanceMm(), unit) + " from the " + each.name())
              .collect(java.util.stream.Collectors.joining(", and ")));
      words.append(". It is then expected above within ");
      words.append(SeatWords.both(question.hole().errorAboveMm(), unit));
      words.append(
          mark.above().map(above -> ": the head then " + above.verdict().word()).orElse(""));
      words.append(". ").append(String.join(" ", mark.cautions()));
      String remark =
          "The drill is taken to wander 0.01 of its depth ("
              + HABIT
              + "); the part is taken as "
              + SeatWords.both(depthMm, unit)
              + " thick.";
      return new Shown(
          Optional.of(faces.get().orElseThrow().draw(mark, unit)), words.toString(), remark);
    } catch (IllegalArgumentException refused) {
      return new Shown(picture.draw(sketch, Reply.of(answer), unit), refused.getMessage(), "");
    }
  }
}
