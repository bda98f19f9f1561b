package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.paper.SeatCards;

/** What the page says, as lines for paper and clipboard. */
final class Carded {
  private final Bench bench;
  private final SeatBook book;

  Carded(Bench bench, SeatBook book) {
    this.bench = bench;
    this.book = book;
  }

  SeatCards.Card card(Drawing drawing, SeatAnswer answer, LengthUnit unit) {
    List<String> lines = lines(answer, unit);
    return new SeatCards.Card(
        answer.question().seat().name(),
        answer.question().head().title(),
        answer.verdict(),
        drawing,
        lines.subList(1, lines.size()));
  }

  /** Returns the answer in lines: the verdict first, then its figures and what they rest on. */
  List<String> lines(SeatAnswer answer, LengthUnit unit) {
    var question = answer.question();
    List<String> lines = new ArrayList<>();
    lines.add(
        question.seat().name() + ": " + question.head().title() + " " + answer.verdict().word());
    lines.add(SeatWords.allowance(answer, unit));
    lines.add(SeatWords.expected(answer, unit));
    book.method(bench.sketch())
        .map(
            method ->
                "Chance of success "
                    + SeatWords.percent(
                        method.law().chanceWithin(answer.allowed(), question.seat().intended()))
                    + ".")
        .ifPresent(lines::add);
    lines.add(SeatWords.governs(answer, unit));
    lines.add(
        "Hole "
            + show(question.holeDiameterMm(), unit)
            + " at "
            + SeatWords.place(question.seat().intended(), unit)
            + "; best centre "
            + SeatWords.place(answer.best(), unit)
            + ", allowance there "
            + SeatWords.both(answer.allowanceAtBestMm(), unit)
            + ".");
    lines.add(
        "Head: "
            + question.head().title()
            + ", sweeps "
            + show(question.head().sweepDiameterMm(), unit)
            + (question.head().caveat().isEmpty() ? "" : ", " + question.head().caveat())
            + ".");
    return lines;
  }

  private static String show(double mm, LengthUnit unit) {
    return LengthFormat.showBoth(Length.ofMillimetres(mm), unit);
  }
}
