package org.fettlebench.command.internal.holeplace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.club.Goods;
import org.fettlebench.club.MeasuredErrors;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.command.internal.AllCommands;
import org.fettlebench.command.internal.FreshClub;
import org.fettlebench.command.internal.Session;
import org.fettlebench.command.internal.Session.Answer;
import org.fettlebench.testkit.trade.RealTrade;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HolePlaceCommandsTest {
  private static final String LUG = Path.of("src/test/resources/guide/lug.seat.toml").toString();

  /** A square of 20 mm with an underside of its own, and a head that needs 4 mm. */
  private static final String SQUARE =
      """
      [seat]
      name = "foot"
      unit = "mm"
      outline = [[0, 0], [20, 0], [20, 20], [0, 20]]
      underside = [[-2, -1], [24, -1], [24, 23], [-2, 23]]
      centre = [5, 8]

      [head]
      title = "turned head"
      across-corners = "8 mm"

      [hole]
      diameter = "6 mm"
      method = "coordinate-table"
      """;

  @TempDir Path folder;
  private Session session;

  @BeforeEach
  void open() {
    Stock stock = mock(Stock.class);
    List<StockLine> lines = new ArrayList<>();
    for (double mm : new double[] {3, 4, 4.8, 5.2, 6}) {
      lines.add(line(FreshClub.drill(mm + " mm", mm)));
    }
    lines.add(line(sundry("Round file 3 mm")));
    lines.add(line(sundry("Needle file, round, 1/16 in")));
    lines.add(line(sundry("Flat file 3.5 mm")));
    lines.add(line(sundry("Round bar 3.6 mm")));
    when(stock.lines()).thenReturn(lines);
    Bench bench = AllCommands.bench(stock, mock(MeasuredErrors.class));
    PlacePapers papers = AllCommands.placePapers();
    session =
        new Session(
                new HolePilot(bench, RealTrade.PILOTS),
                new HoleMeasure(bench, RealTrade.MEASURING),
                new HoleCorrect(bench, RealTrade.CORRECTIONS, papers),
                new HoleMark(bench, RealTrade.OTHER_FACES, papers))
            .in(folder.toString());
    session.piped(SQUARE);
  }

  private static Goods sundry(String name) {
    return new Goods(Goods.Kind.SUNDRY, name, "", "", Optional.empty(), Optional.empty(), "");
  }

  private static StockLine line(Goods goods) {
    return new StockLine(
        1, goods, "Stand", StockLine.Condition.GOOD, 1, List.of(), Optional.empty());
  }

  private Map<String, Object> data(int status, String... words) throws IOException {
    List<String> typed = new ArrayList<>(List.of(words));
    typed.add("--json");
    Answer answer = session.type(typed.toArray(String[]::new));
    assertEquals("", answer.err());
    assertEquals(status, answer.status(), answer.out());
    return JSON.std.mapFrom(answer.out());
  }

  private static Object at(Object data, String... path) {
    Object at = data;
    for (String key : path) {
      at = at instanceof List<?> list ? list.get(Integer.parseInt(key)) : ((Map<?, ?>) at).get(key);
    }
    return at;
  }

  private static void near(double expected, Object actual) {
    assertEquals(expected, ((Number) actual).doubleValue(), 1e-6);
  }

  @Test
  void pilotCoversTheMethod() throws IOException {
    // Scribe and dot: 0.15 sqrt(-2 ln 0.05) = 0.367; 6 - 2 (0.367 + 0.1) = 5.07.
    Map<String, Object> data =
        data(0, "hole", "pilot", "6mm", "--method", "scribe-and-dot", "--clean-up", "0.1mm");
    near(4.8, at(data, "pilot", "diameterMm"));
    near(0.5, at(data, "pilot", "curableMm"));
    near(0.15 * Math.sqrt(-2 * Math.log(0.05)), at(data, "expected", "radiusMm"));
    assertEquals("as said", data.get("cleanUpMeans"));
    assertEquals(true, data.get("finishHeld"));
    Map<String, Object> ofFile = data(0, "hole", "pilot", "--seat", "-");
    near(6, ofFile.get("finishDiameterMm"));
    near(5.2, at(ofFile, "pilot", "diameterMm"));
    assertTrue(String.valueOf(ofFile.get("cleanUpMeans")).contains("common practice"));
  }

  @Test
  void noPilotSaysWhatThen() throws IOException {
    Map<String, Object> data = data(1, "hole", "pilot", "3.2mm", "--method", "scribe-and-dot");
    assertFalse(data.containsKey("pilot"));
    assertEquals("buy pilot", at(data, "remedies", "0", "kind"));
    Answer words = session.type("hole", "pilot", "1mm", "--method", "scribe-and-dot");
    assertEquals(1, words.status());
    assertTrue(words.out().contains("place the hole through a bush"), words.out());
  }

  @Test
  void measureSaveAndCorrect() throws IOException {
    // 4 mm at 5.6, 8 as made up: over the pin 7.6 from the left and 10 from the near edge.
    Map<String, Object> data =
        data(
            0,
            "hole",
            "measure",
            "-",
            "edge 4-1 over pin 7.6mm",
            "edge 1-2 over pin 10mm +- 0.04 mm",
            "corner 1: centre 9.765244 mm",
            "--drilled",
            "4 mm",
            "--pin",
            "4mm",
            "--plus-minus",
            "0.02mm",
            "--save",
            "measured.seat.toml",
            "--svg",
            "measured.svg");
    near(5.6, at(data, "centre", "xMm"));
    near(8, at(data, "centre", "yMm"));
    near(0.6, data.get("errorMm"));
    assertEquals("agree", data.get("agreement"));
    assertTrue(Files.readString(folder.resolve("measured.svg")).contains("7.60 mm over pin"));
    Map<String, Object> correction =
        data(0, "hole", "correct", "measured.seat.toml", "--svg", "c.svg", "--card", "c.pdf");
    // The right edge is far, so a head of 8 has room enough: leave it.
    assertEquals("leave it", correction.get("outcome"));
    assertEquals("9 o'clock", at(correction, "filing", "towards", "clock"));
    near(1.2, at(correction, "filing", "deepestMm"));
    near(0.4, at(correction, "filing", "lastCutPerSideMm"));
    near(3, at(correction, "filing", "file", "diameterMm"));
    assertEquals("edge from corner 4 to corner 1", at(correction, "filing", "edge"));
    assertTrue(Files.exists(folder.resolve("c-hole.svg")));
    assertEquals(
        "%PDF-",
        Files.readString(folder.resolve("c.pdf"), java.nio.charset.StandardCharsets.ISO_8859_1)
            .substring(0, 5));
  }

  @Test
  void theSideToFileStandsInWords() {
    Answer answer =
        session.type(
            "hole",
            "correct",
            Path.of(LUG).toAbsolutePath().toString(),
            "--drilled",
            "3mm",
            "--at",
            "6.15mm, 5.7mm",
            "--within",
            "0.05mm",
            "--files",
            "2mm, 1/8");
    assertEquals(0, answer.status(), answer.err());
    assertTrue(answer.out().startsWith("drain lug: file\n"), answer.out());
    // Out by 0.4 right and 0.3 near, so filed on the left and far side.
    assertTrue(
        answer
            .out()
            .contains("towards 10 o'clock (left and away), the edge from corner 4 to corner 1"),
        answer.out());
    assertTrue(answer.out().contains("1.00 mm (0.039 in) in the middle of that side"));
  }

  @Test
  void markIsMirroredAsThePartIsTurned() throws IOException {
    Map<String, Object> side =
        data(
            0,
            "hole",
            "mark",
            "-",
            "--turn",
            "sideways",
            "--depth",
            "12mm",
            "--edges",
            "4,3",
            "--svg",
            "m.svg",
            "--card",
            "m.pdf",
            "--wander",
            "0.1mm");
    near(-5, at(side, "markAsSeen", "xMm"));
    near(8, at(side, "markAsSeen", "yMm"));
    assertEquals("right-hand edge, corner 4 to 1", at(side, "markFrom", "0", "edge"));
    near(7, at(side, "markFrom", "0", "distanceMm"));
    near(15, at(side, "markFrom", "1", "distanceMm"));
    near(0.1, side.get("wanderMm"));
    Map<String, Object> end =
        data(0, "hole", "mark", "-", "--turn", "endways", "--depth", "12mm", "--edges", "4,3");
    near(5, at(end, "markAsSeen", "xMm"));
    near(-8, at(end, "markAsSeen", "yMm"));
    assertEquals("left-hand edge, corner 4 to 1", at(end, "markFrom", "0", "edge"));
    assertTrue(String.valueOf(end.get("wanderMeans")).startsWith("not counted"));
    assertTrue(Files.size(folder.resolve("m.pdf")) > 1000);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "hole pilot 6mm|nothing says how the hole is placed; add --method",
        "hole pilot --method jig|nothing says how large the hole shall be",
        "hole pilot 6mm --method eye|\"eye\" is no known way of placing a hole; known are",
        "hole correct -|nothing says where the hole is; add --at",
        "hole correct - --at 5mm,8mm --within 0.1mm|nothing says how large the hole is now",
        "hole correct - --at 5mm,8mm --drilled 4mm|nothing says how well the hole was measured",
        "hole correct - --at 5mm --drilled 4mm|is no place; give two lengths",
        "hole correct - --at 5mm,8mm --drilled 7mm --within 0.1mm|a hole does not grow smaller",
        "hole measure - edge_4-1_centre_5mm --drilled 4mm|at least 2 readings",
        "hole measure - edge_4-1_centre_5mm|nothing says how large the hole is now",
        "hole mark - --depth 12mm|nothing says how you turn the part over",
        "hole mark - --depth 12mm --turn round|\"round\" is no turn",
        "hole mark - --turn sideways|nothing says how deep",
        "hole mark - --turn sideways --depth 12mm --edges 1|two different edges",
        "hole mark - --turn sideways --depth 12mm --edges a,b|names no two edges",
      })
  void saysTheRemedy(String typed, String words) {
    String[] parts = typed.split(" ");
    for (int i = 0; i < parts.length; i++) {
      parts[i] = parts[i].replace('_', ' ');
    }
    List<String> all = new ArrayList<>(List.of(parts));
    if (typed.contains("measure")) {
      all.addAll(List.of("--plus-minus", "0.1mm"));
    }
    Answer answer = session.type(all.toArray(String[]::new));
    assertEquals(2, answer.status(), answer.out());
    assertTrue(answer.err().contains(words), answer.err());
    assertEquals(List.of(), session.reported());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "edge 1-3 centre 5mm|are not the ends of one edge",
        "edge 1-9 centre 5mm|corner 9 is outside 1 to 4",
        "edge 1-2 middle 5mm|is no reading; understood are",
        "about there|is no reading; understood are",
        "edge 1-2 centre 5mm|nothing says how far it may be out",
        "edge 1-2 over pin 5mm +- 0.1mm|needs the pin's diameter",
        "edge 1-2 centre 5|5",
      })
  void refusesReadings(String reading, String words) {
    Answer answer =
        session.type(
            "hole", "measure", "-", reading, "edge 4-1 centre 5mm +- 0.1mm", "--drilled", "4mm");
    assertEquals(2, answer.status(), answer.out());
    assertTrue(answer.err().contains(words), answer.err());
  }

  @Test
  void measuresFromAnotherHole() throws IOException {
    // 3-4-5: the known hole of 3 mm at 2, 4; over both pins 5 + 1.5 + 2.
    Map<String, Object> data =
        data(
            0,
            "hole",
            "measure",
            "-",
            "hole at 2 mm, 4 mm across 3 mm over pin 8.5 mm",
            "edge 4-1 centre 5 mm",
            "--drilled",
            "4 mm",
            "--pin",
            "4 mm",
            "--plus-minus",
            "0.02 mm");
    near(5, at(data, "centre", "xMm"));
    near(8, at(data, "centre", "yMm"));
    near(0, at(data, "other", "yMm"));
  }

  @Test
  void noPaperWithoutWhatPrints() {
    Session bare =
        new Session(
                new HoleMark(
                    AllCommands.bench(mock(Stock.class), mock(MeasuredErrors.class)),
                    RealTrade.OTHER_FACES,
                    new PlacePapers()))
            .in(folder.toString())
            .piped(SQUARE);
    Answer answer =
        bare.type("hole", "mark", "-", "--turn", "sideways", "--depth", "12mm", "--card", "x.pdf");
    assertEquals(2, answer.status());
    assertTrue(answer.err().contains("nothing that puts a hole on paper"), answer.err());
  }

  @Test
  void aFaceWithoutAnUndersideIsAskedFor() {
    session.piped(SQUARE.replaceAll("(?m)^underside.*\n", ""));
    Answer answer = session.type("hole", "mark", "-", "--turn", "sideways", "--depth", "12mm");
    assertEquals(2, answer.status());
    assertTrue(answer.err().contains("add underside or underside-stations"), answer.err());
  }
}
