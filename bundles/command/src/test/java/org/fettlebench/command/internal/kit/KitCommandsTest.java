package org.fettlebench.command.internal.kit;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.fettlebench.command.internal.AllCommands;
import org.fettlebench.command.internal.FreshClub;
import org.fettlebench.command.internal.Session;
import org.fettlebench.command.internal.Session.Answer;
import org.fettlebench.paper.BenchCards;
import org.fettlebench.testkit.trade.RealTrade;
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
  void aJointsCardAndTheKitsReportArePutOnPaper() throws IOException {
    Path card = folder.resolve("gland.pdf");
    Path report = folder.resolve("pump.pdf");
    String plain = session.type("kit", "check", "pump.kit.toml", "--joint", "Gland").out();
    Answer both =
        session.type(
            "kit",
            "check",
            "pump.kit.toml",
            "--joint",
            "Gland",
            "--card",
            card.toString(),
            "--report",
            report.toString());
    assertEquals("", both.err());
    assertEquals(1, both.status());
    assertEquals(
        plain
            + "the bench card of gland is in "
            + card
            + "\nthe report of Feed pump is in "
            + report
            + "\n",
        both.out());
    assertEquals("%PDF", Files.readString(card, ISO_8859_1).substring(0, 4));
    try (PDDocument pages = Loader.loadPDF(card.toFile())) {
      assertEquals(1, pages.getNumberOfPages());
      assertTrue(new PDFTextStripper().getText(pages).contains("gland"));
    }
    try (PDDocument pages = Loader.loadPDF(report.toFile())) {
      assertTrue(new PDFTextStripper().getText(pages).contains("top cover"));
    }
  }

  @Test
  void paperThatCannotBeIsRefusedAndNothingIsKept() {
    Path nowhere = folder.resolve("nowhere").resolve("pump.pdf");
    Answer none = session.type("kit", "check", "pump.kit.toml", "--card", "x.pdf", "--keep");
    assertEquals(2, none.status());
    assertTrue(none.err().contains("add --joint NAME"), none.err());
    Answer lost =
        session.type("kit", "check", "pump.kit.toml", "--keep", "--report", nowhere.toString());
    assertEquals(2, lost.status());
    assertTrue(lost.err().contains("cannot be written to " + nowhere), lost.err());
    assertEquals(2, session.type("kit", "check", "--all", "--report", "x.pdf").status());
    assertTrue(club.shelf().kits().isEmpty());
  }

  @Test
  void withoutAnythingThatPrintsTheRestOfTheCheckGoesOn() {
    KitPapers papers = PapersForTests.printing(RealTrade.DRAWINGS, RealTrade.KIT_REPORTS);
    BenchCards one = mock(BenchCards.class);
    BenchCards newer = mock(BenchCards.class);
    papers.setCards(one);
    papers.setCards(newer);
    papers.unsetCards(one);
    papers.unsetCards(newer);
    Session bare =
        new Session(
                new KitCheckCommand(
                    RealTrade.KIT_FILES,
                    RealTrade.KIT_CHECK,
                    RealTrade.KIT_REPORTS,
                    club.stock(),
                    club.errors(),
                    club.shelf(),
                    papers))
            .in(FILES.toAbsolutePath().toString());
    assertEquals(1, bare.type("kit", "check", "pump.kit.toml").status());
    Answer refused = bare.type("kit", "check", "pump.kit.toml", "--report", "x.pdf");
    assertEquals(2, refused.status());
    assertTrue(refused.err().contains("nothing that puts a kit on paper"), refused.err());
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
