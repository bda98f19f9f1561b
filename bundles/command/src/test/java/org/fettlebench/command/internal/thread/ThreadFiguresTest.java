package org.fettlebench.command.internal.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.command.internal.FreshClub;
import org.fettlebench.command.internal.Session;
import org.fettlebench.command.internal.Session.Answer;
import org.fettlebench.testkit.trade.RealTrade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits, strength and wires as they are typed. */
class ThreadFiguresTest {
  private final Session session =
      new Session(
          new ThreadLimitsCommand(RealTrade.THREADS, RealTrade.THREAD_CLASSES),
          new ThreadStrengthCommand(RealTrade.THREADS, RealTrade.STRENGTH, RealTrade.MATERIALS),
          new ThreadWires(
              RealTrade.THREADS,
              RealTrade.THREAD_CLASSES,
              RealTrade.WIRES,
              RealTrade.DRILLS,
              drawer()),
          new MaterialList(RealTrade.MATERIALS),
          new ThreadIdentify(RealTrade.IDENTIFIER),
          new ThreadPairs(RealTrade.THREADS, RealTrade.IDENTIFIER));

  private static Stock drawer() {
    Stock stock = mock(Stock.class);
    when(stock.lines()).thenReturn(List.of(drill(0.5), drill(0.55), drill(0.6), drill(2)));
    return stock;
  }

  private static StockLine drill(double mm) {
    return new StockLine(
        1,
        FreshClub.drill(mm + " mm", mm),
        "Stand",
        StockLine.Condition.GOOD,
        3,
        List.of(),
        Optional.empty());
  }

  private Map<String, Object> data(String typed) throws IOException {
    Answer answer = session.type((typed + " --json").split(" "));
    assertEquals("", answer.err());
    return JSON.std.mapFrom(answer.out());
  }

  private static Object at(Object data, Object... path) {
    Object there = data;
    for (Object key : path) {
      there =
          there instanceof List<?> list ? list.get((Integer) key) : ((Map<?, ?>) there).get(key);
    }
    return there;
  }

  private static double number(Object data, Object... path) {
    return ((Number) at(data, path)).doubleValue();
  }

  /**
   * Printed: ASME B1.13M for M10 (engineersedge, apporo), efunda for #1-64, ISO 228-1 for G 1/4.
   */
  @ParameterizedTest
  @CsvSource({
    "thread limits M10-6g, major, leastMm, 9.732",
    "thread limits M10-6g, effective, leastMm, 8.862",
    "thread limits M10 --class 6H, effective, mostMm, 9.206",
    "thread limits #1-64 UNC-2A, effective, leastIn, 0.0603",
    "thread limits #1-64 UNC --class 3B, effective, mostIn, 0.0648",
    "thread limits G1/4A, effective, leastMm, 12.176"
  })
  void limitsAsPrinted(String typed, String diameter, String key, double printed)
      throws IOException {
    assertEquals(printed, number(data(typed), "limits", 0, diameter, key), 1e-9);
  }

  @Test
  void limitsOfTheUsualFitAsText() {
    Answer answer = session.type("thread", "limits", "M6");
    assertTrue(answer.out().startsWith("M6 screw, ISO 965-1 6g\n"), answer.out());
    assertTrue(answer.out().contains("M6 nut, ISO 965-1 6H\n"), answer.out());
    assertTrue(answer.out().contains("  effective diameter     5.212  5.324"), answer.out());
  }

  /**
   * Bolt load 69600 N, aluminium of 130 MPa in shear, as in a printed example but at 6g's least.
   */
  @Test
  void strengthByTypedStrengths() throws IOException {
    Map<String, Object> told =
        data("thread strength M10 --screw 1200 --nut-shear 130 --engagement 20mm");
    assertEquals(57.99, number(told, "stressAreaMm2"), 5e-3);
    assertEquals("the thread in the hole strips", at(told, "joint", "givesWay"));
    double perMm = Math.PI * 9.732 * (0.5 + 0.57735 / 1.5 * (9.732 - 9.206));
    assertEquals(perMm * 20, number(told, "joint", "nutShearAreaMm2"), 1e-3);
    assertEquals(57.99 * 1200 / 130 / perMm, number(told, "joint", "leastEngagementMm"), 2e-3);
  }

  @Test
  void stripsIsTheStatusOfWanting() {
    assertEquals(
        1,
        session
            .type("thread", "strength", "M6", "--screw", "class-8.8", "--nut", "6082-t6")
            .status());
    Answer sound =
        session.type(
            "thread",
            "strength",
            "M6",
            "--screw",
            "mild-steel",
            "--nut",
            "EN8",
            "--engagement",
            "12mm");
    assertEquals(0, sound.status());
    assertTrue(sound.out().contains("the screw breaks first"), sound.out());
    assertTrue(sound.out().contains("boiler inspector"), sound.out());
  }

  /** Shigley's example 8-3: 25000 lbf on 3/4-16 at 0.15 is 3551 lbf in. */
  @Test
  void torqueAsPrinted() throws IOException {
    Map<String, Object> told =
        data("thread strength 3/4-16 UNF --preload 111205.54 --friction 0.15");
    assertEquals(3551, number(told, "torqueNm") / 0.1129848290276167, 0.5);
  }

  /** The same by its nut factor of 0.2: 3750 lbf in. The factor stands for the friction. */
  @Test
  void torqueByNutFactorAsPrinted() throws IOException {
    Map<String, Object> told =
        data("thread strength 3/4-16 UNF --preload 111205.54 --nut-factor 0.2");
    assertEquals(3750, number(told, "torqueNm") / 0.1129848290276167, 0.5);
    var both =
        session.type(
            "thread",
            "strength",
            "M6",
            "--preload",
            "1000",
            "--friction",
            "0.1",
            "--nut-factor",
            "0.2");
    assertEquals(2, both.status());
    assertTrue(both.err().contains("--friction or --nut-factor"), both.err());
    assertEquals(2, session.type("thread", "strength", "M6", "--nut-factor", "0.2").status());
  }

  /**
   * Without the helix as handbooks print it: F. D. Jones, 1 1/2-6 over 0.140 in is 1.6674 in; and 1
   * 5/8 x 11 Whitworth, 1.65358 in over 0.055 in for 1.566788 in.
   */
  @Test
  void wiresAsHandbooksPrintThem() throws IOException {
    Map<String, Object> jones = data("thread wires 1 1/2-6 UNC --wire 0.140in");
    assertEquals(1.6674, number(jones, "plainOverWiresIn"), 5e-5);
    assertTrue(number(jones, "overWiresIn") > number(jones, "plainOverWiresIn"));
    Map<String, Object> back = data("thread wires 1 5/8 x 11 Whit --wire 0.055in --over 1.65358in");
    assertEquals(1.566788, number(back, "plainEffectiveIn"), 5e-6);
  }

  @Test
  void wiresBothWays() throws IOException {
    Map<String, Object> there = data("thread wires 2 BA --wire 0.45mm");
    Map<String, Object> back =
        data("thread wires 2 BA --wire 0.45mm --over " + at(there, "overWiresMm") + "mm");
    assertEquals(4.215, number(back, "effectiveMm"), 2e-6);
    assertEquals(0.54626 * 0.81, number(there, "bestWireMm"), 5e-6);
    assertEquals(
        1,
        session.type("thread", "wires", "2", "BA", "--wire", "0.45mm", "--over", "5mm").status());
  }

  /** 1/4-20 UNC 2A is 0.2408 to 0.2489 in; BSW of the same size and pitch has another angle. */
  @Test
  void namesWhatWasMeasured() throws IOException {
    Map<String, Object> told =
        data("thread identify --diameter 0.245in --span 0.5in --turns 10 --count 4");
    assertEquals(1.27, number(told, "pitch", "valueMm"), 1e-9);
    assertEquals(0.02, number(told, "pitch", "uncertaintyMm"), 1e-9);
    List<?> candidates = (List<?>) at(told, "candidates");
    assertEquals(4, candidates.size());
    List<Object> first =
        List.of(at(candidates.get(0), "designation"), at(candidates.get(1), "designation"));
    assertTrue(first.contains("1/4-20 UNC") && first.contains("1/4 BSW"), first.toString());
    assertEquals(true, at(told, "agrees"));
  }

  @Test
  void theHexagonDecides() throws IOException {
    String typed = "thread identify --diameter 5.88mm --pitch 1mm --hexagon ";
    assertEquals("M6", at(data(typed + "9.85mm"), "candidates", 0, "designation"));
    assertEquals("0 BA", at(data(typed + "10.45mm"), "candidates", 0, "designation"));
  }

  @Test
  void saysWhenNothingAgrees() {
    Answer answer = session.type("thread", "identify", "--diameter", "5mm", "--pitch", "3mm");
    assertEquals(1, answer.status());
    assertTrue(answer.out().contains("Nothing agrees"), answer.out());
  }

  @Test
  void listsPairsWithOneThreadAndOfSeries() throws IOException {
    Answer one = session.type("thread", "pairs", "0", "BA");
    assertTrue(one.out().contains("M6 "), one.out());
    List<?> some = (List<?>) at(data("thread pairs --series ba,M"), "pairs");
    List<?> same = (List<?>) at(data("thread pairs --same"), "pairs");
    assertTrue(some.size() > 3 && some.size() < same.size(), some.size() + ", " + same.size());
    assertTrue(some.stream().noneMatch(pair -> at(pair, "sameThread").equals(true)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "thread limits M6 --class 2B|say a grade and a position",
        "thread limits M6 --engagement 5mm|without a length of engagement",
        "thread limits 2 BX|near it are",
        "thread strength M6 --screw brass --nut en8|there are brass-cz121",
        "thread strength M6 --screw adamant --nut en8|material list",
        "thread strength M6 --screw en8|say both materials",
        "thread strength M6 --preload 100|needs both",
        "thread strength M6 --screw en8 --nut en8 --hole 6mm|leaves no thread",
        "thread strength M6 --screw en8 --nut en8 --engagement 0mm|above 0",
        "thread wires M6 --over 6mm|--wire LENGTH",
        "thread wires M6 --wire 0.2mm|best 0.577",
        "thread wires M6 --wire 0.577mm --over 1mm|check the measurement",
        "thread wires M6 --wire 0.577mm --over 6mm --effective 5mm|not both",
        "material list unobtainium|no material has",
        "thread identify --hexagon 10mm|a diameter or a pitch must be measured",
        "thread identify --diameter 5mm --pitch 1mm --tpi 25|say the pitch once",
        "thread identify --diameter 5mm --span 10mm|go together",
        "thread identify --diameter 5mm --diameter-error 6mm|below the reading",
        "thread identify --diameter 0mm|above 0",
        "thread pairs 2 BX|near it are",
        "thread pairs --series BX|there is no thread series"
      })
  void refusesWithARemedy(String typed, String words) {
    Answer answer = session.type(typed.split(" "));
    assertEquals(2, answer.status(), answer.out());
    assertTrue(answer.err().contains(words), answer.err());
    assertEquals("", answer.out());
    assertEquals(List.of(), session.reported());
  }

  /**
   * Best wire for M6: 0.57735 mm (p / (2 cos 30 degrees)); the shank of 0.6 mm is nearest to it.
   */
  @Test
  void theBestOfTheDrillsThatAreHeld() throws IOException {
    Map<String, Object> data = data("thread wires M6 --from-drills");
    assertEquals(0.6, number(data, "wireMm"), 0);
    assertEquals(List.of(0.6, 0.55), at(data, "fittingWiresMm"));
  }

  @Test
  void theBestOfTheWiresThatAreNamedBothWays() throws IOException {
    Map<String, Object> over = data("thread wires M6 --held 0.51mm,0.58mm,9mm --effective 5.3mm");
    assertEquals(0.58, number(over, "wireMm"), 0);
    Map<String, Object> back =
        data("thread wires M6 --held 0.58mm --over " + number(over, "overWiresMm") + "mm");
    assertEquals(5.3, number(back, "effectiveMm"), 2e-6);
  }

  /** What is pressed together reads small, so the same reading means a larger screw. */
  @Test
  void theForceOfTheAnvilsIsGivenBack() throws IOException {
    Map<String, Object> light = data("thread wires M6 --wire 0.58mm --over 6.2mm");
    Map<String, Object> pressed = data("thread wires M6 --wire 0.58mm --over 6.2mm --force 10");
    double give = number(pressed, "pressureMm");
    assertTrue(give > 0.001 && give < 0.005, give + " mm");
    assertEquals(6.2, number(pressed, "overWiresMm"), 1e-9);
    assertEquals(number(light, "effectiveMm") + give, number(pressed, "effectiveMm"), 5e-6);
    assertEquals(
        number(light, "leastOverWiresMm") - give, number(pressed, "leastOverWiresMm"), 1e-9);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "thread wires M6 --held 3mm,4mm|none of 2 wires fits M6: take wires of 0.505",
        "thread wires M60 --from-drills|none of 4 sizes of drills held fits M60: take wires of",
        "thread wires M6 --held 0.6mm --wire 0.6mm|say one of --wire, --held and --from-drills",
        "thread wires M6 --over 6mm|say which wires",
        "thread wires M6 --wire 0.6mm --force 0|--force",
      })
  void wiresThatCannotBe(String typed, String told) {
    Answer answer = session.type(typed.split(" "));
    assertEquals(2, answer.status());
    assertTrue(answer.err().contains(told), answer.err());
  }

  @Test
  void theHandAndTheLengthAreTold() {
    Answer answer = session.type("thread", "limits", "M6", "x", "1", "x", "20", "LH");
    assertTrue(answer.out().contains("note: left-hand; the figures are"), answer.out());
    assertTrue(answer.out().contains("note: a length of 20 mm stands behind it"), answer.out());
  }
}
