package org.fettlebench.command.internal.seat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.command.internal.Footnotes;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.holes.chance.Chance;
import org.fettlebench.holes.chance.MethodChance;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** Chances over a seat in words and as data. */
final class ChanceTexts {
  private ChanceTexts() {}

  /**
   * What is told.
   *
   * @param answer of the seat
   * @param planned id of the method that the file names
   * @param all each method's chance, least careful first
   * @param enough the least careful one that reaches the asked chance
   * @param asked chance, between 0 and 1
   * @param thrown the simulated chance of each at the intended centre; none when not asked
   */
  record Told(
      SeatAnswer answer,
      String planned,
      List<MethodChance> all,
      Optional<MethodChance> enough,
      double asked,
      List<Chance> thrown) {

    String text(LengthUnit unit) {
      Footnotes sources = new Footnotes();
      return answer.question().seat().name()
          + ", "
          + answer.question().head().title()
          + ": chance that the hole lands where the head sits\n"
          + columns(sources, unit).text()
          + sources.text()
          + "\n"
          + where(unit)
          + "\n"
          + conclusion()
          + caveat();
    }

    private Columns columns(Footnotes sources, LengthUnit unit) {
      Columns columns =
          new Columns()
              .indent(2)
              .row(
                  "method",
                  "at the intended centre",
                  "at the best centre",
                  "95 % within, radius",
                  "from");
      for (int i = 0; i < all.size(); i++) {
        MethodChance each = all.get(i);
        columns.row(
            each.method().id() + (each.method().id().equals(planned) ? " (the file's)" : ""),
            each.atIntended().percent()
                + (thrown.isEmpty() ? "" : ", simulated " + simulated(thrown.get(i))),
            each.atBest().percent(),
            Figures.allowance(each.method().errorRadiusMm(0.95), unit),
            sources.mark(Figures.source(each.method().source())));
      }
      return columns;
    }

    private static String simulated(Chance chance) {
      return String.format(
          Locale.ROOT, "%.2f +/- %.2f %%", 100 * chance.value(), 100 * chance.standardError());
    }

    private String where(LengthUnit unit) {
      Point best = answer.best();
      return "Integrated over the allowed centres, out by "
          + neglected()
          + " at most"
          + (thrown.isEmpty()
              ? ""
              : "; simulated with " + thrown.get(0).trials() + " holes, +/- one standard error")
          + ". Best centre: x "
          + Figures.size(best.xMm(), unit)
          + ", y "
          + Figures.size(best.yMm(), unit)
          + ".";
    }

    private String neglected() {
      double most =
          all.stream().mapToDouble(each -> each.atIntended().standardError()).max().orElse(0);
      return String.format(Locale.ROOT, "%.2g %%", 100 * most);
    }

    private String conclusion() {
      String wanted = new Chance(asked, 0, 0).percent();
      if (enough.isPresent()) {
        return "Least careful method that still reaches "
            + wanted
            + ": "
            + enough.get().method().id()
            + " ("
            + enough.get().method().title()
            + ").";
      }
      Optional<MethodChance> moved =
          all.stream().filter(each -> each.atBest().value() >= asked).findFirst();
      return "No method listed reaches "
          + wanted
          + " at the intended centre"
          + moved
              .map(each -> "; at the best centre " + each.method().id() + " does.")
              .orElse(", nor at the best centre. \"seat check\" looks for other cures.");
    }

    private String caveat() {
      String caveat = answer.question().head().caveat();
      return caveat.isEmpty() ? "" : "\nThe head's sizes are less than certain: " + caveat + ".";
    }

    Map<String, Object> data() {
      return Data.of(
          "seat", answer.question().seat().name(),
          "head", answer.question().head().title(),
          "caveat", Data.said(answer.question().head().caveat()),
          "verdict", answer.verdict().word(),
          "askedPercent", Data.rounded(100 * asked, 6),
          "plannedMethod", planned,
          "intended", point(answer.question().seat().intended()),
          "best", point(answer.best()),
          "methods", IntStream.range(0, all.size()).mapToObj(this::method).toList(),
          "leastCareful", enough.map(each -> each.method().id()));
    }

    private Object method(int index) {
      MethodChance each = all.get(index);
      return Data.of(
          "id", each.method().id(),
          "title", each.method().title(),
          "atIntended", chance(each.atIntended()),
          "atBest", chance(each.atBest()),
          "simulatedAtIntended",
              thrown.isEmpty() ? Optional.empty() : Optional.of(chance(thrown.get(index))),
          "errorRadiusMm", Data.mm(each.method().errorRadiusMm(0.95)),
          "withinErrorRadiusPercent", 95,
          "source", Figures.sourceData(each.method().source()));
    }

    private static Object chance(Chance chance) {
      return Data.of(
          "chancePercent", Data.rounded(100 * chance.value(), 4),
          "standardErrorPercent", Data.rounded(100 * chance.standardError(), 4),
          "trialCount", chance.trials());
    }

    private static Object point(Point point) {
      return Data.of("xMm", Data.mm(point.xMm()), "yMm", Data.mm(point.yMm()));
    }
  }
}
