package org.fettlebench.desktop.stock.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.mockito.Mockito.mock;

import org.fettlebench.club.Stock;
import org.fettlebench.desktop.Page;
import org.fettlebench.kits.DemoClub;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.StockFiles;
import org.fettlebench.testkit.FelixHarness;
import org.junit.jupiter.api.Test;

/** The bundle in a real framework. */
class StockPageInFelixTest {
  private static final String SWT =
      "org.eclipse.swt,org.eclipse.swt.custom,org.eclipse.swt.graphics,org.eclipse.swt.layout,"
          + "org.eclipse.swt.widgets";

  private static FelixHarness felix() {
    return FelixHarness.sharing(
            "org.fettlebench.measure",
            "org.fettlebench.drawing",
            "org.fettlebench.club.api",
            "org.fettlebench.kits.api",
            "org.fettlebench.desktop.api",
            "org.fettlebench.desktop.widgets")
        .packages(SWT)
        .start();
  }

  @Test
  void thePageIsThereWithAndWithoutADemoClub() {
    try (FelixHarness felix = felix()) {
      var context = felix.context();
      context.registerService(Stock.class, new PaperStock(), null);
      context.registerService(StockFiles.class, mock(StockFiles.class), null);
      context.registerService(KitFiles.class, mock(KitFiles.class), null);
      felix.start("org.fettlebench.desktop.stock");
      assertEquals("stock", felix.await(Page.class).id());
      context.registerService(DemoClub.class, mock(DemoClub.class), null);
      assertEquals("Stock", felix.await(Page.class).title());
    }
  }
}
