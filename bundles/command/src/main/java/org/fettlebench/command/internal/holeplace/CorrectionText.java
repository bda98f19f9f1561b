package org.fettlebench.command.internal.holeplace;

import org.fettlebench.command.internal.Cautions;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.holes.correct.CorrectionAnswer;
import org.fettlebench.holes.correct.CorrectionAnswer.Filing;
import org.fettlebench.holes.correct.CorrectionAnswer.WayOut;
import org.fettlebench.holes.correct.CorrectionQuestion;
import org.fettlebench.holes.correct.Cutter;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;

/** A correction in words. */
final class CorrectionText {
  private CorrectionText() {}

  static String of(String name, CorrectionAnswer answer, LengthUnit unit) {
    StringBuilder text =
        new StringBuilder(name)
            .append(": ")
            .append(answer.outcome().word())
            .append('\n')
            .append(figures(answer, unit).text());
    answer
        .cautions()
        .forEach(caution -> text.append("\n  ").append(LengthFormat.turned(caution, unit)));
    answer.filing().ifPresent(filing -> filing(text, answer, filing, unit));
    if (!answer.waysOut().isEmpty()) {
      text.append("\nWhat remains possible, each worked out again");
      for (WayOut way : answer.waysOut()) {
        text.append("\n  - ").append(LengthFormat.turned(way.sentence(), unit));
      }
    } else if (answer.outcome() == CorrectionAnswer.Outcome.PAST_CURE) {
      text.append(
          "\nNothing that could be tried makes it good: other heads, larger and plugged holes"
              + " with drills of any listed size all foul or break out");
    }
    return text.append('\n').append(Cautions.DRILLING).toString();
  }

  private static Columns figures(CorrectionAnswer answer, LengthUnit unit) {
    CorrectionQuestion question = answer.question();
    Columns columns =
        new Columns()
            .indent(2)
            .row(
                "hole as it is",
                Figures.size(question.found().diameterMm(), unit)
                    + " at "
                    + PlaceData.words(question.found().centre(), unit)
                    + ", known within "
                    + Figures.allowance(question.found().withinMm(), unit))
            .row("should be", PlaceData.words(question.target(), unit))
            .row(
                "out by",
                Figures.allowance(answer.errorMm(), unit)
                    + ", radius"
                    + answer.error().map(way -> ", towards " + way).orElse(""))
            .row(
                "can be cured",
                (answer.curableMm() < 0
                        ? "nothing"
                        : Figures.allowance(answer.curableMm(), unit) + ", radius")
                    + ", finished at "
                    + Figures.size(question.finishDiameterMm(), unit)
                    + " with "
                    + Figures.allowance(question.rules().cleanUp().perSideMm(), unit)
                    + " per side left for the last drill ("
                    + question.rules().cleanUp().means()
                    + ")");
    answer.asIs().ifPresent(seat -> columns.row("head, as it is", PlaceData.seat(seat, unit)));
    return columns;
  }

  private static void filing(
      StringBuilder text, CorrectionAnswer answer, Filing filing, LengthUnit unit) {
    text.append(
        answer.outcome() == CorrectionAnswer.Outcome.LEAVE
            ? "\nShould it be filed all the same, as seen from this face"
            : "\nTo file, as seen from this face");
    Columns columns =
        new Columns()
            .indent(2)
            .row(
                "side",
                "towards "
                    + filing.towards()
                    + (filing.edge().isEmpty() ? "" : ", the " + filing.edge()))
            .row(
                "take off",
                Figures.allowance(filing.deepestMm(), unit)
                    + " in the middle of that side, "
                    + Figures.allowance(filing.quartersMm(), unit)
                    + " a quarter round to each side, nothing opposite")
            .row("then it measures", Figures.size(filing.filedDiameterMm(), unit) + " every way")
            .row("round file", filing.file().map(Cutter::name).orElse(fileWanted(answer, unit)));
    filing
        .between()
        .ifPresent(
            drill -> columns.row("open out first", drill.name() + ", and measure once more"));
    columns
        .row(
            "last drill",
            filing
                .finish()
                .map(Cutter::name)
                .orElse(Figures.size(answer.question().finishDiameterMm(), unit) + ", not at hand"))
        .row("it cuts per side", Figures.allowance(filing.lastCutMm(), unit));
    filing.after().ifPresent(seat -> columns.row("head then", PlaceData.seat(seat, unit)));
    text.append('\n').append(columns.text());
  }

  private static String fileWanted(CorrectionAnswer answer, LengthUnit unit) {
    return "one below "
        + Figures.size(answer.question().found().diameterMm(), unit)
        + "; none is known at hand";
  }
}
