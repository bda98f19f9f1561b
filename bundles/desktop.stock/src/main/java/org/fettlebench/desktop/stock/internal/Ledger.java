package org.fettlebench.desktop.stock.internal;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.LongList;

/** The movements of the chosen line, newest first. */
final class Ledger {
  private final Desk desk;
  private final StockBook book;
  private final LongList<LedgerRow> list;
  private Optional<StockRow> wanted = Optional.empty();

  Ledger(Composite parent, Desk desk, StockBook book) {
    this.desk = desk;
    this.book = book;
    list =
        new LongList<>(parent, desk, StockPage.ID, "ledger", StockColumns.ofLedger())
            .whenEmpty("Here stands what came in and went out of the line that is chosen.");
  }

  Control control() {
    return list;
  }

  /** Shows the movements of a line, or none. */
  void show(Optional<StockRow> row) {
    if (row.equals(wanted)) {
      return;
    }
    wanted = row;
    if (row.isEmpty()) {
      list.items(List.of());
    } else {
      StockRow asked = row.get();
      desk.work("Reading the ledger", () -> book.ledger(asked), rows -> take(asked, rows));
    }
  }

  /** Reads the movements anew at the next show, also of the same line. */
  void outdated() {
    wanted = Optional.empty();
  }

  /** A line chosen meanwhile must not get the movements of another. */
  private void take(StockRow asked, List<LedgerRow> rows) {
    if (!list.isDisposed() && wanted.equals(Optional.of(asked))) {
      list.items(rows);
    }
  }
}
