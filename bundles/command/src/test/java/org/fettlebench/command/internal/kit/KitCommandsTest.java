package org.fettlebench.command.internal.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fettlebench.command.internal.AllCommands;
import org.fettlebench.command.internal.FreshClub;
import org.fettlebench.command.internal.Session;
import org.fettlebench.command.internal.Session.Answer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KitCommandsTest {
  private static final Path FILES = Path.of("src/test/resources/guide");

  @TempDir Path folder;
  private FreshClub club;
  private Session session;

  @BeforeEach
  void openTheClub() {
    club = new FreshClub(folder);
    session = new Session(AllCommands.of(club, folder)).in(FILES.toAbsolutePath().toString());
  }

  @AfterEach
  void closeTheClub() {
    club.close();
  }

  @Test
  void aKitIsCheckedAgainstTheStockAsItIsNow() {
    Answer empty = session.type("kit", "check", "pump.kit.toml", "--joint", "Gland");
    assertEquals(1, empty.status());
    assertTrue(
        empty.out().contains("fastener 5 BA hexagon x 3/8 in, brass, 2 off missing"), empty.out());
    session.type("stock", "receive", "--file", "stock.csv");
    Answer stocked = session.type("kit", "check", "pump.kit.toml", "--joint", "Gland");
    assertTrue(stocked.out().contains("brass, 2 off: in, Cabinet / Drawer 4"), stocked.out());
  }

  @Test
  void aKitMayBePipedIn() throws IOException {
    String text = Files.readString(FILES.resolve("pump.kit.toml"));
    Answer piped = session.piped(text).type("kit", "check", "-", "--json");
    assertEquals("", piped.err());
    assertEquals(session.type("kit", "check", "pump.kit.toml", "--json").out(), piped.out());
  }

  @Test
  void aFaultyFileIsNotKept() {
    Answer faulty = session.type("kit", "check", "faulty.kit.toml", "--keep");
    assertEquals(2, faulty.status());
    assertEquals("", faulty.out());
    assertTrue(
        faulty.err().startsWith("3 faults; nothing was kept of the file\nfaulty.kit.toml:7:"),
        faulty.err());
    assertTrue(club.shelf().kits().isEmpty());
  }

  @Test
  void aSoundKitIsKeptListedCheckedAndRemoved() throws IOException {
    String text = Files.readString(FILES.resolve("pump.kit.toml"));
    Answer kept = session.type("kit", "check", "pump.kit.toml", "--keep");
    assertTrue(kept.out().endsWith("\nFeed pump is on the shelf\n"), kept.out());
    assertEquals(text, club.shelf().kit("Feed pump").orElseThrow().text());
    Answer again = session.type("kit", "check", "pump.kit.toml", "--keep");
    assertTrue(again.out().endsWith("\nFeed pump is on the shelf in place of the older one\n"));
    assertTrue(session.type("kit", "list").out().contains("Feed pump  2"));
    String whole = session.type("kit", "check", "pump.kit.toml").out();
    assertEquals(whole, session.type("kit", "check", "--shelf", "Feed pump").out());
    assertEquals(whole, session.type("kit", "check", "--all").out());
    assertEquals(text, session.type("kit", "remove", "Feed", "pump").out());
    assertTrue(club.shelf().kits().isEmpty());
    assertEquals(2, session.type("kit", "remove", "Feed", "pump").status());
  }

  @Test
  void sayingNoKitOrTwoIsRefused() {
    for (String typed :
        new String[] {
          "kit check",
          "kit check pump.kit.toml --all",
          "kit check --all --shelf Pump",
          "kit check --all --keep",
          "kit check --shelf Pump",
          "kit check nowhere.kit.toml",
          "kit check .",
          "kit check pump.kit.toml --joint flywheel"
        }) {
      Answer refused = session.type(typed.split(" "));
      assertEquals(2, refused.status(), typed);
      assertFalse(refused.err().isBlank(), typed);
      assertEquals("", refused.out(), typed);
    }
    assertEquals(0, session.type("kit", "check", "--all").status());
  }
}
