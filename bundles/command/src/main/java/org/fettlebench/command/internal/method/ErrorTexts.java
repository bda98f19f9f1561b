package org.fettlebench.command.internal.method;

import java.util.List;
import org.fettlebench.club.MeasuredError;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.measure.LengthUnit;

/** Measured errors in words and as data. */
final class ErrorTexts {
  private ErrorTexts() {}

  static String table(List<MeasuredError> entries, LengthUnit unit) {
    String symbol = unit.symbol();
    Columns columns =
        new Columns()
            .right(0, 3, 4)
            .row(
                "error",
                "measured",
                "method",
                "x " + symbol,
                "y " + symbol,
                "member",
                "machine",
                "note");
    for (MeasuredError entry : entries) {
      columns.row(
          entry.id(),
          entry.error().measured(),
          entry.error().method(),
          Figures.fine(entry.error().x(), unit),
          Figures.fine(entry.error().y(), unit),
          entry.error().member(),
          entry.error().machine(),
          note(entry));
    }
    return columns.text();
  }

  private static String note(MeasuredError entry) {
    String struck =
        entry
            .struck()
            .map(
                strike ->
                    "struck out"
                        + (strike.member().isEmpty() ? "" : " by " + strike.member())
                        + ": "
                        + strike.reason())
            .orElse("");
    return entry.error().note()
        + (entry.error().note().isEmpty() || struck.isEmpty() ? "" : "; ")
        + struck;
  }

  static Object data(MeasuredError entry) {
    return Data.of(
        "id", entry.id(),
        "date", entry.error().measured().toString(),
        "method", entry.error().method(),
        "xMm", Data.mm(entry.error().x()),
        "yMm", Data.mm(entry.error().y()),
        "member", Data.said(entry.error().member()),
        "machine", Data.said(entry.error().machine()),
        "note", Data.said(entry.error().note()),
        "counts", entry.counts(),
        "struck",
            entry
                .struck()
                .map(
                    strike ->
                        Data.of(
                            "at", strike.at().toString(),
                            "member", Data.said(strike.member()),
                            "reason", strike.reason())));
  }
}
