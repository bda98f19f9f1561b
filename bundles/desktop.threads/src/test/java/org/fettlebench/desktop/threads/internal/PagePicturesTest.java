package org.fettlebench.desktop.threads.internal;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.widgets.LongList;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pictures of all faces, to be looked at. */
class PagePicturesTest extends PageTrial {
  @ParameterizedTest
  @CsvSource({
    "light-1280, false, 1.0, 1110, 650, 2 BA",
    "dark-1920, true, 1.0, 1750, 930, 1/4 x 40 ME",
    "light-1280-150, false, 1.5, 1040, 620, M6",
    "dark-1920-150, true, 1.5, 1680, 900, 1/4 BSW",
    "light-1920, false, 1.0, 1750, 930, 2 BA"
  })
  void thePageIsPictured(
      String name, boolean dark, double scale, int width, int height, String thread)
      throws IOException {
    open("blind");
    run(
        dark,
        scale,
        width,
        height,
        robot -> {
          type(thread);
          blind("8 mm", "16 mm");
          desk.picture(PICTURES.resolve("threads-" + name + ".png"));
          assertTrue(says(thread + ": drill"), "the answer is on the page");
        });
  }

  @ParameterizedTest
  @CsvSource({
    "light-1280, false, 1.0, 1080, 690",
    "dark-1920, true, 1.0, 1720, 970",
    "light-1280-150, false, 1.5, 1040, 660"
  })
  void theOtherFacesArePictured(String name, boolean dark, double scale, int width, int height)
      throws IOException {
    run(
        dark,
        scale,
        width,
        height,
        robot -> {
          press("Compare");
          desk.picture(PICTURES.resolve("compare-" + name + ".png"));
          assertTrue(says("2 BA in #10-32 UNF"), "two threads are compared");
          press("Identify");
          find(root, Text.class, "4.68 mm").orElseThrow().setText("4.66 mm");
          find(root, Text.class, "31 tpi").orElseThrow().setText("31.5");
          desk.settle();
          desk.picture(PICTURES.resolve("identify-" + name + ".png"));
          assertTrue(says("2 BA"), "the likeliest is named");
          press("Pairs");
          LongList<?> list = find(root, LongList.class, "").orElseThrow();
          list.selectRow(0);
          desk.settle();
          desk.picture(PICTURES.resolve("pairs-" + name + ".png"));
          assertTrue(says("could be crossed"), "the pairs are counted");
        });
  }

  @ParameterizedTest
  @CsvSource({"light-1280, false, 1.0, 1080, 690", "dark-1920, true, 1.0, 1720, 970"})
  void theFoldsArePictured(String name, boolean dark, double scale, int width, int height)
      throws IOException {
    for (String[] some : new String[][] {{"limits", "near", "speed"}, {"risk", "heads"}}) {
      before.clear();
      for (String fold : new String[] {"sizes", "clearance", "taps"}) {
        before.put("fold." + fold, "folded");
      }
      Arrays.stream(some).forEach(this::open);
      run(
          dark,
          scale,
          width,
          height,
          robot -> {
            desk.picture(PICTURES.resolve("folds-" + some[0] + "-" + name + ".png"));
            assertTrue(says("2 BA: drill"));
          });
    }
  }
}
