package org.fettlebench.desktop.stock.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fettlebench.club.Movement;
import org.fettlebench.desktop.widgets.Figures;

/**
 * A movement as a row of a line's ledger.
 *
 * @param movement what happened
 * @param held how many belonged to the line after it
 */
record LedgerRow(Movement movement, int held) {

  /** Returns the rows of a line that now holds so many, newest first as the movements are. */
  static List<LedgerRow> of(List<Movement> newestFirst, int quantity) {
    List<LedgerRow> rows = new ArrayList<>();
    int after = quantity;
    for (Movement movement : newestFirst) {
      rows.add(new LedgerRow(movement, after));
      after -= movement.quantity();
    }
    return rows;
  }

  String what() {
    return movement.kind().name().toLowerCase(Locale.ROOT);
  }

  /** Returns the change with its sign, also where it is more. */
  String change() {
    int change = movement.quantity();
    return change > 0 ? "+" + change : Figures.show(change, 0);
  }
}
