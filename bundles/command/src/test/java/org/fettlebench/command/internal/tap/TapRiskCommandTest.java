package org.fettlebench.command.internal.tap;

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
import org.fettlebench.club.StockLine.Condition;
import org.fettlebench.command.internal.FreshClub;
import org.fettlebench.command.internal.Session;
import org.fettlebench.command.internal.Session.Answer;
import org.fettlebench.testkit.trade.RealTrade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TapRiskCommandTest {
  private static final Session SESSION = session();

  private static Session session() {
    Stock stock = mock(Stock.class);
    when(stock.lines()).thenReturn(List.of(line("5/32 in", 3.96875), line("4.1 mm", 4.1)));
    return new Session(
        new TapRiskCommand(
            RealTrade.THREADS,
            RealTrade.DRILLS,
            RealTrade.HOLES,
            RealTrade.TAP_RISKS,
            RealTrade.WORK,
            stock));
  }

  private static StockLine line(String name, double mm) {
    return new StockLine(
        1, FreshClub.drill(name, mm), "Stand", Condition.GOOD, 1, List.of(), Optional.empty());
  }

  private static Map<String, Object> data(String... words) throws IOException {
    Answer answer = SESSION.type(words);
    assertEquals("", answer.err());
    return JSON.std.mapFrom(answer.out());
  }

  private static double number(Map<String, Object> data, String key) {
    return ((Number) data.get(key)).doubleValue();
  }

  @Test
  void tellsTorquesRatioAndCures() throws IOException {
    Map<String, Object> risk =
        data(
            "tap",
            "risk",
            "2 BA",
            "--material",
            "brass",
            "--depth",
            "7mm",
            "--drill",
            "5/32",
            "--json");

    // tan 23.75° x 2300 x 1.6 x 0.73125² x 12.6375 / 24000 = 0.4560 N m.
    assertEquals(0.4560, number(risk, "cuttingTorqueNm"), 0.0001);
    assertEquals(75.23, number(risk, "percentOfThread"), 0.01);
    assertEquals(
        number(risk, "cuttingTorqueNm") / number(risk, "breakingTorqueNm"),
        number(risk, "ratio"),
        0.0001);
    String cures = risk.get("cures").toString();
    assertTrue(cures.contains("drill 4.1 mm: 62 per cent of thread"), cures);
    assertTrue(risk.get("assumed").toString().contains("Yamawa"), risk.toString());
    assertTrue(risk.get("assumed").toString().contains("from memory"), risk.toString());
  }

  @Test
  void takesTheHeldDrillForTheUsualPerCentAndSaysSo() {
    Answer answer =
        SESSION.type("tap", "risk", "2 BA", "--material", "mild steel", "--depth", "8 mm");

    assertEquals(0, answer.status());
    assertTrue(answer.out().contains("(none was said)"), answer.out());
    assertTrue(answer.out().contains("68 % of thread wanted: OSG"), answer.out());
    assertTrue(answer.out().contains("Caution: "), answer.out());
  }

  @Test
  void withoutADrillAtHandTheIdealHoleIsCounted() {
    Answer answer = SESSION.type("tap", "risk", "M12", "--material", "brass", "--depth", "8 mm");
    assertTrue(answer.out().contains("no drill at hand makes it"), answer.out());
  }

  @Test
  void endsWithOneWhenTheTapMayBreak() {
    Answer answer =
        SESSION.type(
            "tap",
            "risk",
            "M3",
            "--material",
            "silver steel",
            "--depth",
            "6mm",
            "--drill",
            "2.4mm",
            "--tap",
            "bottoming");

    assertEquals(1, answer.status());
    assertTrue(answer.out().contains("may break the tap"), answer.out());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "tap risk 2BA --depth 8mm|say what is worked",
        "tap risk 2BA --material brass|say how deep",
        "tap risk 2BA --material titanium --depth 8mm|no source gives the cutting resistance",
        "tap risk 2BA --material brass --depth 8mm --drill 5mm|leaves no thread",
        "tap risk 2BA --material brass --depth 8mm --drill many|is no drill and no length",
        "tap risk 2BA --material brass --depth 8mm --drill 4mm --percent 60|not both",
        "tap risk 2BA --material brass --depth 8mm --percent 0|is no number above 0",
        "tap risk 2BA --material brass --depth 0mm --percent 60|must be above 0",
        "tap risk 2BA --material brass --depth 8mm --tap blunt|is no sort of tap",
        "tap risk 2BA --material brass --depth 8mm --flutes 9|whole number from 2 to 6",
        "tap risk 2BX --material brass --depth 8mm|no thread series has"
      })
  void badInputIsToldWithARemedy(String typed, String told) {
    Answer answer = SESSION.type(typed.split(" "));

    assertEquals(2, answer.status());
    assertTrue(answer.err().contains(told), answer.err());
  }
}
