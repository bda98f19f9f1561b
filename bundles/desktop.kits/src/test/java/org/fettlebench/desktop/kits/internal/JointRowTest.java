package org.fettlebench.desktop.kits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fettlebench.desktop.widgets.VerdictMark;
import org.junit.jupiter.api.Test;

class JointRowTest {
  private final List<JointRow> rows =
      JointsList.rows(
          Club.demo().book().look(Club.DEMO, KitBook.Shown.EMPTY).report().orElseThrow());

  private JointRow row(String name) {
    return rows.stream().filter(row -> row.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void putsWhatCannotBeMadeBeforeWhatIsOnlyShort() {
    List<String> words = rows.stream().sorted(JointRow.WORST_FIRST).map(JointRow::word).toList();
    assertTrue(words.lastIndexOf("fouls") < words.indexOf("fails"), words.toString());
    assertTrue(words.lastIndexOf("fails") < words.indexOf("tight"), words.toString());
    assertTrue(words.lastIndexOf("tight") < words.indexOf("clears"), words.toString());
  }

  @Test
  void putsTheLeastAllowanceFirstAmongThoseThatFoul() {
    List<Long> allowances =
        rows.stream()
            .sorted(JointRow.WORST_FIRST)
            .filter(row -> row.word().equals("fouls"))
            .map(row -> row.allowance().orElseThrow().nanometres())
            .toList();
    assertEquals(allowances.stream().sorted().toList(), allowances);
  }

  /** The demo's 2 BA head on a boss 3/8 in square: worked by hand in the demo's own tests. */
  @Test
  void saysWhatTheDemoIsMadeToShow() {
    assertEquals("tight", row("barrel flange").word());
    assertEquals(VerdictMark.HALF, row("barrel flange").mark());
    assertEquals("better from stock", row("barrel flange").supplyInFull());
    assertEquals("not measured", row("name plate").word());
    assertEquals(VerdictMark.OPEN, row("name plate").mark());
  }

  @Test
  void countsWhatIsMissing() {
    // The kit needs 4, and 0 were counted in the bag.
    assertEquals("short; 4 missing", row("name plate").supplyInFull());
    assertEquals("short", row("name plate").supplyInShort());
    assertEquals(VerdictMark.STRUCK, row("name plate").supplyMark());
  }

  @Test
  void marksACompleteJointWhoseToolLacks() {
    JointRow plate = row("motor plate");
    assertEquals("complete; no 6.6 mm drill", plate.supplyInFull());
    assertEquals("complete; lacks drill", plate.supplyInShort());
    assertEquals(VerdictMark.HALF, plate.supplyMark());
  }
}
