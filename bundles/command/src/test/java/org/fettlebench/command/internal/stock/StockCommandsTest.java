package org.fettlebench.command.internal.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.club.StockLine;
import org.fettlebench.club.StockLine.Condition;
import org.fettlebench.command.internal.FreshClub;
import org.fettlebench.command.internal.Session;
import org.fettlebench.command.internal.Session.Answer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StockCommandsTest {
  @TempDir static Path folder;
  private static FreshClub club;
  private static Session session;

  @BeforeAll
  static void openTheClub() {
    club = new FreshClub(folder);
    session =
        new Session(
            new StockList(club.stock()),
            new StockTake(club.stock()),
            new StockPutBack(club.stock()),
            new StockScrap(club.stock()),
            new StockCount(club.stock()),
            new StockUndo(club.stock()),
            new StockHistory(club.stock()),
            new ToolLend(club.stock()),
            new ToolReturn(club.stock()),
            new ToolOut(club.stock()));
  }

  @AfterAll
  static void closeTheClub() {
    club.close();
  }

  private static StockLine line(long id) {
    return club.stock().line(id).orElseThrow();
  }

  private static Answer type(Object... words) {
    return session.type(List.of(words).stream().map(String::valueOf).toArray(String[]::new));
  }

  @Test
  void takingCountingAndPuttingBackAreInTheBooks() {
    long id = club.receive(FreshClub.screw("2 BA", "1/2"), "Cabinet / A", 20);
    Answer taken = type("stock", "take", id, 4, "--member", "Ann", "--note", "pump");
    assertEquals("", taken.err());
    assertTrue(
        taken
            .out()
            .startsWith(
                "4 taken, 2 BA hexagon screw x 1/2 in steel, Cabinet / A (line "
                    + id
                    + "): 16 there now\nTo undo: fettlebench stock undo "),
        taken.out());
    assertEquals(16, line(id).quantity());
    type("stock", "put-back", id, 1);
    assertEquals(17, line(id).quantity());
    type("stock", "scrap", id, 2);
    assertEquals(15, line(id).quantity());
    Answer counted = type("stock", "count", id, 12);
    assertTrue(counted.out().startsWith("counted, -3 against the books,"), counted.out());
    assertEquals(12, line(id).quantity());
    assertTrue(type("stock", "count", id, 12).out().startsWith("counted as expected,"));
    String history = type("stock", "history", id).out();
    assertTrue(history.contains("taken         -4  Ann     pump\n"), history);
    assertEquals(2 + 6, history.lines().count());
  }

  @Test
  void undoTakesOneMovementBackOnce() throws Exception {
    long id = club.receive(FreshClub.screw("3 BA", "1/2"), "Cabinet / B", 10);
    Map<String, Object> taken = JSON.std.mapFrom(type("stock", "take", id, 4, "--json").out());
    Object movement = ((Map<?, ?>) taken.get("movement")).get("id");
    assertEquals(-4, ((Map<?, ?>) taken.get("movement")).get("quantity"));
    assertEquals(6, ((Map<?, ?>) taken.get("line")).get("quantity"));
    assertEquals(0, type("stock", "undo", movement).status());
    assertEquals(10, line(id).quantity());
    assertEquals(2, type("stock", "undo", movement).status());
    assertEquals(10, line(id).quantity());
    assertEquals(2, type("stock", "undo", "latest").status());
  }

  @Test
  void whatCannotBeIsRefusedAndNothingChanges() {
    long id = club.receive(FreshClub.screw("4 BA", "1/2"), "Cabinet / C", 3);
    for (Object quantity : List.of(4, 0, -1, "NaN", "1.5", "1000001", "99999999999")) {
      Answer refused = type("stock", "take", id, quantity);
      assertEquals(2, refused.status(), String.valueOf(quantity));
      assertFalse(refused.err().isBlank());
      assertEquals(3, line(id).quantity());
    }
    assertEquals(2, type("stock", "count", id, -1).status());
    assertEquals(2, type("stock", "take", 999_999, 1).status());
    assertEquals(2, type("stock", "take", id).status());
    assertEquals(3, line(id).quantity());
  }

  @Test
  void aLineIsFoundByWordsThatOnlyItHas() {
    long half = club.receive(FreshClub.screw("5 BA", "1/2"), "Cabinet / D", 9);
    club.receive(FreshClub.screw("5 BA", "3/4"), "Cabinet / D", 9);
    assertEquals(0, type("stock", "take", "5", "ba", "1/2", 2).status());
    assertEquals(7, line(half).quantity());
    Answer several = type("stock", "take", "5", "BA", 2);
    assertEquals(2, several.status());
    assertTrue(several.err().startsWith("2 stock lines have the words \"5 BA\""), several.err());
    assertTrue(
        several.err().contains("  " + half + "  5 BA hexagon screw x 1/2 in"), several.err());
    Answer none = type("stock", "take", "55", "BA", 2);
    assertTrue(none.err().startsWith("no stock line has the words \"55 BA\""), none.err());
  }

  @ParameterizedTest
  @CsvSource({
    "stock list 6 ba, 2",
    "stock list 6 ba 3/4, 1",
    "stock list shelf six --kind fastener, 2",
    "stock list shelf six --kind drill, 1",
    "stock list shelf six, 3",
    "stock list six nowhere, 0"
  })
  void listingFiltersByWordsAndKind(String typed, int lines) throws Exception {
    // Receiving again adds to the same lines.
    club.receive(FreshClub.screw("6 BA", "1/2"), "Shelf six", 1);
    club.receive(FreshClub.screw("6 BA", "3/4"), "Shelf six", 1);
    club.receive(FreshClub.drill("5/32 in", 3.96875), "Shelf six", 1);
    Answer answer = session.type((typed + " --json").split(" "));
    assertEquals(0, answer.status());
    List<?> found = (List<?>) JSON.std.mapFrom(answer.out()).get("lines");
    assertEquals(lines, found.size(), answer.out());
    if (typed.contains("drill")) {
      assertEquals(3.96875, ((Map<?, ?>) found.get(0)).get("diameterMm"));
      assertEquals(0.15625, ((Map<?, ?>) found.get(0)).get("diameterIn"));
    }
  }

  @Test
  void whatIsLowIsListedAndSaidByTheStatus() {
    assertEquals(0, type("stock", "list", "seven", "--low").status());
    long id =
        club.receive(
            FreshClub.screw("7 BA", "1/2"), "Drawer seven", 9, Condition.GOOD, Optional.of(5));
    assertEquals(0, type("stock", "list", "seven", "--low").status());
    assertTrue(type("stock", "take", id, 9).out().contains(", low: should be 5"));
    Answer low = type("stock", "list", "seven", "--low");
    assertEquals(1, low.status());
    assertTrue(low.out().contains("low, should be 5"), low.out());
  }

  @Test
  void usedUpLinesAreLeftOutUnlessAsked() {
    long id = club.receive(FreshClub.screw("8 BA", "1/2"), "Drawer eight", 2);
    type("stock", "take", id, 2);
    assertTrue(type("stock", "list", "eight").out().startsWith("no stock line fits"));
    assertTrue(type("stock", "list", "eight", "--all").out().contains("8 BA"));
  }

  @Test
  void toolsAreLentAndComeBack() {
    long id = club.receive(FreshClub.tap("2 BA", "taper"), "Tap box", 2);
    Answer lent =
        type("tool", "lend", "2", "BA", "taper", "tap", "--to", "Ann", "--due", "2027-03-31");
    assertEquals("", lent.err());
    assertTrue(lent.out().startsWith("1 lent to Ann: 2 BA taper tap, Tap box"), lent.out());
    assertEquals(1, line(id).present());
    assertTrue(type("tool", "out").out().contains("Ann"), type("tool", "out").out());
    assertEquals(2, type("tool", "lend", id, "--to", "Ben", "--count", 2).status());
    assertEquals(2, type("tool", "lend", id).status());
    assertEquals(2, type("tool", "lend", id, "--to", "Ben", "--due", "soon").status());
    assertEquals(2, type("tool", "return", id, "--from", "Ben").status());
    assertEquals(0, type("tool", "return", id, "--from", "Ann").status());
    assertEquals(2, line(id).present());
    assertEquals("nothing is out on loan\n", type("tool", "out").out());
  }
}
