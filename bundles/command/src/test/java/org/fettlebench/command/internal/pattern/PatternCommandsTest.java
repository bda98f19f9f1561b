package org.fettlebench.command.internal.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.fettlebench.command.internal.AllCommands;
import org.fettlebench.command.internal.FreshClub;
import org.fettlebench.command.internal.Session;
import org.fettlebench.command.internal.Session.Answer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PatternCommandsTest {
  private static final String GUIDE = Path.of("src/test/resources/guide").toAbsolutePath() + "/";
  private static final String COVER = GUIDE + "cover.pattern.toml";
  private static final String FLANGE = GUIDE + "flange.pattern.toml";

  @TempDir Path folder;
  private FreshClub club;
  private Session session;

  @BeforeEach
  void open() {
    club = new FreshClub(folder);
    session = new Session(AllCommands.of(club, folder)).in(folder.toString());
  }

  @AfterEach
  void close() {
    club.close();
  }

  private Map<String, Object> data(int status, String... words) throws IOException {
    Answer answer = session.type(words);
    assertEquals("", answer.err());
    assertEquals(status, answer.status());
    return JSON.std.mapFrom(answer.out());
  }

  @Test
  void aDrillOfTheCatalogueReachesTheChance() throws IOException {
    Map<String, Object> found =
        data(0, "pattern", "drill", COVER, "--catalogue", "--trials", "4000", "--json");
    double needed = ((Number) found.get("holeNeededDiameterMm")).doubleValue();
    Map<?, ?> chosen = (Map<?, ?>) found.get("chosen");
    assertTrue(((Number) chosen.get("diameterMm")).doubleValue() >= needed);
  }

  @Test
  void nothingHeldIsSaidPlainly() {
    Answer answer = session.type("pattern", "drill", COVER, "--held", "--trials", "500");
    assertEquals(1, answer.status());
    assertTrue(
        answer.out().contains("no drill reaches it, of drills in their place"), answer.out());
    assertTrue(answer.out().contains("spot one part through the other"), answer.out());
  }

  @Test
  void theHoleThatIsNeededGivesTheChanceAsked() throws IOException {
    Map<String, Object> drill =
        data(0, "pattern", "drill", COVER, "--catalogue", "--chance", "0.9", "--json");
    String hole = drill.get("holeNeededDiameterMm").toString();
    session.piped(Files.readString(Path.of(COVER)).replace("\"No 26\"", "\"" + hole + " mm\""));
    Map<?, ?> apart =
        (Map<?, ?>)
            data(0, "pattern", "chance", "-", "--chance", "0.8999", "--json").get("drilledApart");
    assertEquals(0.9, ((Number) apart.get("chance")).doubleValue(), 1e-3);
  }

  @Test
  void measuredHolesAreDrawn() throws IOException {
    Answer answer = session.type("pattern", "fit", FLANGE, "--svg", "flange.svg");
    assertEquals(1, answer.status());
    String svg = Files.readString(folder.resolve("flange.svg"));
    assertTrue(svg.contains("does not go together"), svg);
    assertTrue(svg.contains("file 0.081 mm"), svg);
  }

  /** Shares of the figures by hand: a pair of holes 0.5 apart in distance, 0.4 of play in all. */
  @Test
  void twoHolesShareWhatTheirDistancesDifferBy() throws IOException {
    session.piped(
        """
        [pattern]
        name = "two"
        unit = "mm"
        fastener-diameter = 5
        [[part]]
        name = "a"
        hole = 5.4
        measured = [[0, 0], [30.5, 0]]
        seen-from = "above"
        [[part]]
        name = "b"
        tapped = true
        measured = [[0, 0], [-30, 0]]
        seen-from = "below"
        """);
    Map<String, Object> fit = data(1, "pattern", "fit", "-", "--json");
    assertEquals(-0.05, ((Number) fit.get("roomRadiusMm")).doubleValue(), 1e-6);
    List<?> cures = (List<?>) fit.get("cures");
    Map<?, ?> opening = (Map<?, ?>) ((List<?>) ((Map<?, ?>) cures.get(0)).get("openings")).get(0);
    assertEquals(5.6, ((Number) opening.get("openToDiameterMm")).doubleValue(), 1e-5);
    assertEquals(0.1, ((Number) opening.get("fileMm")).doubleValue(), 1e-5);
  }

  /** However large the other hole is: 4.5 beside 3.9 leaves no fastener of 4 a way in. */
  @ParameterizedTest
  @CsvSource({"chance", "fit"})
  void aHoleSmallerThanTheFastenerIsRefused(String asked) {
    session.piped(
        """
        [pattern]
        name = "two"
        unit = "mm"
        fastener-diameter = 4
        centres = [[0, 0], [30, 0]]
        [[part]]
        name = "a"
        hole = 4.5
        method = "jig"
        measured = [[0, 0], [30, 0]]
        seen-from = "above"
        [[part]]
        name = "b"
        hole = 3.9
        method = "jig"
        measured = [[0, 0], [30, 0]]
        seen-from = "above"
        """);
    Answer answer = session.type("pattern", asked, "-");
    assertEquals(2, answer.status(), answer.out());
    assertTrue(answer.err().contains("is smaller than the fastener, 4"), answer.err());
  }

  @Test
  void whatLeansIsToldWithItsAssumptions() throws IOException {
    session.piped(
        Files.readString(Path.of(COVER))
            .replace(
                "tapped = true",
                "tapped = true\nleans = { sigma = \"0.05 mm\", over = \"10 mm\", passed = \"6 mm\" }"));
    Answer answer = session.type("pattern", "chance", "-", "--trials", "500");
    assertTrue(
        answer.out().contains("stand over by sigma per axis 0.030 mm (0.001 in) at the far face"),
        answer.out());
    assertTrue(answer.out().contains("must pass at both faces."), answer.out());
  }

  @Test
  void aChanceMayBeSaidInPerCent() throws IOException {
    Map<String, Object> said =
        data(1, "pattern", "chance", COVER, "--chance", "90%", "--trials", "500", "--json");
    assertEquals(0.9, ((Number) said.get("chanceAsked")).doubleValue());
    Answer none = session.type("pattern", "chance", COVER, "--chance", "1");
    assertEquals(2, none.status());
    assertTrue(none.err().contains("is no chance between 0 and 1; write 95%"), none.err());
  }

  @ParameterizedTest
  @CsvSource({
    "pattern chance FLANGE, does not say where the holes should be",
    "pattern fit COVER, has no measured holes",
    "pattern chance COVER --spotting luck, known are",
    "pattern chance COVER --trials 5, --trials",
    "pattern drill COVER --chance 1, --chance",
    "pattern drill COVER --held --catalogue, not both",
    "pattern fit missing.pattern.toml, is no file that is there"
  })
  void refusesInWords(String typed, String said) {
    Answer answer =
        session.type(
            java.util.Arrays.stream(typed.split(" "))
                .map(word -> word.replace("COVER", COVER).replace("FLANGE", FLANGE))
                .toArray(String[]::new));
    assertEquals(2, answer.status(), answer.out());
    assertTrue(answer.err().contains(said), answer.err());
    assertEquals(List.of(), session.reported());
  }
}
