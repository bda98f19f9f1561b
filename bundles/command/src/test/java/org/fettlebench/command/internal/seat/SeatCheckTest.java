package org.fettlebench.command.internal.seat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.fettlebench.club.MeasuredErrors;
import org.fettlebench.command.internal.AllCommands;
import org.fettlebench.command.internal.Session;
import org.fettlebench.command.internal.Session.Answer;
import org.fettlebench.command.internal.method.Placings;
import org.fettlebench.testkit.trade.RealTrade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeatCheckTest {
  @TempDir Path folder;

  private final Session session =
      new Session(
          new SeatCheck(
              RealTrade.KIT_FILES,
              RealTrade.SEATS,
              new Placings(RealTrade.CLUB_METHODS, mock(MeasuredErrors.class)),
              AllCommands.seatPapers(),
              new SeatTrade(RealTrade.THREADS, RealTrade.HEADS, RealTrade.SPANNERS)));

  private static String square(double sideMm, String head) {
    return """
        [seat]
        name = "boss"
        unit = "mm"
        outline = [[0, 0], [%1$s, 0], [%1$s, %1$s], [0, %1$s]]
        centre = [%2$s, %2$s]

        [head]
        %3$s

        [hole]
        diameter = "4.9 mm"
        method = "coordinate-table"
        """
        .formatted(sideMm, sideMm / 2, head);
  }

  // By hand: on a square of side s a head that sweeps d has an allowance of (s - d) / 2.
  @ParameterizedTest
  @CsvSource({"12, 9, clears, 1.5, 0", "9.1, 9, tight, 0.05, 0", "8.5, 9, fouls, -0.25, 1"})
  void tellsAllowanceAndVerdict(
      double side, String across, String verdict, double allowance, int status) throws IOException {
    session.piped(square(side, "title = \"turned head\"\nacross-corners = \"" + across + " mm\""));
    Answer answer = session.type("seat", "check", "-", "--json");
    assertEquals("", answer.err());
    assertEquals(status, answer.status());
    Map<String, Object> data = JSON.std.mapFrom(answer.out());
    assertEquals(verdict, data.get("verdict"));
    assertEquals(allowance, ((Number) data.get("allowanceMm")).doubleValue(), 0.000002);
    assertTrue(
        session.type("seat", "check", "-").out().startsWith("boss, turned head: " + verdict));
  }

  @Test
  void offersASmallerHeadOfTheSameThread() {
    session.piped(square(9.2, "thread = \"2 BA\"\nstyle = \"hexagon\""));
    String text = session.type("seat", "check", "-").out();
    assertTrue(text.contains("\nCures, best first\n"), text);
    assertTrue(text.contains("one size smaller"), text);
  }

  @Test
  void aRingsRimMeetsTheWallAndAnOpenSpannerCuresIt() throws IOException {
    // 10 across flats: rim 18 mm of the maker's leaflet needs 9 from the wall, the head 5.77.
    session.piped(
        square(16, "across-flats = \"10 mm\"")
            .replace(
                "[head]",
                "[[seat.wall]]\nname = \"cylinder wall\"\nfrom = [0, 16]\nto = [16, 16]\n"
                    + "height = 20\n\n[head]"));
    assertEquals(0, session.type("seat", "check", "-").status());
    Answer ring = session.type("seat", "check", "-", "--spanner", "ring", "--json");
    assertEquals(1, ring.status());
    Map<String, Object> data = JSON.std.mapFrom(ring.out());
    assertEquals(-1.0, ((Number) data.get("allowanceMm")).doubleValue(), 0.000002);
    assertEquals("ring spanner's rim", ((Map<?, ?>) data.get("governing")).get("meets"));
    assertTrue(ring.out().contains("turn it with an open spanner"), ring.out());
    assertTrue(((Map<?, ?>) data.get("head")).get("spanner").toString().contains("89BA"));
    assertEquals(16, ((java.util.List<?>) data.get("allowanceByDirection")).size());
    assertEquals(2, session.type("seat", "check", "-", "--spanner", "wheel").status());
  }

  @Test
  void aSocketOfNoTableIsAskedFor() {
    session.piped(square(12, "thread = \"2 BA\"\nstyle = \"hexagon\""));
    Answer none = session.type("seat", "check", "-", "--spanner", "socket");
    assertEquals(2, none.status());
    assertTrue(none.err().contains("measure yours"), none.err());
  }

  @Test
  void writesADrawing() throws IOException {
    session.piped(square(12, "thread = \"2 BA\"\nstyle = \"hexagon\""));
    Path file = folder.resolve("boss.svg");
    assertEquals(0, session.type("seat", "check", "-", "--svg", file.toString()).status());
    assertTrue(Files.readString(file).startsWith("<svg "));
    Answer nowhere = session.type("seat", "check", "-", "--svg", folder + "/none/boss.svg");
    assertEquals(2, nowhere.status());
    assertEquals("", nowhere.out());
  }

  @Test
  void writesTheCardAndSaysWhenNothingPrints() throws IOException {
    session.piped(square(9.2, "thread = \"2 BA\"\nstyle = \"hexagon\""));
    Path file = folder.resolve("boss.pdf");
    Answer done = session.type("seat", "check", "-", "--card", file.toString());
    assertTrue(done.out().endsWith("the card is in " + file + "\n"), done.out());
    assertEquals("%PDF", Files.readString(file, StandardCharsets.ISO_8859_1).substring(0, 4));
    Session bare =
        new Session(
            new SeatCheck(
                RealTrade.KIT_FILES,
                RealTrade.SEATS,
                new Placings(RealTrade.CLUB_METHODS, mock(MeasuredErrors.class)),
                new SeatPapers(RealTrade.DRAWINGS),
                new SeatTrade(RealTrade.THREADS, RealTrade.HEADS, RealTrade.SPANNERS)));
    bare.piped(square(9.2, "thread = \"2 BA\"\nstyle = \"hexagon\""));
    Path none = folder.resolve("none.pdf");
    Answer missing = bare.type("seat", "check", "-", "--card", none.toString());
    assertEquals(2, missing.status());
    assertTrue(missing.err().contains("module list"), missing.err());
    assertFalse(Files.exists(none));
  }

  @Test
  void cautionsOfAHollowThatChangesNothing() {
    session.piped(
        square(12, "across-flats = \"8 mm\"")
            .replace("[head]", "cavities = [[[30, 0], [31, 0], [31, 1]]]\n\n[head]"));
    Answer answer = session.type("seat", "check", "-");
    assertTrue(answer.out().contains("hollow 1 lies wholly outside"), answer.out() + answer.err());
  }

  @Test
  void namesEveryFaultOfAFile() {
    session.piped(square(12, "thread = \"2 BX\"\nstyle = \"hexagon\"").replace("method", "way"));
    Answer faulty = session.type("seat", "check", "-");
    assertEquals(2, faulty.status());
    assertEquals("", faulty.out());
    assertTrue(faulty.err().contains("2 BX") && faulty.err().contains("way"), faulty.err());
  }
}
