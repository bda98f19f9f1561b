package org.fettlebench.desktop.seats.internal;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.fettlebench.desktop.seats.internal.Mending.Advice;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatDrawings;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.holes.correct.CorrectionAnswer;
import org.fettlebench.holes.correct.Corrections;
import org.fettlebench.holes.otherface.OtherFaces;
import org.fettlebench.measure.LengthUnit;

/** Makes the drawing that is wanted, and the sentence that goes with it. */
final class Drawn {
  private final SeatPicture picture;
  private final Mending mending;
  private final OtherFace otherFace;
  private final Supplier<Optional<Corrections>> corrections;
  private final Supplier<Optional<OtherFaces>> faces;

  Drawn(
      SeatBook book,
      SeatDrawings drawings,
      Supplier<Optional<Corrections>> corrections,
      Supplier<Optional<OtherFaces>> faces) {
    this.picture = new SeatPicture(book, drawings);
    this.mending = new Mending(book);
    this.otherFace = new OtherFace(book);
    this.corrections = corrections;
    this.faces = faces;
  }

  /**
   * What is shown.
   *
   * @param drawing empty while there is nothing to draw
   * @param words what to do, or why there is nothing; may be empty
   * @param more what else there is to it; may be empty
   * @param remark what that takes for granted; may be empty
   */
  record Shown(Optional<Drawing> drawing, String words, String more, String remark) {
    Shown(Optional<Drawing> drawing, String words) {
      this(drawing, words, "", "");
    }
  }

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
   * @param spokes whether to draw how far the hole may be out each way
   */
  Shown draw(ViewChoice view, Bench bench, LengthUnit unit, boolean spokes) {
    Sketch sketch = bench.sketch();
    Optional<SeatAnswer> answer = bench.shown().answer();
    Optional<Drawing> seat = picture.draw(sketch, bench.shown(), unit, spokes);
    if (bench.looking().isPresent()) {
      String as = SeatWords.cure(bench.looking().get(), unit);
      return new Shown(seat, "Drawn as if done: " + as + " Nothing is changed yet.");
    }
    if (answer.isEmpty()) {
      return new Shown(seat, "");
    }
    if (view == ViewChoice.OTHER_FACE) {
      return otherFace(sketch, answer.get(), unit, seat);
    }
    return advice(sketch, answer.get())
        .map(
            advice ->
                advice
                    .answer()
                    .map(said -> mended(view, said, unit, seat))
                    .orElse(new Shown(seat, advice.trouble())))
        .orElse(new Shown(seat, String.join("\n", cautions(answer.get()))));
  }

  private static List<String> cautions(SeatAnswer answer) {
    return answer.cautions().stream().map(each -> SeatWords.upper(each) + ".").toList();
  }

  /** Returns what to do about a hole that is there; empty where there is none. */
  Optional<Advice> advice(Sketch sketch, SeatAnswer answer) {
    return sketch.hole().found().isPresent()
        ? corrections.get().map(service -> mending.ask(sketch, answer, service))
        : Optional.empty();
  }

  /** Returns where to mark on the far face; empty where none is given. */
  Optional<OtherFace.Marked> marked(Sketch sketch, SeatAnswer answer) {
    return sketch.shape().underside().isPresent()
        ? faces.get().map(service -> otherFace.ask(sketch, answer, service))
        : Optional.empty();
  }

  private Shown mended(
      ViewChoice view, CorrectionAnswer said, LengthUnit unit, Optional<Drawing> seat) {
    Corrections drawings = corrections.get().orElseThrow();
    Optional<Drawing> shown =
        switch (view) {
          case FACE -> Optional.of(drawings.drawFace(said, unit));
          case HOLE -> Optional.of(drawings.drawHole(said, unit));
          default -> seat;
        };
    return new Shown(
        shown,
        Mending.say(said, unit),
        String.join("\n", Mending.ways(said, unit)),
        Mending.assumed(said, unit));
  }

  private Shown otherFace(
      Sketch sketch, SeatAnswer answer, LengthUnit unit, Optional<Drawing> seat) {
    OtherFace.Marked marked = marked(sketch, answer).orElseThrow();
    return marked
        .mark()
        .map(
            mark ->
                new Shown(
                    Optional.of(faces.get().orElseThrow().draw(mark, unit)),
                    OtherFace.say(mark, unit),
                    OtherFace.cautions(mark, unit),
                    OtherFace.assumed(mark, unit)))
        .orElse(new Shown(seat, marked.trouble()));
  }
}
