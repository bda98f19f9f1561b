package org.fettlebench.club.store.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.club.Goods;
import org.fettlebench.club.Movement;
import org.fettlebench.club.Receipt;
import org.fettlebench.club.StockLine;
import org.fettlebench.measure.Length;
import org.fettlebench.store.derby.internal.DerbyStoreEngine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Thousands of receipts at once, and the list of a big stock. The limits are several times what was
 * measured, so that only a change for the worse in kind is caught, not a busy machine.
 */
class BigStockTest {
  private static final int LINES = Integer.getInteger("fettlebench.test.lines", 5_000);

  @TempDir Path data;

  @Test
  void thousandsOfReceiptsAreOneQuickTransactionAndTheListComesQuickly() {
    try (DerbyStoreEngine engine = new DerbyStoreEngine(data);
        ClubDatabase database = new ClubDatabase(engine)) {
      SqlStock stock = new SqlStock(database);
      List<Receipt> receipts = receipts();
      long begin = System.nanoTime();
      List<Movement> in =
          assertTimeout(
              Duration.ofSeconds(5 + LINES / 500), () -> stock.receive(receipts, "Ann", ""));
      long received = System.nanoTime();
      stock.receive(receipts, "Ann", "");
      long again = System.nanoTime();
      List<StockLine> lines = assertTimeout(Duration.ofSeconds(2 + LINES / 10_000), stock::lines);
      long listed = System.nanoTime();
      stock.lines();
      long listedAgain = System.nanoTime();
      System.out.printf(
          "%d receipts: new %d ms, to lines that are there %d ms; list %d ms, then %d ms%n",
          LINES,
          (received - begin) / 1_000_000,
          (again - received) / 1_000_000,
          (listed - again) / 1_000_000,
          (listedAgain - listed) / 1_000_000);
      assertEquals(LINES, in.size());
      assertEquals(LINES, lines.size());
      assertEquals(6L * LINES, lines.stream().mapToLong(StockLine::quantity).sum());
    }
  }

  private static List<Receipt> receipts() {
    List<Receipt> receipts = new ArrayList<>(LINES);
    for (int i = 0; i < LINES; i++) {
      Goods goods =
          new Goods(
              Goods.Kind.FASTENER,
              "2 BA hexagon screw x " + i + "/64 in",
              "2 BA",
              "hexagon",
              Optional.empty(),
              Optional.of(Length.ofInchFraction(i + 1, 64)),
              "steel");
      String place = "Cabinet " + i % 10 + " / Drawer " + i % 40;
      receipts.add(new Receipt(goods, place, StockLine.Condition.GOOD, 3, Optional.of(5)));
    }
    return receipts;
  }
}
