package org.fettlebench.desktop.stock.internal;

import org.fettlebench.kits.StockFiles;

/**
 * What the page works with, all of it without a window.
 *
 * @param book reads the stock
 * @param deeds changes it
 * @param lists lists as files
 * @param files goods as people say them
 */
record StockShop(StockBook book, StockDeeds deeds, StockLists lists, StockFiles files) {

  /** What came of something, and the stock after it. */
  record Answer(Outcome outcome, StockBook.Reading reading, StockBook.Names names) {}

  /** Reads what an outcome changed. */
  Answer after(StockBook.Reading before, Outcome outcome) {
    StockBook.Reading now =
        outcome instanceof Outcome.Done done ? book.after(before, done.lines()) : before;
    return new Answer(outcome, now, book.names());
  }
}
