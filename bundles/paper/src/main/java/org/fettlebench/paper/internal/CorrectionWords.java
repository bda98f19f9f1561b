package org.fettlebench.paper.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.holes.correct.CorrectionAnswer;
import org.fettlebench.holes.correct.CorrectionAnswer.Filing;
import org.fettlebench.holes.correct.CorrectionQuestion;
import org.fettlebench.holes.correct.Cutter;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;

/** What a correction card says. */
final class CorrectionWords {
  private final CorrectionAnswer answer;
  private final CorrectionQuestion question;
  private final LengthUnit first;

  CorrectionWords(CorrectionAnswer answer, LengthUnit first) {
    this.answer = answer;
    this.question = answer.question();
    this.first = first;
  }

  /**
   * A figure.
   *
   * @param what in words
   * @param remark its standing; may be empty
   */
  record Row(String what, String remark) {}

  /** Returns what to do, in a sentence to be read from a stool. */
  String order() {
    return switch (answer.outcome()) {
      case ON_TARGET -> "It cannot be told from a hole in the right place: open it out.";
      case LEAVE ->
          "Out by "
              + small(answer.errorMm())
              + ", and the head has room for it: nothing needs doing.";
      case FILE, FILE_IN_DOUBT -> file(answer.filing().orElseThrow());
      case PAST_CURE ->
          "Out by "
              + small(answer.errorMm())
              + " towards "
              + answer.error().orElseThrow()
              + "; filing cures "
              + (answer.curableMm() > 0 ? small(answer.curableMm()) : "nothing")
              + ".";
    };
  }

  private String file(Filing filing) {
    return "File "
        + small(filing.deepestMm())
        + " off the side towards "
        + filing.towards()
        + (filing.edge().isEmpty() ? "" : ", the " + filing.edge())
        + ".";
  }

  /** Returns the order of work. */
  List<String> steps() {
    return answer.filing().map(this::steps).orElse(List.of());
  }

  private List<String> steps(Filing filing) {
    List<String> steps = new ArrayList<>();
    steps.add(
        "Scribe a circle of "
            + size(filing.filedDiameterMm())
            + " about the place where the hole should be. It touches the hole at "
            + filing.towards().opposite().clock()
            + ".");
    steps.add(
        "File to it with "
            + filing
                .file()
                .map(Cutter::name)
                .orElse("a round file below " + size(question.found().diameterMm()))
            + ": "
            + small(filing.deepestMm())
            + " at "
            + filing.towards().clock()
            + ", "
            + small(filing.quartersMm())
            + " a quarter round to each side, nothing opposite.");
    steps.add("Measure: " + size(filing.filedDiameterMm()) + " every way.");
    filing
        .between()
        .ifPresent(
            drill -> steps.add("Open out with " + drill.name() + " and measure where it is now."));
    steps.add(
        "Finish with "
            + filing
                .finish()
                .map(Cutter::name)
                .orElse("a drill of " + size(question.finishDiameterMm()) + " (not at hand)")
            + "; "
            + (filing.between().isPresent() ? "without that it" : "it")
            + " cuts "
            + small(filing.lastCutMm())
            + " per side all round.");
    return steps;
  }

  /** Returns the figures that stand behind it. */
  List<Row> figures() {
    List<Row> rows = new ArrayList<>();
    rows.add(
        new Row(
            "Hole as it is: "
                + size(question.found().diameterMm())
                + " at x "
                + size(question.found().centre().xMm())
                + ", y "
                + size(question.found().centre().yMm()),
            "known within " + small(question.found().withinMm()) + ", radius, 95 %"));
    rows.add(
        new Row(
            "Should be at x "
                + size(question.target().xMm())
                + ", y "
                + size(question.target().yMm()),
            ""));
    rows.add(
        new Row(
            "Out by "
                + small(answer.errorMm())
                + answer.error().map(way -> " towards " + way).orElse(""),
            "radius of position error"));
    rows.add(
        new Row(
            "Can be cured up to " + small(Math.max(0, answer.curableMm())),
            "finished at "
                + size(question.finishDiameterMm())
                + ", "
                + small(question.rules().cleanUp().perSideMm())
                + " per side left for the last drill ("
                + question.rules().cleanUp().means()
                + ")"));
    answer
        .filing()
        .flatMap(Filing::after)
        .or(answer::asIs)
        .ifPresent(
            seat ->
                rows.add(
                    new Row(
                        "Head "
                            + (answer.filing().isPresent() ? "then " : "as it is ")
                            + seat.verdict().word()
                            + ", allowance "
                            + small(seat.allowanceAtIntendedMm()),
                        "for "
                            + small(seat.question().expectedErrorMm())
                            + ": "
                            + seat.question().errorMeans())));
    return rows;
  }

  private String small(double mm) {
    return LengthFormat.allowanceBoth(Length.ofMillimetres(mm), first);
  }

  private String size(double mm) {
    return LengthFormat.showBoth(Length.ofMillimetres(mm), first);
  }
}
