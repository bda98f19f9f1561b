package org.fettlebench.desktop.kits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.fettlebench.kits.FaultyFileException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KitBookTest {
  private static final String SMALL =
      """
      [kit]
      name = "Small kit"

      [[joint]]
      name = "cover"
      count = 2
      fastener = "M4 hexagon x 12 mm steel"
      clearance = { fit = "medium", depth = "3 mm" }
      """;

  private final Club club = Club.demo();

  private KitBook.Checked look(String wanted, KitBook.Shown before) {
    return club.book().look(wanted, before).checked().orElseThrow();
  }

  @Test
  void showsNothingWhenTheShelfIsEmpty() {
    assertEquals(KitBook.Shown.EMPTY, new Club().book().look("any", KitBook.Shown.EMPTY));
  }

  @Test
  void takesTheNewestWhenTheWantedKitIsGone() {
    club.shelf.keep("Small kit", SMALL);
    assertEquals("Small kit", look("gone", KitBook.Shown.EMPTY).kit());
    assertEquals(Club.DEMO, look(Club.DEMO, KitBook.Shown.EMPTY).kit());
  }

  @Test
  void keepsTheReportUntilSomethingChanges() {
    KitBook.Shown first = club.book().look(Club.DEMO, KitBook.Shown.EMPTY);
    assertSame(first.checked().orElseThrow(), look(Club.DEMO, first));
    club.stockRevision++;
    KitBook.Shown second = club.book().look(Club.DEMO, first);
    assertNotSame(first.checked().orElseThrow(), second.checked().orElseThrow());
    club.modulesRevision++;
    assertNotSame(second.checked().orElseThrow(), look(Club.DEMO, second));
    club.shelf.keep(Club.DEMO, SMALL);
    assertEquals(1, look(Club.DEMO, second).report().orElseThrow().joints().size());
  }

  @Test
  void tellsWhyAKitCannotBeReadAnyMore() {
    club.shelf.keep("Odd kit", SMALL.replace("M4 hexagon", "99 XY hexagon"));
    KitBook.Checked checked = look("Odd kit", KitBook.Shown.EMPTY);
    assertEquals(Optional.empty(), checked.report());
    assertEquals(7, checked.faults().get(0).line());
  }

  @Test
  void keepsAFileWhollyAndReturnsWhatStoodThere(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("small.kit.toml"), SMALL);
    assertEquals(Optional.empty(), club.book().keep(file).before());
    assertEquals(SMALL, club.shelf.kit("Small kit").orElseThrow().text());
    Files.writeString(file, SMALL.replace("count = 2", "count = 3"));
    assertEquals(SMALL, club.book().keep(file).before().orElseThrow().text());
  }

  @Test
  void keepsNothingOfAFaultyFile(@TempDir Path folder) throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("bad.kit.toml"), SMALL.replace("count = 2", "count = 0\ncolour = 1"));
    List<FaultyFileException.Fault> faults =
        assertThrows(FaultyFileException.class, () -> club.book().keep(file)).faults();
    assertTrue(faults.size() >= 2, faults.toString());
    assertEquals(1, club.shelf.kits().size());
  }
}
