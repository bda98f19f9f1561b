package org.fettlebench.command.internal.method;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
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

/** What the club measured counts wherever a way of placing a hole is asked about. */
class PlacingsTest {
  private static final String SEAT =
      """
      [seat]
      name = "pad"
      unit = "mm"
      outline = [[0, 0], [20, 0], [20, 20], [0, 20]]
      underside = [[0, 0], [20, 0], [20, 20], [0, 20]]
      centre = [5, 8]
      [head]
      across-corners = 8
      [hole]
      diameter = 6
      method = "scribe-and-dot"
      """;
  private static final String PATTERN =
      """
      [pattern]
      name = "flange"
      unit = "mm"
      fastener-diameter = 4
      centres = [[0, 0], [20, 0]]
      [[part]]
      name = "upper"
      hole = 4.5
      method = "scribe-and-dot"
      [[part]]
      name = "lower"
      hole = 4.5
      sigma = 0.03
      """;
  private static final double TABLE_SIGMA = 0.15;
  // The table's 0.15 mm counts as 10 holes. Ann's four are 0.3 mm out, two along x, two along y, so
  // by the weighted mean of both variances (per axis): (10 0.15^2 + (4 0.3^2) / 2) / (10 + 4).
  private static final double SIGMA =
      Math.sqrt((10 * TABLE_SIGMA * TABLE_SIGMA + 4 * 0.3 * 0.3 / 2) / 14);
  // Rayleigh's 95 per cent radius over sigma.
  private static final double RADII = Math.sqrt(-2 * Math.log(0.05));

  @TempDir Path folder;
  private FreshClub club;
  private Session session;

  @BeforeEach
  void open() {
    club = new FreshClub(folder);
    session = new Session(AllCommands.of(club, folder)).in(folder.toString());
    for (String[] out : new String[][] {{"0.3", "0"}, {"-0.3", "0"}, {"0", "0.3"}, {"0", "-0.3"}}) {
      Answer written =
          session.type(
              ("method measure scribe-and-dot --member Ann --machine lathe --x %smm --y %smm")
                  .formatted((Object[]) out)
                  .split(" "));
      assertEquals(0, written.status(), written.err());
    }
  }

  @AfterEach
  void close() {
    club.close();
  }

  private Map<String, Object> data(String words) throws IOException {
    List<String> typed = new ArrayList<>(List.of(words.split(" ")));
    typed.add("--json");
    Answer answer = session.type(typed.toArray(String[]::new));
    assertEquals("", answer.err());
    return JSON.std.mapFrom(answer.out());
  }

  private static double at(Object data, String... path) {
    Object at = data;
    for (String key : path) {
      at = at instanceof List<?> list ? list.get(Integer.parseInt(key)) : ((Map<?, ?>) at).get(key);
    }
    return ((Number) at).doubleValue();
  }

  @Test
  void pilotAndMarkTakeWhatWasMeasured() throws IOException {
    session.piped(SEAT);
    for (String words :
        List.of(
            "hole pilot --seat - --catalogue",
            "hole pilot --seat - --catalogue --member Ann",
            "hole pilot --seat - --catalogue --machine lathe")) {
      Map<String, Object> pilot = data(words);
      assertEquals(SIGMA * RADII, at(pilot, "expected", "radiusMm"), 1e-6, words);
      assertEquals(4, at(pilot, "method", "measuredHoleCount"));
      assertEquals(SIGMA, at(pilot, "method", "sigmaX", "sigmaMm"), 1e-6);
    }
    Map<String, Object> mark = data("hole mark - --turn sideways --depth 10mm");
    assertEquals(SIGMA * RADII, at(mark, "marking", "radiusMm"), 1e-6);
    assertEquals(SIGMA * RADII, at(mark, "errorAboveMm"), 1e-6);
    Map<String, Object> other = data("hole pilot --seat - --catalogue --method jig");
    assertEquals(0.05 * RADII, at(other, "expected", "radiusMm"), 1e-6);
    assertEquals(0, at(other, "method", "measuredHoleCount"));
  }

  @Test
  void wordsSayWhoseHolesAndHowSure() {
    session.piped(SEAT);
    Answer measured = session.type("hole", "pilot", "--seat", "-", "--member", "Ann");
    assertTrue(measured.out().contains("measured by Ann, 4 holes\n"), measured.out());
    assertTrue(
        measured.out().contains("sigma as measured                 0.170 mm, "), measured.out());
    assertTrue(measured.out().contains("with a chance of 95 % within 0.1"), measured.out());
    Answer before = session.type("hole", "pilot", "--seat", "-", "--method", "jig");
    assertTrue(before.out().contains("common practice, no source\n"), before.out());
    assertFalse(before.out().contains("sigma"), before.out());
    Answer nobody = session.type("hole", "pilot", "--seat", "-", "--member", "Zoe");
    assertEquals(2, nobody.status());
    assertTrue(nobody.err().contains("no error was measured of the member \"Zoe\""), nobody.err());
  }

  @Test
  void seatsAndPatternsTakeItToo() throws IOException {
    session.piped(SEAT);
    Map<String, Object> check = data("seat check - --member Ann");
    assertEquals(SIGMA * RADII, at(check, "expectedErrorMm"), 1e-6);
    assertEquals(
        SIGMA * Math.sqrt(-2 * Math.log(0.01)),
        at(data("seat check - --confidence 0.99"), "expectedErrorMm"),
        1e-6);
    Map<String, Object> chance = data("seat chance - --method scribe-and-dot --machine lathe");
    assertEquals(SIGMA * RADII, at(chance, "methods", "0", "errorRadiusMm"), 1e-6);
    session.piped(PATTERN);
    for (String words : List.of("pattern chance - --trials 100", "pattern drill - --trials 100")) {
      Answer answer = session.type(words.split(" "));
      assertTrue(answer.out().contains("scribe and dot punch (measured by the club, 4 holes)"));
    }
    assertEquals(
        SIGMA, at(data("pattern chance - --trials 100"), "parts", "0", "sigmaPerAxisMm"), 1e-6);
  }
}
