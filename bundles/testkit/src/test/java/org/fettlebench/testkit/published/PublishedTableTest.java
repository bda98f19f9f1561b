package org.fettlebench.testkit.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

class PublishedTableTest {
  private final PublishedTable table = PublishedTable.read(PublishedTableTest.class, "small.csv");

  private String failure(Consumer<PublishedRow> test) {
    return assertThrows(AssertionError.class, () -> table.holdEach(test)).getMessage();
  }

  private static void size(PublishedRow row) {
    row.cell("size");
  }

  @Test
  void passesWhenEveryCellIsHeldOrSetApart() {
    table.apart("words", "note");
    table.holdEach(
        row -> {
          size(row);
          row.check("pitch", row.cell("size").equals("#10") ? 0.754 : 0.996);
          row.check("area", 12.549);
        });
  }

  @Test
  void failsForARowThatIsPassedOverAndForAColumnNobodyLooksAt() {
    String message =
        failure(
            row -> {
              if (row.cell("size").equals("#10")) {
                row.check("pitch", 0.75);
              }
            });
    assertTrue(message.contains("small.csv: 3 faults"), message);
    assertTrue(message.contains("nobody looked at area = 12.5 of {size=#10"), message);
    assertTrue(message.contains("nobody looked at pitch = 1.00 of {size=1-1/8"), message);
    assertTrue(message.contains("nobody looked at note = a word"), message);
  }

  @Test
  void failsBeyondHalfAUnitOfTheLastDigitAndForNotANumber() {
    table.apart("not looked at here", "area", "note");
    String message =
        failure(
            row -> {
              size(row);
              row.check("pitch", row.cell("size").equals("#10") ? 0.7551 : Double.NaN);
            });
    assertTrue(message.contains("2 faults"), message);
  }

  @Test
  void refusesOnlyWhatDisagrees() {
    table.apart("not looked at here", "area", "note");
    String message =
        failure(
            row -> {
              size(row);
              row.refuse("pitch", row.cell("size").equals("#10") ? 0.754 : 1.1, "a slip");
            });
    assertTrue(message.contains("1 faults"), message);
    assertTrue(message.contains("need not be refused: a slip"), message);
  }

  @Test
  void failsWhenNothingWasHeld() {
    table.apart("not looked at here", "pitch", "area", "note");
    assertTrue(failure(PublishedTableTest::size).contains("no figure was held"));
  }

  @Test
  void tellsWhatATestStumbledOver() {
    assertTrue(failure(row -> row.cell("depth")).contains("no column depth"));
    assertTrue(failure(row -> row.number("note")).contains("note is no number"));
    assertTrue(failure(row -> row.passOver("note", " ")).contains("a reason must be given"));
    assertThrows(IllegalArgumentException.class, () -> table.apart("why", "depth"));
    assertThrows(AssertionError.class, () -> table.apart("", "note"));
  }

  @Test
  void readsFractionsAndMixedNumbers() {
    PublishedRow row =
        new PublishedRow(Map.of("a", "1-1/8", "b", "2 3/4", "c", "7/16", "d", "-0.5"));
    assertEquals(1.125, row.number("a"));
    assertEquals(2.75, row.number("b"));
    assertEquals(0.4375, row.number("c"));
    assertEquals(-0.5, row.number("d"));
  }

  @Test
  void holdsWordsByWhatIsSaidOfThem() {
    PublishedRow row = new PublishedRow(Map.of("a", "M6", "b", ""));
    row.that("a", () -> false, "is another");
    row.that("b", () -> false, "is not printed");
    assertEquals(1, row.faults().size());
  }

  @Test
  void refusesATableWithoutSources() {
    assertThrows(
        IllegalArgumentException.class,
        () -> PublishedTable.read(PublishedTableTest.class, "sourceless.csv"));
    assertThrows(
        IllegalArgumentException.class,
        () -> PublishedTable.read(PublishedTableTest.class, "absent.csv"));
  }
}
