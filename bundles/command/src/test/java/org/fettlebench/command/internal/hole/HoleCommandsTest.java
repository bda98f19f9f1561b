package org.fettlebench.command.internal.hole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.club.Loan;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.club.StockLine.Condition;
import org.fettlebench.command.internal.FreshClub;
import org.fettlebench.command.internal.Session;
import org.fettlebench.command.internal.Session.Answer;
import org.fettlebench.testkit.trade.RealTrade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class HoleCommandsTest {
  private static final Session SESSION = session();

  private static Session session() {
    Stock stock = mock(Stock.class);
    when(stock.lines())
        .thenReturn(
            List.of(
                line("4.0 mm", 4.0, "Stand / 4", Condition.GOOD, 0),
                line("3.8 mm", 3.8, "Stand / 4", Condition.GOOD, 0),
                line("4.9 mm", 4.9, "Stand / 5", Condition.GOOD, 0),
                line("3.9 mm", 3.9, "Stand / 4", Condition.WORN, 0),
                line("4.1 mm", 4.1, "Stand / 4", Condition.GOOD, 1)));
    return new Session(
        new DrillNear(RealTrade.DRILLS, stock),
        new DrillShow(RealTrade.DRILLS, stock, RealTrade.DRILLED),
        new HoleReam(RealTrade.DRILLS, stock, RealTrade.DRILLED, RealTrade.WORK),
        new HolePlan(RealTrade.THREADS, RealTrade.DRILLS, RealTrade.HOLES, stock));
  }

  private static StockLine line(
      String name, double mm, String place, Condition condition, int lent) {
    return new StockLine(
        1,
        FreshClub.drill(name, mm),
        place,
        condition,
        1,
        lent > 0 ? List.of(new Loan("Ben", lent, Optional.empty())) : List.of(),
        Optional.empty());
  }

  private static Map<String, Object> data(String... words) throws IOException {
    Answer answer = SESSION.type(words);
    assertEquals("", answer.err());
    return JSON.std.mapFrom(answer.out());
  }

  @SuppressWarnings("unchecked")
  private static List<Map<String, Object>> list(Map<String, Object> data, String key) {
    return (List<Map<String, Object>>) data.get(key);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/expected/percent-of-thread.csv", useHeadersInDisplayName = true)
  void tellsThePrintedPerCentOfThread(String thread, double drillIn, double percent, double tpi)
      throws IOException {
    Map<String, Object> plan =
        data("hole", "plan", thread, "--catalogue", "--percent", "" + percent, "--json");
    double told =
        list(plan, "tapping").stream()
            .filter(drill -> Math.abs(number(drill, "diameterIn") - drillIn) < 0.00006)
            .mapToDouble(drill -> number(drill, "threadPercent"))
            .findFirst()
            .orElseThrow(() -> new AssertionError(drillIn + " in is not among " + plan));
    // The table's 100 per cent is 1.29904 pitch, and its drill is printed to 0.0001 in.
    assertEquals(percent, told, 0.5 + 100 * 0.00005 * tpi / 1.29904);
  }

  private static double number(Map<String, Object> map, String key) {
    return ((Number) map.get(key)).doubleValue();
  }

  @Test
  void choosesOnlyDrillsInTheirPlaceAndFitForUse() throws IOException {
    Map<String, Object> plan = data("hole", "plan", "2", "BA", "--percent", "70", "--json");
    assertEquals(
        List.of(4.0, 3.8),
        list(plan, "tapping").stream().map(drill -> number(drill, "diameterMm")).toList());
    // By hand: (4.7 - 4.0) / (1.2 x 0.81) is 72.016 per cent.
    assertEquals(72.016, number(list(plan, "tapping").get(0), "threadPercent"), 0.0005);
    assertEquals(List.of("Stand / 4"), list(plan, "tapping").get(0).get("places"));
    assertEquals(4.9, number(list(plan, "clearance").get(0), "diameterMm"));
    assertEquals(0.2, number(list(plan, "clearance").get(0), "clearanceMm"));
  }

  @Test
  void saysPlainlyWhenNoDrillWillDo() {
    Answer answer = SESSION.type("hole", "plan", "12", "BA", "--percent", "70");
    assertEquals(1, answer.status());
    assertTrue(answer.out().contains("no drill that leaves a usable thread; --catalogue"));
  }

  @Test
  void aBlindHoleIsDeepEnoughForEachTapAndWarnsOfBreakingThrough() throws IOException {
    String[] words = "hole plan 2 BA --percent 70 --json --metal".split(" ");
    Map<String, Object> plan = data(append(words, "20 mm", "--depth", "8 mm"));
    List<Map<String, Object>> holes = list(plan, "blindHole");
    assertEquals(
        List.of("taper", "second", "bottoming"), holes.stream().map(h -> h.get("lead")).toList());
    for (Map<String, Object> hole : holes) {
      double shoulder =
          number(hole, "fullThreadMm") + number(hole, "tapLeadMm") + number(hole, "chipRoomMm");
      assertEquals(shoulder, number(hole, "shoulderMm"), 0.000002);
      // By hand: the point of a 4 mm drill of 118 degrees is 2 / tan 59 degrees = 1.201721 mm.
      assertEquals(1.201721, number(hole, "pointLengthMm"), 0.000001);
      assertEquals(20 - number(hole, "drillTipMm"), number(hole, "leftMm"), 0.000002);
    }
    Answer through = SESSION.type(append(words, "9 mm", "--depth", "8 mm", "--lead", "bottoming"));
    assertEquals(1, through.status());
    assertTrue(through.out().contains("\"breaksThrough\" : true"), through.out());
  }

  private static String[] append(String[] words, String... more) {
    return java.util.stream.Stream.concat(
            java.util.Arrays.stream(words), java.util.Arrays.stream(more))
        .toArray(String[]::new);
  }

  @Test
  void thePlanCarriesItsCautionAndWhereThePerCentComesFrom() {
    String text = SESSION.type("hole", "plan", "2", "BA", "--material", "brass").out();
    assertTrue(text.contains("of thread wanted in brass; "), text);
    assertTrue(text.contains("\nCaution: Clamp the work"), text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "hole plan 2 BA --percent 0|--percent \"0\" is no number above 0 and up to 100",
        "hole plan 2 BA --percent NaN|--percent \"NaN\" is no number above 0 and up to 100",
        "hole plan 2 BA --held --catalogue|say --held or --catalogue, not both",
        "hole plan 2 BA --lead blunt|--lead \"blunt\" is no tap; say taper, second or bottoming",
        "hole plan 2 BX|no thread series has \"2 BX\"",
        "hole plan 2 BA --depth 5mm|a blind hole needs both --depth",
        "hole plan 2 BA --depth 0mm --metal 5mm|depth of full thread 0 mm must be above 0 mm",
        "drill near nothing|\"nothing\" is no drill and no length",
        "drill near 4.1|\"4.1\" is no drill and no length",
        "drill near 5/32 --count 0|--count \"0\" is no whole number from 1 to 100",
      })
  void refusesWhatCannotBe(String typed, String message) {
    Answer answer = SESSION.type(typed.split(" "));
    assertEquals(2, answer.status());
    assertEquals("", answer.out());
    assertTrue(answer.err().startsWith(message), answer.err());
  }

  @Test
  void drillsNearASizeComeFromAllSystems() throws IOException {
    Map<String, Object> near = data("drill", "near", "5/32", "--count", "3", "--json");
    List<Map<String, Object>> drills = list(near, "drills");
    assertEquals(3, drills.size());
    assertTrue(drills.stream().anyMatch(d -> number(d, "differenceMm") == 0), drills.toString());
    assertEquals(3.96875, number(cast(near.get("size")), "diameterMm"));
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> cast(Object map) {
    return (Map<String, Object>) map;
  }

  @Test
  void drillsNearASizeMayBeOnlyTheHeldOnes() throws IOException {
    List<Map<String, Object>> drills =
        list(data("drill", "near", "4.1", "mm", "--held", "--count", "2", "--json"), "drills");
    assertEquals(List.of(3.8, 4.0), drills.stream().map(d -> number(d, "diameterMm")).toList());
    assertEquals(List.of(true, true), drills.stream().map(d -> d.get("held")).toList());
  }

  @Test
  void showsADrillWithAllItsNamesAndWhereItIs() {
    String text = SESSION.type("drill", "show", "4.1", "mm").out();
    assertTrue(text.contains("Stand / 4: 0, and 1 out: Ben"), text);
    String worn = SESSION.type("drill", "show", "3.9", "mm").out();
    assertTrue(worn.contains("Stand / 4: 1 worn"), worn);
    assertTrue(SESSION.type("drill", "show", "No", "60").out().endsWith("not held\n"));
    String letter = SESSION.type("drill", "show", "E").out();
    assertTrue(letter.contains("1/4 in"), letter);
  }

  /** Undersizes of reaming, ITI course: 0.2 to 0.3 mm and 0.05 mm for the drill at 6 mm. */
  @Test
  void drillBeforeAReamer() throws IOException {
    Map<String, Object> six = data("hole", "ream", "6mm", "--catalogue", "--json");
    assertEquals(5.65, ((Number) six.get("drillLeastMm")).doubleValue());
    assertEquals(5.75, ((Number) six.get("drillMostMm")).doubleValue());
    assertTrue(six.get("drills").toString().contains("5.7 mm"), six.toString());
    Map<String, Object> light =
        data("hole", "ream", "6mm", "--catalogue", "--material", "6082", "--json");
    assertEquals(5.65, ((Number) light.get("drillMostMm")).doubleValue());
    // Of those held 4.1 mm is lent and 4.0 mm is in its place.
    Answer held = SESSION.type("hole", "ream", "4.2mm");
    assertEquals(0, held.status());
    assertTrue(held.out().contains("4.0 mm"), held.out());
    Answer none = SESSION.type("hole", "ream", "30mm");
    assertEquals(1, none.status());
    assertTrue(none.out().contains("--catalogue"), none.out());
    assertEquals(2, SESSION.type("hole", "ream", "0mm").status());
  }

  /** Oversize in tests of the USCTI (remembered) and tolerance of AND10387 at 1/4 in. */
  @Test
  void holeThatADrillMakes() throws IOException {
    Map<String, Object> quarter = data("drill", "show", "1/4", "--json");
    assertEquals(
        0.004, ((Number) ((Map<?, ?>) quarter.get("holeOversize")).get("meanIn")).doubleValue());
    assertEquals(
        0.005, ((Number) ((Map<?, ?>) quarter.get("holeTolerance")).get("aboveIn")).doubleValue());
    assertTrue(
        SESSION.type("drill", "show", "1/4").out().contains("may be off by +0.127 -0.025 mm"));
  }
}
