package org.fettlebench.desktop.stock.internal;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import org.fettlebench.desktop.Page;
import org.fettlebench.desktop.widgets.ListModel;
import org.fettlebench.measure.LengthUnit;

/**
 * Finds stock lines for the find box, also before the page was ever shown: then it has the stock
 * read on another thread, and finds from the next letter on.
 */
final class StockFinder {
  private static final int MOST = 6;

  private final StockBook book;
  private final AtomicBoolean reading = new AtomicBoolean();
  private volatile StockBook.Reading known = StockBook.Reading.NONE;
  private volatile ListModel<StockRow> model = ListModel.of(List.of(), StockFinder::words);

  StockFinder(StockBook book) {
    this.book = book;
  }

  void know(StockBook.Reading newReading) {
    known = newReading;
    model = ListModel.of(newReading.rows(), StockFinder::words);
  }

  private static String words(StockRow row) {
    return row.size()
        + "\n"
        + row.goods().name()
        + "\n"
        + row.what(LengthUnit.MILLIMETRE)
        + "\n"
        + row.goods().kind()
        + "\n"
        + row.line().place();
  }

  List<Page.Found> find(String typed) {
    if (book.stale(known) && reading.compareAndSet(false, true)) {
      CompletableFuture.supplyAsync(book::read)
          .thenAccept(this::know)
          .whenComplete((nothing, thrown) -> reading.set(false));
    }
    return model.filtered(typed).shown().stream().limit(MOST).map(StockFinder::found).toList();
  }

  private static Page.Found found(StockRow row) {
    return new Page.Found(
        StockPage.ID,
        String.valueOf(row.id()),
        row.goods().name(),
        row.line().present() + " in " + row.line().place());
  }
}
