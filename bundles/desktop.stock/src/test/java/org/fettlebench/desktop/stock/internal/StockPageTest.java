package org.fettlebench.desktop.stock.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.verify;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.fettlebench.club.Movement;
import org.fettlebench.club.StockLine;
import org.fettlebench.desktop.Page;
import org.fettlebench.desktop.widgets.LongList;
import org.fettlebench.desktop.widgets.trial.TrialDesk;
import org.fettlebench.kits.DemoClub;
import org.fettlebench.testkit.ScreenRobot;
import org.fettlebench.testkit.trade.RealTrade;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StockPageTest {
  private static final Path PICTURES = Path.of("target", "pictures");

  @TempDir Path folder;
  private PaperStock stock = Bench.holding(Bench.LIST);
  private final DemoClub demo = mock(DemoClub.class);
  private StockPage page;
  private TrialDesk desk;
  private Control root;
  private ScreenRobot robot;

  private void run(Consumer<ScreenRobot> test) throws IOException {
    boolean screen = !SWT.getPlatform().equals("gtk") || System.getenv("DISPLAY") != null;
    Assumptions.assumeTrue(screen, "no DISPLAY is set, so there is no window to test");
    Files.createDirectories(PICTURES);
    Display display = Display.getDefault();
    page = new StockPage(stock, RealTrade.STOCK_FILES, RealTrade.KIT_FILES, Optional.of(demo));
    try (TrialDesk made = new TrialDesk(display, false, 1)) {
      desk = made;
      root = page.create(desk.shell(), desk);
      desk.open(1110, 650);
      page.refresh();
      desk.settle();
      robot = new ScreenRobot(display);
      try {
        test.accept(robot);
      } catch (RuntimeException | Error failure) {
        try {
          desk.picture(PICTURES.resolve("failed.png"));
        } catch (RuntimeException | Error noPicture) {
          failure.addSuppressed(noPicture);
        }
        throw failure;
      }
    }
  }

  private static <C extends Control> Optional<C> find(Control at, Class<C> type, String text) {
    if (type.isInstance(at) && at.isVisible() && words(at).contains(text)) {
      return Optional.of(type.cast(at));
    }
    if (at instanceof Composite composite) {
      for (Control child : composite.getChildren()) {
        Optional<C> found = find(child, type, text);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  private static String words(Control control) {
    return control instanceof Label label
        ? label.getText()
        : control instanceof Button button
            ? button.getText()
            : control instanceof Text text ? text.getMessage() : "";
  }

  @SuppressWarnings("unchecked")
  private LongList<StockRow> list() {
    return find(root, LongList.class, "").orElseThrow();
  }

  private boolean says(String words) {
    return find(root, Label.class, words).isPresent();
  }

  private void press(String text) {
    find(root, Button.class, text).orElseThrow().notifyListeners(SWT.Selection, new Event());
    desk.settle();
  }

  private void choose(String name) {
    StockLine line =
        stock.lines().stream().filter(l -> l.goods().name().equals(name)).findFirst().orElseThrow();
    assertTrue(list().select(line.id()), name + " is in the list");
    list().setFocus();
    desk.settle();
  }

  private StockLine line(String name) {
    return stock.lines().stream()
        .filter(l -> l.goods().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void takingIsALetterANumberAndEnterAndIsUndone() throws IOException {
    run(
        robot -> {
          String name = "2 BA hexagon screw x 1/2 in, steel";
          choose(name);
          robot.type("t");
          robot.type("5");
          robot.press(SWT.CR);
          desk.until("it is taken", () -> line(name).quantity() == 7);
          assertEquals(
              "Took 5 of " + name + ". 7 are in Cabinet / Drawer 3 now.",
              desk.said().get(desk.said().size() - 1));
          assertTrue(says("7 are in Cabinet / Drawer 3"), "the counter shows what is there now");
          desk.undo();
          assertEquals(12, line(name).quantity());
        });
  }

  @Test
  void tooManyAreRefusedUnderTheFieldAndNothingChanges() throws IOException {
    run(
        robot -> {
          choose("2 BA hexagon screw x 1/2 in, steel");
          robot.type("t");
          robot.type("13");
          robot.press(SWT.CR);
          assertTrue(says("only 12 of 2 BA hexagon screw x 1/2 in, steel"), "the remedy is said");
          robot.press(SWT.ESC);
          assertFalse(says("only 12"), "Esc closes the form");
          assertEquals(List.of(), desk.said());
        });
  }

  @Test
  void lettersThatAreNoActionsGoToTheFindBox() throws IOException {
    run(
        robot -> {
          choose("Cutting oil");
          robot.type("m5");
          desk.until("the list is narrowed", () -> list().model().size() == 1);
          assertEquals("M5", list().model().get(0).size());
        });
  }

  @Test
  void everyDeedWorksFromItsButton() throws IOException {
    run(
        robot -> {
          String name = "Cutting oil";
          choose(name);
          deed("Count", "2");
          assertEquals(2, line(name).quantity());
          deed("Put back", "4");
          assertEquals(6, line(name).quantity());
          deed("Scrap", "1");
          assertEquals(5, line(name).quantity());
          List<Movement.Kind> kinds =
              stock.movements(line(name).id()).stream().map(Movement::kind).toList();
          assertEquals(
              List.of(
                  Movement.Kind.SCRAPPED,
                  Movement.Kind.RETURNED,
                  Movement.Kind.COUNTED,
                  Movement.Kind.RECEIVED),
              kinds);
        });
  }

  /** Presses the tool's button, types a number and presses Enter. */
  private void deed(String button, String number) {
    press("&" + button);
    robot.type(number);
    robot.press(SWT.CR);
    desk.settle();
  }

  @Test
  void lendingSaysWhoHasItAndBackFromLoanEndsThat() throws IOException {
    run(
        robot -> {
          choose("No 22 drill");
          press("&Lend");
          robot.type("1");
          find(root, Combo.class, "").orElseThrow();
          Combo to = combos().get(1);
          to.setText("Tom Reed");
          find(root, Text.class, "2 weeks").orElseThrow().setText("2 weeks");
          to.setFocus();
          robot.press(SWT.CR);
          desk.settle();
          assertEquals("Tom Reed", line("No 22 drill").loans().get(0).member());
          assertEquals("out", list().selection().get(0).state());
          deedWithDefaults("&Back from loan");
          assertEquals(0, line("No 22 drill").lent());
          desk.undo();
          assertEquals(1, line("No 22 drill").lent());
        });
  }

  private void deedWithDefaults(String button) {
    press(button);
    robot.press(SWT.CR);
    desk.settle();
  }

  private List<Combo> combos() {
    List<Combo> all = new java.util.ArrayList<>();
    gather(root, all);
    return all;
  }

  private static void gather(Control at, List<Combo> all) {
    if (at instanceof Combo combo && combo.isVisible()) {
      all.add(combo);
    } else if (at instanceof Composite composite) {
      for (Control child : composite.getChildren()) {
        gather(child, all);
      }
    }
  }

  @Test
  void oneLineAsAPersonSaysItIsReceived() throws IOException {
    run(
        robot -> {
          press("&Receive");
          robot.type("drill 4.1 mm");
          assertTrue(says("Understood: 4.1 mm drill"), "what is typed is understood at once");
          robot.press(SWT.CR);
          assertTrue(says("How many is missing"), "the field to mend is named");
          robot.type("3");
          Combo place = combos().get(1);
          place.setFocus();
          robot.type("Drill stand/Met");
          place.setText("Drill stand/Metric");
          robot.press(SWT.CR);
          desk.settle();
          StockLine line = line("4.1 mm drill");
          assertEquals("Drill stand / Metric", line.place());
          assertEquals(3, line.quantity());
          desk.undo();
          assertEquals(0, line("4.1 mm drill").quantity());
        });
  }

  @Test
  void aFaultyListIsRefusedWholeWithAllItsFaults() throws IOException {
    Path file = folder.resolve("bad.csv");
    Files.writeString(
        file,
        """
        kind,name,thread,style,diameter,length,material,place,condition,quantity,low-mark
        fastener,,2 BB,hexagon,,1/2 in,steel,Drawer,good,12,
        fastener,,2 BA,hexagon,,1/2 in,steel,Drawer,good,minus,
        """);
    run(
        robot -> {
          int before = stock.lines().size();
          view().receive(file);
          assertTrue(says("bad.csv has 2 faults. Nothing of it was received."));
          assertTrue(says("2 BB") && says("minus"), "each fault is named");
          assertEquals(before, stock.lines().size());
        });
  }

  private StockView view() {
    try {
      var field = StockPage.class.getDeclaredField("view");
      field.setAccessible(true);
      return (StockView) field.get(page);
    } catch (ReflectiveOperationException impossible) {
      throw new AssertionError(impossible);
    }
  }

  @Test
  void aListThatWasExportedIsReceivedByAnEmptyStock() throws IOException {
    Path file = folder.resolve("all.csv");
    run(
        robot -> {
          view().export(file);
          assertEquals("7 lines written to " + file + ".", desk.said().get(0));
          stock = new PaperStock();
        });
    run(
        robot -> {
          assertTrue(says("Nothing is in stock yet"));
          view().receive(file);
          desk.settle();
          assertEquals(7, list().model().size());
          desk.undo();
          assertTrue(
              stock.lines().stream().allMatch(l -> l.quantity() == 0), "all of it is undone");
        });
  }

  @Test
  void anEmptyStockOffersTheDemoClub() throws IOException {
    stock = new PaperStock();
    run(
        robot -> {
          press("demo club");
          verify(demo).load();
        });
  }

  @Test
  void whatPressesStandsOnTopAndTheAnswerCountsIt() throws IOException {
    stock.lend(5, 1, "Tom Reed", Optional.of(LocalDate.now().minusDays(1)));
    run(
        robot -> {
          assertTrue(says("7 lines: 1 overdue, 1 low, 1 worn"));
          List<String> states = list().model().shown().stream().map(StockRow::state).toList();
          assertEquals(List.of("overdue", "low", "worn", "good", "good", "good", "good"), states);
        });
  }

  @Test
  void aPlaceAndAKindNarrowTheList() throws IOException {
    run(
        robot -> {
          Tree tree = find(root, Tree.class, "").orElseThrow();
          assertEquals("All places (7)", tree.getItem(0).getText());
          tree.setSelection(tree.getItem(2));
          assertEquals("Drill stand (2)", tree.getItem(2).getText());
          tree.notifyListeners(SWT.Selection, new Event());
          assertEquals(2, list().model().size());
          Button taps = find(root, Button.class, "taps").orElseThrow();
          taps.setSelection(true);
          taps.notifyListeners(SWT.Selection, new Event());
          assertEquals(0, list().model().size());
        });
  }

  @Test
  void whatOthersChangedIsSeenAtTheNextLookAndTheSelectionStays() throws IOException {
    run(
        robot -> {
          choose("Cutting oil");
          int before = stock.readings;
          page.refresh();
          assertEquals(before, stock.readings, "nothing changed, nothing is read");
          stock.take(line("Cutting oil").id(), 1, "Tom Reed", "");
          page.refresh();
          assertEquals("Cutting oil", list().selection().get(0).goods().name());
          assertEquals(2, list().selection().get(0).line().present());
        });
  }

  @Test
  void theFindBoxGoesToALine() throws IOException {
    run(
        robot -> {
          List<Page.Found> found = page.find("oil");
          assertEquals("Cutting oil", found.get(0).title());
          page.show(found.get(0));
          assertEquals("Cutting oil", list().selection().get(0).goods().name());
        });
  }
}
