package org.fettlebench.command.internal.casting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
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
import org.junit.jupiter.params.provider.ValueSource;

class CastingPlaceTest {
  private static final String GUIDE = Path.of("src/test/resources/guide").toAbsolutePath() + "/";
  private static final String BRACKET = GUIDE + "bracket.casting.toml";
  private static final String PLATE = GUIDE + "plate.casting.toml";

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

  private static double number(Object found, String key) {
    return ((Number) ((Map<?, ?>) found).get(key)).doubleValue();
  }

  /** 8.7 rough, 8 finished: 0.35 off each side, less 0.5 and 0.05 is 0.20 short. */
  @Test
  void aPlateTooThinSaysWhatGivesAndWhatSkinStays() throws IOException {
    Map<String, Object> found = data(1, "casting", "place", PLATE, "--json");
    assertEquals(false, found.get("cleansUp"));
    assertEquals(-0.2, number(found, "leastSpareMm"), 5e-6);
    for (Object giving : (List<?>) found.get("givings")) {
      assertEquals(0.4, number(giving, "givesMm"), 1e-5);
    }
    for (Object less : (List<?>) found.get("lessCuts")) {
      assertEquals(0.3, number(less, "cutMm"), 5e-6);
    }
    assertEquals(2, ((List<?>) found.get("cautions")).size(), "it holds pressure");
    String text = session.type("casting", "place", PLATE).out();
    assertTrue(text.contains("will not clean up by 0.20 mm (0.008 in)"), text);
    assertTrue(text.contains("z 7.60 mm (0.299 in) in place of 8.00 mm (0.315 in)"), text);
    assertTrue(text.contains("a cut of 0.30 mm (0.012 in) in place of 0.50 mm"), text);
  }

  /** What is offered is read back as a file: it must hold. */
  @Test
  void whatGivesMakesItCleanUp() throws IOException {
    String text = Files.readString(Path.of(PLATE)).replace("\"8 mm\"", "\"7.6 mm\"");
    session.piped(text);
    assertEquals(0, number(data(0, "casting", "place", "-", "--json"), "leastSpareMm"), 1e-5);
  }

  @Test
  void aBracketCleansUpAndSaysWhereToSetOutFrom() throws IOException {
    Map<String, Object> found = data(0, "casting", "place", BRACKET, "--json");
    assertEquals(7, ((List<?>) found.get("faces")).size());
    assertEquals(
        List.of("x", "y", "z"),
        ((List<?>) found.get("settingOut"))
            .stream().map(each -> ((Map<?, ?>) each).get("axis")).toList());
    assertTrue(number(found.get("turn"), "aboutYDegrees") != 0);
    assertFalse(session.type("casting", "place", BRACKET).out().contains("Or leave the drawing"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan", "front", "side"})
  void everyViewIsDrawn(String view) throws IOException {
    assertEquals(
        0, session.type("casting", "place", BRACKET, "--svg", "b.svg", "--view", view).status());
    assertTrue(Files.readString(folder.resolve("b.svg")).contains("cleans up"));
  }

  @Test
  void theCardIsWrittenAndTheAnswerSaysWhere() throws IOException {
    Answer answer = session.type("casting", "place", PLATE, "--card", "plate.pdf");
    assertEquals(1, answer.status(), "it will not clean up");
    Path card = folder.resolve("plate.pdf");
    assertTrue(answer.out().contains("the card is in " + card), answer.out());
    assertEquals("%PDF", new String(Files.readAllBytes(card), 0, 4, StandardCharsets.US_ASCII));
  }

  @Test
  void aCardThatCannotBeWrittenSaysSo() {
    Answer answer = session.type("casting", "place", PLATE, "--card", "nowhere/plate.pdf");
    assertEquals(2, answer.status());
    assertTrue(answer.err().contains("cannot be written to"), answer.err());
  }

  @Test
  void nothingIsWrittenForAViewThatIsNone() {
    Answer answer = session.type("casting", "place", BRACKET, "--svg", "b.svg", "--view", "back");
    assertEquals(2, answer.status());
    assertTrue(answer.err().contains("'back' is no view; say plan, front, side"), answer.err());
    assertFalse(Files.exists(folder.resolve("b.svg")));
    assertEquals(2, session.type("casting", "place", BRACKET, "--view", "plan").status());
  }

  @Test
  void aPartThatNothingHoldsIsRefused() throws IOException {
    session.piped(Files.readString(Path.of(PLATE)).replace("[\"z\"]", "[\"x\", \"z\"]"));
    Answer answer = session.type("casting", "place", "-");
    assertEquals(2, answer.status());
    assertTrue(answer.err().contains("along x no face holds the part"), answer.err());
  }
}
