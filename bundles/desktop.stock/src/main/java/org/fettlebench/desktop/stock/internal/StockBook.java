package org.fettlebench.desktop.stock.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;

/** Reads the stock, all of it only when that is needed. Knows no window; for any thread. */
final class StockBook {
  private final Stock stock;
  private final Supplier<LocalDate> today;

  StockBook(Stock stock, Supplier<LocalDate> today) {
    this.stock = stock;
    this.today = today;
  }

  /**
   * The stock at one moment.
   *
   * @param revision of the stock then; a later one may differ
   * @param rows all lines, in the order of the stock
   * @param places where they are
   * @param summary of them in one sentence
   */
  record Reading(long revision, List<StockRow> rows, Places places, String summary) {
    /** Before anything was read. */
    static final Reading NONE = Reading.of(-1, List.of());

    /** Copies what could change. */
    Reading {
      rows = List.copyOf(rows);
    }

    static Reading of(long revision, List<StockRow> rows) {
      return new Reading(revision, rows, Places.of(rows), StockSummary.of(rows));
    }
  }

  /** Returns whether a reading is not what the stock is now; waits for nothing. */
  boolean stale(Reading reading) {
    return reading.revision() != stock.revision();
  }

  Reading read() {
    // Asked before the lines are read: a change in between is then seen at the next look.
    long revision = stock.revision();
    LocalDate day = today.get();
    return Reading.of(
        revision, stock.lines().stream().map(line -> new StockRow(line, day)).toList());
  }

  /**
   * Brings a reading up to date after one change of one's own: rereads only the lines it touched,
   * unless something else changed as well.
   *
   * @param changed keys of the lines; empty when they are many
   */
  Reading after(Reading before, List<Long> changed) {
    long revision = stock.revision();
    if (changed.isEmpty() || revision != before.revision() + 1) {
      return read();
    }
    List<StockRow> rows = new ArrayList<>(before.rows());
    for (long id : changed) {
      Optional<StockLine> line = stock.line(id);
      int at = indexOf(rows, id);
      if (line.isEmpty() || at < 0) {
        return read();
      }
      rows.set(at, new StockRow(line.get(), today.get()));
    }
    return Reading.of(revision, rows);
  }

  private static int indexOf(List<StockRow> rows, long id) {
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).id() == id) {
        return i;
      }
    }
    return -1;
  }

  /** Returns the ledger of a line, newest first. */
  List<LedgerRow> ledger(StockRow row) {
    return LedgerRow.of(stock.movements(row.id()), row.line().quantity());
  }

  /** Members and places used so far, for completion. */
  record Names(List<String> members, List<String> places) {}

  Names names() {
    return new Names(stock.members(), stock.places());
  }
}
