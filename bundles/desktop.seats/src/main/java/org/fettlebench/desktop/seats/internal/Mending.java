package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.club.Goods;
import org.fettlebench.desktop.seats.internal.Practice.Margins;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.holes.correct.CleanUp;
import org.fettlebench.holes.correct.CorrectionAnswer;
import org.fettlebench.holes.correct.CorrectionQuestion;
import org.fettlebench.holes.correct.Corrections;
import org.fettlebench.holes.correct.Cutter;
import org.fettlebench.holes.correct.Direction;
import org.fettlebench.holes.correct.ExpectedError;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** What to do about a hole that is drilled, asked of the service for it and said in words. */
final class Mending {
  /** More ways out than this are for the card. */
  private static final int MOST_WAYS = 3;

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
    Practice.Margins margins = sketch.hole().practice().margins();
    return new CorrectionQuestion(
        seat.question().seat().intended(),
        new CorrectionQuestion.Found(found.centre(), found.diameterMm(), found.withinMm()),
        seat.question().holeDiameterMm(),
        new CorrectionQuestion.Rules(
            new CleanUp(
                margins.cleanUpMm(), margins.means(margins.cleanUpMm(), Margins.USUAL.cleanUpMm())),
            new ExpectedError(
                "filing to a line",
                margins.filingMm(),
                margins.means(margins.filingMm(), Margins.USUAL.filingMm())),
            margins.bushWallMm(),
            margins.means(margins.bushWallMm(), Margins.USUAL.bushWallMm())),
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
      case LEAVE -> out + "The seat has room for that: leave the hole where it is.";
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

  /** Says what else may be done, one way a line; nothing where the deed is plain. */
  static List<String> ways(CorrectionAnswer answer, LengthUnit unit) {
    List<String> ways = new ArrayList<>();
    if (answer.outcome() == CorrectionAnswer.Outcome.LEAVE) {
      answer
          .filing()
          .ifPresent(filing -> ways.add("To bring it right all the same: " + filing(filing, unit)));
    }
    if (answer.filing().isEmpty() || answer.outcome() == CorrectionAnswer.Outcome.PAST_CURE) {
      answer.waysOut().stream()
          .limit(MOST_WAYS)
          .map(way -> LengthFormat.turned(way.sentence(), unit))
          .forEach(way -> ways.add("\u2022 " + SeatWords.upper(way) + "."));
    }
    return ways;
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
  static String assumed(CorrectionAnswer answer, LengthUnit unit) {
    CorrectionQuestion.Rules rules = answer.question().rules();
    return "Kept: the last drill finds "
        + SeatWords.both(rules.cleanUp().perSideMm(), unit)
        + " a side ("
        + rules.cleanUp().means()
        + "); a filed hole ends within "
        + SeatWords.both(rules.filing().radiusMm(), unit)
        + " of its place ("
        + rules.filing().means()
        + "); a bush has a wall of "
        + SeatWords.both(rules.bushWallMm(), unit)
        + " ("
        + rules.bushMeans()
        + ").";
  }

  /**
   * Returns a first guess of a hole: at the centre, as large as the largest pilot that can move.
   */
  static SeatFile.Drilled guess(Point centre, double finishMm) {
    double pilot = Length.ofMillimetres(0.8 * finishMm).millimetres();
    return new SeatFile.Drilled(centre, pilot, 0.05);
  }
}
