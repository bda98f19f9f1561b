package org.fettlebench.desktop.seats.internal;

import java.util.List;
import java.util.Optional;
import org.fettlebench.club.Goods;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.holes.correct.CleanUp;
import org.fettlebench.holes.correct.CorrectionAnswer;
import org.fettlebench.holes.correct.CorrectionQuestion;
import org.fettlebench.holes.correct.Corrections;
import org.fettlebench.holes.correct.Cutter;
import org.fettlebench.holes.correct.Direction;
import org.fettlebench.holes.correct.ExpectedError;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** What to do about a hole that is drilled, asked of the service for it and said in words. */
final class Mending {
  private static final String HABIT = "common practice, no source";

  /** Metal that the last drill must find on every side; common practice, no source. */
  static final double CLEAN_UP_MM = 0.1;

  private static final double FILING_MM = 0.1;
  private static final double BUSH_WALL_MM = 1;

  private final SeatBook book;

  Mending(SeatBook book) {
    this.book = book;
  }

  /** What came of asking. */
  record Advice(Optional<CorrectionAnswer> answer, String trouble) {}

  /** Asks what to do; the trouble says why nothing can be said. */
  Advice ask(Sketch sketch, SeatAnswer seat, Corrections corrections) {
    try {
      return new Advice(Optional.of(corrections.correct(question(sketch, seat))), "");
    } catch (IllegalArgumentException refused) {
      return new Advice(Optional.empty(), refused.getMessage());
    }
  }

  private CorrectionQuestion question(Sketch sketch, SeatAnswer seat) {
    SeatFile.Drilled found = sketch.hole().found().orElseThrow();
    List<Cutter> drills =
        book.drillsHeld().stream()
            .map(drill -> new Cutter(drill.name(), drill.diameter().millimetres()))
            .toList();
    List<Cutter> files =
        book.heads().lines().stream()
            .filter(line -> line.goods().kind() == Goods.Kind.SUNDRY && line.present() > 0)
            .filter(line -> line.goods().name().toLowerCase(java.util.Locale.ROOT).contains("file"))
            .flatMap(
                line ->
                    line.goods().diameter().stream()
                        .map(size -> new Cutter(line.goods().name(), size.millimetres())))
            .toList();
    return new CorrectionQuestion(
        seat.question().seat().intended(),
        new CorrectionQuestion.Found(found.centre(), found.diameterMm(), found.withinMm()),
        seat.question().holeDiameterMm(),
        new CorrectionQuestion.Rules(
            new CleanUp(CLEAN_UP_MM, HABIT),
            new ExpectedError("filing to a line", FILING_MM, HABIT),
            BUSH_WALL_MM,
            HABIT),
        new CorrectionQuestion.Tools(drills, files),
        new CorrectionQuestion.Around(Optional.of(seat.question()), book.others(sketch), false));
  }

  /** Says what to do, the deed first. */
  static String say(CorrectionAnswer answer, LengthUnit unit) {
    String out =
        answer
            .error()
            .map(
                way ->
                    "The hole is out "
                        + SeatWords.both(answer.errorMm(), unit)
                        + " towards "
                        + way
                        + ". ")
            .orElse("");
    return switch (answer.outcome()) {
      case ON_TARGET -> "The measurement cannot tell this hole from one that is right. Go on.";
      case LEAVE ->
          out
              + "The seat has room for that: leave the hole where it is."
              + answer
                  .filing()
                  .map(filing -> " To bring it right all the same: " + filing(filing, unit))
                  .orElse("");
      case FILE -> answer.filing().map(filing -> filing(filing, unit)).orElse(out);
      case FILE_IN_DOUBT ->
          answer.filing().map(filing -> filing(filing, unit)).orElse(out)
              + " It is cured if the hole is where it was found, but not if it is as far out as it"
              + " may be: measure again first.";
      case PAST_CURE ->
          out
              + "Filing can cure "
              + SeatWords.both(Math.max(0, answer.curableMm()), unit)
              + " at most. See what remains possible.";
    };
  }

  private static String filing(CorrectionAnswer.Filing filing, LengthUnit unit) {
    Direction towards = filing.towards();
    return "File "
        + SeatWords.both(filing.deepestMm(), unit)
        + " off the side towards "
        + towards
        + (filing.edge().isEmpty() ? "" : ", " + filing.edge())
        + ", running out to both sides"
        + filing.file().map(file -> ", with " + file.name()).orElse("")
        + filing.between().map(drill -> "; then drill " + drill.name()).orElse("")
        + filing
            .finish()
            .map(drill -> "; then drill " + drill.name())
            .orElse("; then the finished size, which is not held")
        + ", which cuts "
        + SeatWords.both(filing.lastCutMm(), unit)
        + " a side. As seen from this face, 12 o\u2019clock away from you.";
  }

  /** Says what the advice takes for granted. */
  static String assumed(LengthUnit unit) {
    return "Assumed ("
        + HABIT
        + "): the last drill must find "
        + SeatWords.both(CLEAN_UP_MM, unit)
        + " a side; a filed hole ends within "
        + SeatWords.both(FILING_MM, unit)
        + " of its place; a bush has a wall of "
        + SeatWords.both(BUSH_WALL_MM, unit)
        + ".";
  }

  /**
   * Returns a first guess of a hole: at the centre, as large as the largest pilot that can move.
   */
  static SeatFile.Drilled guess(Point centre, double finishMm) {
    double pilot = Length.ofMillimetres(0.8 * finishMm).millimetres();
    return new SeatFile.Drilled(centre, pilot, 0.05);
  }
}
