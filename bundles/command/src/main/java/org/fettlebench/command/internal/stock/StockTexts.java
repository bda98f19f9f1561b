package org.fettlebench.command.internal.stock;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import org.fettlebench.club.Loan;
import org.fettlebench.club.Movement;
import org.fettlebench.club.StockLine;
import org.fettlebench.command.internal.Data;

/** Stock lines and movements in words and as data. */
final class StockTexts {
  private StockTexts() {}

  /** Returns what a line holds. */
  static String what(StockLine line) {
    String material = line.goods().material();
    String name = line.goods().name();
    boolean said =
        material.isEmpty()
            || name.toLowerCase(Locale.ROOT).contains(material.toLowerCase(Locale.ROOT));
    return name
        + (said ? "" : " " + material)
        + (line.condition() == StockLine.Condition.WORN ? " (worn)" : "");
  }

  /** Returns whether fewer are present than should always be there. */
  static boolean low(StockLine line) {
    return line.lowMark().filter(mark -> line.present() < mark).isPresent();
  }

  static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  static Map<String, Object> data(StockLine line) {
    return Data.of(
        "id", line.id(),
        "kind", word(line.goods().kind()),
        "name", line.goods().name(),
        "thread", Data.said(line.goods().thread()),
        "style", Data.said(line.goods().style()),
        "diameterMm", line.goods().diameter().map(Data::mm),
        "diameterIn", line.goods().diameter().map(Data::in),
        "lengthMm", line.goods().length().map(Data::mm),
        "lengthIn", line.goods().length().map(Data::in),
        "material", Data.said(line.goods().material()),
        "place", line.place(),
        "condition", word(line.condition()),
        "quantity", line.quantity(),
        "present", line.present(),
        "lent", line.lent(),
        "holder", Data.said(line.holder()),
        "loans", line.loans().stream().map(StockTexts::data).toList(),
        "lowMark", line.lowMark());
  }

  private static Map<String, Object> data(Loan loan) {
    return Data.of(
        "member", loan.member(),
        "quantity", loan.quantity(),
        "due", loan.due().map(LocalDate::toString));
  }

  static Map<String, Object> data(Movement movement) {
    return Data.of(
        "id", movement.id(),
        "lineId", movement.lineId(),
        "kind", word(movement.kind()),
        "quantity", movement.quantity(),
        "at", movement.at().toString(),
        "member", Data.said(movement.member()),
        "note", Data.said(movement.note()));
  }
}
