package org.fettlebench.desktop.threads.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.mockito.Mockito.mock;

import java.nio.file.Path;
import org.fettlebench.club.Stock;
import org.fettlebench.desktop.Page;
import org.fettlebench.testkit.FelixHarness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The bundle in a real framework, with the real threads and drills. */
class ThreadsPageInFelixTest {
  private static final String SWT =
      "org.eclipse.swt,org.eclipse.swt.accessibility,org.eclipse.swt.custom,"
          + "org.eclipse.swt.graphics,org.eclipse.swt.layout,org.eclipse.swt.program,"
          + "org.eclipse.swt.widgets";

  @TempDir Path data;

  @Test
  void thePageIsThereAndKnowsThreads() {
    try (FelixHarness felix =
        FelixHarness.sharing(
                "org.fettlebench.measure",
                "org.fettlebench.drawing",
                "org.fettlebench.club.api",
                "org.fettlebench.desktop.api",
                "org.fettlebench.paper.api",
                "org.fettlebench.desktop.widgets")
            .packages(SWT)
            .property("fettlebench.data", data.toString())
            .start()) {
      felix.context().registerService(Stock.class, mock(Stock.class), null);
      felix.start(
          "org.fettlebench.tables.api",
          "org.fettlebench.modules.api",
          "org.fettlebench.threads.api",
          "org.fettlebench.tooling.api",
          "org.fettlebench.fasteners.api",
          "org.fettlebench.modules",
          "org.fettlebench.tables",
          "org.fettlebench.threads",
          "org.fettlebench.tooling",
          "org.fettlebench.desktop.threads");
      Page page = felix.await(Page.class);
      assertEquals("2 BA", page.find("2ba").get(0).key());
    }
  }
}
