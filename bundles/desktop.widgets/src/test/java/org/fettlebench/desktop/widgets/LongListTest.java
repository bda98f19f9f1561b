package org.fettlebench.desktop.widgets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.widgets.trial.TrialDesk;
import org.fettlebench.desktop.widgets.trial.Windowed;
import org.fettlebench.measure.LengthUnit;
import org.junit.jupiter.api.Test;

class LongListTest {
  record Item(int number, String name, double held) {}

  private static List<Item> items(int count) {
    return IntStream.range(0, count)
        .mapToObj(i -> new Item(i, i % 12 + " BA item " + i, (i * 37) % 1000))
        .toList();
  }

  private static LongList<Item> list(TrialDesk desk) {
    List<Column<Item>> columns =
        List.of(
            Column.<Item>words("Name", 20, Item::name),
            Column.<Item>figures("Held", "", 0, item -> OptionalDouble.of(item.held())));
    return new LongList<>(desk.shell(), desk, "test", "list", columns).keyedBy(Item::number);
  }

  @Test
  void aHundredThousandRowsFilterAndSortRight() {
    Windowed.run(
        "hundred-thousand",
        desk -> {
          LongList<Item> list = list(desk);
          desk.open(600, 400);
          list.items(items(100_000));
          desk.until("all rows are there", () -> list.table().getItemCount() == 100_000);
          list.sortBy("Held", true);
          list.filter("7ba 99");
          long wanted = items(100_000).stream().filter(i -> has(i, "7ba") && has(i, "99")).count();
          desk.until("the filter is done", () -> list.table().getItemCount() == wanted);
          assertEquals(wanted, list.model().size());
          double before = Double.POSITIVE_INFINITY;
          for (Item item : list.model().shown()) {
            assertTrue(item.held() <= before, "most held first");
            before = item.held();
          }
          assertEquals(list.model().get(0).name(), list.table().getItem(0).getText(0));
          list.filter("");
          desk.until("all are back", () -> list.table().getItemCount() == 100_000);
        });
  }

  @Test
  void theWindowAnswersWhileALongListIsSorted() {
    Windowed.run(
        "responsive",
        desk -> {
          LongList<Item> list = list(desk);
          desk.open(600, 400);
          list.items(items(100_000));
          desk.until("all rows are there", () -> list.table().getItemCount() == 100_000);
          long start = System.nanoTime();
          list.filter("ba 1");
          list.filter("ba 12");
          list.filter("ba 123");
          long blockedMs = (System.nanoTime() - start) / 1_000_000;
          assertTrue(blockedMs < 100, "typing waited " + blockedMs + " ms for the rows");
          long wanted = items(100_000).stream().filter(i -> has(i, "123")).count();
          desk.until("only the last filter counts", () -> list.model().size() == wanted);
        });
  }

  /** Whether a part stands in either cell, spaces and case aside. */
  private static boolean has(Item item, String part) {
    String name = item.name().replace(" ", "").toLowerCase(Locale.ROOT);
    return name.contains(part) || String.valueOf((int) item.held()).contains(part);
  }

  @Test
  void theSelectionSurvivesARefreshAndIsLostWithItsRow() {
    Windowed.run(
        "selection",
        desk -> {
          List<List<Item>> told = new ArrayList<>();
          LongList<Item> list = list(desk).onSelect(told::add);
          desk.open(600, 400);
          list.items(items(20));
          assertTrue(list.select(7));
          list.items(items(20).stream().map(i -> new Item(i.number(), i.name(), 1)).toList());
          assertEquals(1.0, list.selection().get(0).held(), "the new item of the same key");
          assertEquals(7, list.selection().get(0).number());
          list.sortBy("Name", true);
          assertEquals(7, list.selection().get(0).number());
          list.filter("item 12");
          assertTrue(list.selection().isEmpty());
          assertTrue(told.get(told.size() - 1).isEmpty(), "the listener was told");
          assertFalse(list.select(7), "what is not shown cannot be selected");
        });
  }

  @Test
  void aClickOnAHeadSortsAndASecondTurnsTheOrder() {
    Windowed.run(
        "heads",
        desk -> {
          LongList<Item> list = list(desk);
          desk.open(600, 400);
          list.items(items(30));
          list.table().getColumn(1).notifyListeners(SWT.Selection, new Event());
          assertEquals(0, list.model().get(0).held());
          assertEquals(SWT.UP, list.table().getSortDirection());
          list.table().getColumn(1).notifyListeners(SWT.Selection, new Event());
          assertEquals(SWT.DOWN, list.table().getSortDirection());
          assertEquals(999, list.model().get(0).held(), "27 x 37 = 999 is the most held");
        });
  }

  @Test
  void copiedRowsAreTabSeparatedUnderTheirHeads() {
    Windowed.run(
        "copy",
        desk -> {
          LongList<Item> list = list(desk);
          desk.open(600, 400);
          list.items(items(5));
          list.table().select(new int[] {1, 3});
          Windowed.key(list.table(), 'c', 'c', SWT.MOD1);
          Clipboard clipboard = new Clipboard(desk.shell().getDisplay());
          Object text = clipboard.getContents(TextTransfer.getInstance());
          clipboard.dispose();
          assertEquals("Name\tHeld\n1 BA item 1\t37\n3 BA item 3\t111\n", text);
          assertEquals(List.of("2 rows copied, with the heads."), desk.said());
        });
  }

  @Test
  void typingIntoTheListGoesToTheFieldAndEscEmptiesIt() {
    Windowed.run(
        "typing",
        desk -> {
          FilterField field = new FilterField(desk.shell(), desk, "anything");
          LongList<Item> list = list(desk);
          field.narrows(list);
          desk.open(800, 400);
          list.items(items(100));
          list.setFocus();
          Windowed.key(list.table(), '4', '4', 0);
          assertEquals("4", field.typed());
          assertEquals(items(100).stream().filter(i -> has(i, "4")).count(), list.model().size());
          Text text = (Text) field.getChildren()[0];
          Windowed.key(text, SWT.ESC, SWT.ESC, 0);
          assertEquals(100, list.model().size());
          Windowed.key(text, SWT.ARROW_DOWN, '\0', 0);
          assertEquals(1, list.selection().size(), "Down goes to the first row");
        });
  }

  @Test
  void aListThatIsTakenApartTellsNothing() {
    Windowed.run(
        "taken-apart",
        desk -> {
          List<List<Item>> told = new ArrayList<>();
          LongList<Item> list = list(desk).onSelect(told::add);
          desk.open(600, 400);
          list.items(items(20));
          list.selectRow(3);
          assertEquals(1, told.size());
          list.dispose();
          desk.settle();
          assertEquals(1, told.size(), "its page may be gone already");
        });
  }

  @Test
  void enterOpensTheRow() {
    Windowed.run(
        "enter",
        desk -> {
          AtomicReference<Item> opened = new AtomicReference<>();
          LongList<Item> list = list(desk).onOpen(opened::set);
          desk.open(600, 400);
          list.items(items(5));
          list.selectRow(2);
          list.table().notifyListeners(SWT.DefaultSelection, new Event());
          assertEquals(2, opened.get().number());
        });
  }

  @Test
  void widthsAreRememberedInCharacters() {
    Windowed.run(
        "widths",
        desk -> {
          LongList<Item> list = list(desk);
          desk.open(600, 400);
          list.table().getColumn(0).setWidth(311);
          desk.settle();
          LongList<Item> again = list(desk);
          assertEquals(311, again.table().getColumn(0).getWidth(), 1);
        });
  }

  @Test
  void anotherUnitChangesHeadAndFigures() {
    Windowed.run(
        "unit",
        desk -> {
          LongList<GalleryTest.Row> list =
              new LongList<>(desk.shell(), desk, "test", "unit", GalleryTest.columns(desk));
          desk.open(800, 400);
          list.items(GalleryTest.rows());
          assertEquals("Allowance, mm", list.table().getColumn(4).getText());
          assertEquals("1.50", list.table().getItem(0).getText(4));
          desk.unit(LengthUnit.INCH);
          assertEquals("Allowance, in", list.table().getColumn(4).getText());
          assertEquals("0.059", list.table().getItem(0).getText(4));
        });
  }
}
