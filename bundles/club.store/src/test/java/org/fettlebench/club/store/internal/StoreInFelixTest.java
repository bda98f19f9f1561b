package org.fettlebench.club.store.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.fettlebench.club.Goods;
import org.fettlebench.club.KitShelf;
import org.fettlebench.club.Receipt;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.store.StoreEngine;
import org.fettlebench.testkit.FelixHarness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;

/** The store's bundles in a real framework. */
class StoreInFelixTest {
  @TempDir Path data;

  private FelixHarness felix() {
    return FelixHarness.sharing(
            "org.fettlebench.measure", "org.fettlebench.club.api", "org.fettlebench.store.api")
        .property("fettlebench.data", data.toString())
        .start();
  }

  @Test
  void theBundlesGiveStockAndShelfAndKeepThemOverARestart() {
    try (FelixHarness felix = felix()) {
      felix.start("org.fettlebench.store.derby", "org.fettlebench.club.store");
      Stock stock = felix.await(Stock.class);
      assertNotSame(SqlStock.class, stock.getClass(), "the bundle's own class is wanted");
      stock.receive(List.of(receipt()), "Ann Turner", "");
      felix.await(KitShelf.class).keep("Feed pump", "text");
      assertTrue(Files.isDirectory(felix.await(StoreEngine.class).backup("evening")));
    }
    assertFalse(Files.exists(data.resolve("store/db.lck")), "the store was not shut down");
    assertTrue(Files.exists(data.resolve("log/derby.log")));
    try (FelixHarness felix = felix()) {
      felix.start("org.fettlebench.store.derby", "org.fettlebench.club.store");
      assertEquals(3, felix.await(Stock.class).lines().get(0).quantity());
      assertEquals("text", felix.await(KitShelf.class).kit("Feed pump").orElseThrow().text());
    }
  }

  @Test
  void theStoreComesBackWhenItsEngineIsStartedAgain() throws Exception {
    try (FelixHarness felix = felix()) {
      felix.start("org.fettlebench.store.derby", "org.fettlebench.club.store");
      felix.await(Stock.class).receive(List.of(receipt()), "", "");
      Bundle engine = felix.bundle("org.fettlebench.store.derby").orElseThrow();
      engine.stop();
      felix.awaitGone(Stock.class);
      assertFalse(Files.exists(data.resolve("store/db.lck")), "the store was not shut down");
      engine.start();
      assertEquals(1, felix.await(Stock.class).lines().size());
    }
  }

  @Test
  void theEngineExportsNothingAndBringsNoActivator() {
    try (FelixHarness felix = felix()) {
      felix.start("org.fettlebench.store.derby");
      var headers = felix.bundle("org.fettlebench.store.derby").orElseThrow().getHeaders();
      assertEquals(null, headers.get("Export-Package"));
      assertEquals(null, headers.get("Bundle-Activator"));
      assertEquals(null, headers.get("DynamicImport-Package"));
    }
  }

  private static Receipt receipt() {
    Goods pin = new Goods(Goods.Kind.SUNDRY, "pin", "", "", Optional.empty(), Optional.empty(), "");
    return new Receipt(pin, "Bench", StockLine.Condition.GOOD, 3, Optional.empty());
  }
}
