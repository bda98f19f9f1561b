package org.fettlebench.desktop.stock.internal;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.fettlebench.club.Goods;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Column;
import org.fettlebench.desktop.widgets.Figures;

/** The columns of the page's two lists. */
final class StockColumns {
  private StockColumns() {}

  static List<Column<StockRow>> ofStock(Desk desk) {
    return List.of(
        Column.<StockRow>words("State", 10, StockRow::state)
            .orderedBy(Comparator.comparingInt(StockRow::pressing))
            .marked(StockRow::mark),
        Column.<StockRow>words("Thread or size", 14, StockRow::size).orderedBy(bySize()),
        Column.<StockRow>words("What", 20, row -> row.what(desk.unit())).upTo(26),
        Column.<StockRow>words("Length", 8, StockRow::length)
            .orderedBy(Comparator.comparingLong(row -> StockRow.sorted(row.goods().length()))),
        Column.words("Material", 9, row -> row.goods().material()),
        Column.<StockRow>words("Place", 20, row -> row.line().place()).upTo(28),
        count("Here now", 10, row -> row.line().present(), true),
        count("Out", 5, row -> row.line().lent(), false),
        Column.<StockRow>figures("Low mark", "", 0, StockColumns::lowMark).wide(10),
        Column.<StockRow>words("Who has it", 21, row -> row.line().holder()).upTo(36));
  }

  /** Drills stand by their size among each other, other things by name as a person would. */
  private static Comparator<StockRow> bySize() {
    Comparator<StockRow> drills =
        Comparator.comparing((StockRow row) -> row.goods().kind() == Goods.Kind.DRILL)
            .thenComparingLong(row -> StockRow.sorted(row.goods().diameter()));
    return drills.thenComparing(StockRow::size, Figures::compareNaturally);
  }

  private static Column<StockRow> count(
      String head, int wide, java.util.function.ToIntFunction<StockRow> count, boolean nothing) {
    return Column.<StockRow>figures(
            head,
            "",
            0,
            row -> {
              int value = count.applyAsInt(row);
              return nothing || value != 0 ? OptionalDouble.of(value) : OptionalDouble.empty();
            })
        .wide(wide);
  }

  private static OptionalDouble lowMark(StockRow row) {
    return row.line().lowMark().map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  static List<Column<LedgerRow>> ofLedger() {
    return List.of(
        Column.<LedgerRow>words("When", 15, row -> Days.show(row.movement().at(), LocalDate.now()))
            .orderedBy(Comparator.comparing(row -> row.movement().at())),
        Column.words("What", 11, LedgerRow::what),
        new Column<LedgerRow>(
            "Change",
            () -> "Change",
            LedgerRow::change,
            Comparator.comparingInt(row -> row.movement().quantity()),
            8,
            true,
            row -> java.util.Optional.empty()),
        Column.<LedgerRow>figures("Held", "", 0, row -> OptionalDouble.of(row.held())).wide(7),
        Column.words("Who", 13, row -> row.movement().member()),
        Column.words("Why", 22, row -> row.movement().note()));
  }
}
