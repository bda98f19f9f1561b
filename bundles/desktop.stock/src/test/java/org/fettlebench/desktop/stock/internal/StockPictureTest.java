package org.fettlebench.desktop.stock.internal;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.fettlebench.club.Receipt;
import org.fettlebench.desktop.widgets.LongList;
import org.fettlebench.desktop.widgets.trial.TrialDesk;
import org.fettlebench.kits.DemoClub;
import org.fettlebench.testkit.ScreenRobot;
import org.fettlebench.testkit.trade.RealTrade;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pictures of the page with a large stock, to be looked at; and how long that takes. */
class StockPictureTest {
  private static final Path PICTURES = Path.of("target", "pictures");
  private static final int MANY = 100_000;

  private static PaperStock club() {
    List<String> sizes =
        List.of("0 BA", "2 BA", "4 BA", "6 BA", "8 BA", "1/4 BSF", "5/16 BSF", "M3", "M5", "M6");
    StringBuilder list = new StringBuilder(Bench.LIST);
    for (int i = 0; i < 200; i++) {
      list.append(
          "fastener,,%s,%s,,%s,%s,Cabinet / Drawer %d,good,%d,%s%n"
              .formatted(
                  sizes.get(i % 10),
                  i % 10 > 6 ? "socket-cap" : "hexagon",
                  i % 10 > 6 ? 8 + i / 10 + " mm" : 4 + i / 10 + "/16 in",
                  i % 3 == 0 ? "brass" : "steel",
                  i % 10 + 1,
                  5 + i * 7 % 40,
                  i % 4 == 0 ? "10" : ""));
    }
    PaperStock stock = Bench.holding(list.toString());
    stock.lend(4, 1, "Tom Reed", Optional.of(LocalDate.now().plusDays(9)));
    stock.lend(5, 1, "Grace Webb", Optional.of(LocalDate.now().minusDays(3)));
    stock.take(1, 4, "Ann Hall", "bench pump, valve chest");
    stock.count(1, 9, "Tom Reed", "yearly count");
    return stock;
  }

  private static void needScreen() throws IOException {
    boolean screen = !SWT.getPlatform().equals("gtk") || System.getenv("DISPLAY") != null;
    Assumptions.assumeTrue(screen, "no DISPLAY is set, so there is no window to test");
    Files.createDirectories(PICTURES);
  }

  private static StockPage page(PaperStock stock) {
    return new StockPage(
        stock, RealTrade.STOCK_FILES, RealTrade.KIT_FILES, Optional.of(mock(DemoClub.class)));
  }

  @ParameterizedTest
  @CsvSource({
    "light-1280, false, 1.0, 1110, 650, t",
    "receive-1280, false, 1.0, 1110, 650, r",
    "dark-1920, true, 1.0, 1750, 930, l",
    "light-1280-150, false, 1.5, 1040, 620, t",
    "dark-1920-150, true, 1.5, 1680, 900, r"
  })
  void thePageIsPictured(String name, boolean dark, double scale, int width, int height, char key)
      throws IOException {
    needScreen();
    StockPage page = page(club());
    try (TrialDesk desk = new TrialDesk(Display.getDefault(), dark, scale)) {
      page.create(desk.shell(), desk);
      desk.open(width, height);
      page.refresh();
      desk.settle();
      page.show(page.find("2BA hexagon 1/2").get(0));
      page.focus();
      new ScreenRobot(Display.getDefault()).type(String.valueOf(key));
      Path file = PICTURES.resolve("stock-" + name + ".png");
      desk.picture(file);
      assertTrue(Files.size(file) > 10_000, file + " shows something");
    }
  }

  @Test
  void theEmptyPageIsPictured() throws IOException {
    needScreen();
    StockPage page = page(new PaperStock());
    try (TrialDesk desk = new TrialDesk(Display.getDefault(), false, 1)) {
      page.create(desk.shell(), desk);
      desk.open(1110, 650);
      page.refresh();
      desk.picture(PICTURES.resolve("stock-empty.png"));
      assertTrue(Files.exists(PICTURES.resolve("stock-empty.png")));
    }
  }

  @Test
  void aHundredThousandLinesAreShownAndNarrowedWhileThePersonWorksOn() throws IOException {
    needScreen();
    PaperStock stock = new PaperStock();
    List<Receipt> kinds = RealTrade.STOCK_FILES.readStock("list.csv", Bench.LIST);
    stock.receiveMany(
        IntStream.range(0, MANY)
            .mapToObj(
                i -> {
                  Receipt kind = kinds.get(i % kinds.size());
                  return new Receipt(
                      kind.goods(),
                      "Store " + i % 40 + " / Box " + i,
                      kind.condition(),
                      1 + i % 90,
                      kind.lowMark());
                })
            .toList());
    StockPage page = page(stock);
    try (TrialDesk desk = new TrialDesk(Display.getDefault(), false, 1)) {
      var root = page.create(desk.shell(), desk);
      desk.open(1110, 650);
      long begun = System.nanoTime();
      page.refresh();
      long held = (System.nanoTime() - begun) / 1_000_000;
      LongList<?> list = Trees.first(root, LongList.class);
      desk.until("all lines are there", () -> list.model().size() == MANY);
      // The trial desk reads the stock on the window's thread as well, so this is generous.
      assertTrue(held < 3000, "the window was held for " + held + " ms");
      list.filter("cutting box 99");
      desk.until("the list is narrowed", () -> list.model().size() < 1000);
    }
  }
}
