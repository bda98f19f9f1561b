package org.fettlebench.desktop.castings.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.mockito.Mockito.mock;

import org.fettlebench.desktop.Page;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.testkit.FelixHarness;
import org.junit.jupiter.api.Test;

/** The bundle in a real framework, with the real castings. */
class CastingPageInFelixTest {
  private static final String SWT =
      "org.eclipse.swt,org.eclipse.swt.accessibility,org.eclipse.swt.custom,"
          + "org.eclipse.swt.graphics,org.eclipse.swt.layout,org.eclipse.swt.program,"
          + "org.eclipse.swt.widgets";

  @Test
  void thePageIsThereWithoutAnythingThatPrints() {
    try (FelixHarness felix =
        FelixHarness.sharing(
                "org.fettlebench.measure",
                "org.fettlebench.drawing",
                "org.fettlebench.kits.api",
                "org.fettlebench.desktop.api",
                "org.fettlebench.paper.api",
                "org.fettlebench.desktop.widgets")
            .packages(SWT)
            .start()) {
      felix.context().registerService(KitFiles.class, mock(KitFiles.class), null);
      felix.start(
          "org.fettlebench.castings.api",
          "org.fettlebench.castings",
          "org.fettlebench.desktop.castings");
      Page page = felix.await(Page.class);
      assertEquals("castings", page.id());
      assertEquals("Casting", page.find("clean up").get(0).title());
    }
  }
}
