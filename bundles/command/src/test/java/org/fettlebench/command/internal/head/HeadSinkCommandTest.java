package org.fettlebench.command.internal.head;

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

class HeadSinkCommandTest {
  private static final Session SESSION = session();

  private static Session session() {
    Stock stock = mock(Stock.class);
    when(stock.lines()).thenReturn(List.of(line("10.5 mm", 10.5), line("12 mm", 12)));
    return new Session(
        new HeadSinkCommand(
            RealTrade.THREADS,
            RealTrade.HEADS,
            RealTrade.SINKS,
            RealTrade.HOLES,
            RealTrade.DRILLS,
            stock));
  }

  private static StockLine line(String name, double mm) {
    return new StockLine(
        1, FreshClub.drill(name, mm), "Stand", Condition.GOOD, 1, List.of(), Optional.empty());
  }

  private static Map<?, ?> onlyCut(String typed) throws IOException {
    Answer answer = SESSION.type((typed + " --json").split(" "));
    assertEquals("", answer.err());
    List<?> cuts = (List<?>) JSON.std.mapFrom(answer.out()).get("cuts");
    assertEquals(1, cuts.size());
    return (Map<?, ?>) cuts.get(0);
  }

  private static double number(Map<?, ?> data, String key) {
    return ((Number) data.get(key)).doubleValue();
  }

  @Test
  void capHeadWithTheDrillThatMakesIt() throws IOException {
    Map<?, ?> cut = onlyCut("head sink M6 --style socket-cap");

    assertEquals("counterbore", cut.get("cut"));
    assertEquals(11.0, number(cut, "diameterMm"));
    assertEquals(6.4, number(cut, "depthMm"));
    // The medium hole of ISO 273.
    assertEquals(6.6, number(cut, "holeMm"));
    assertEquals(10.5, number((Map<?, ?>) cut.get("heldDrill"), "diameterMm"));
  }

  @Test
  void countersinkOfAMeasuredHead() throws IOException {
    Map<?, ?> cut = onlyCut("head sink 2BA --diameter 8.2mm --angle 90 --hole 4.8mm");

    assertEquals(90.0, number(cut, "angleDegrees"));
    assertEquals(1.7, number(cut, "depthMm"), 1e-6);
  }

  @Test
  void allHeadsOfAThreadAndTheSourcesUnderThem() {
    Answer answer = SESSION.type("head", "sink", "M8", "--unit", "in");

    assertEquals(0, answer.status());
    assertEquals(
        1,
        SESSION.type("head", "sink", "M8", "--style", "socket-cap").status(),
        "no drill is large enough for an M8 cap head");
    assertTrue(answer.out().contains("no drill held is large enough"), answer.out());
    assertTrue(answer.out().contains("countersink 90°"), answer.out());
    assertTrue(answer.out().contains("spot face"), answer.out());
    assertTrue(answer.out().contains("FreeCAD"), answer.out());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "head sink 2BA --style countersunk|no table lists a head of style \"countersunk\" for 2 BA",
        "head sink M6 --style countersunk --hole 13mm|fall through",
        "head sink M6 --style cheese --below -1mm|is below 0 mm",
        "head sink 2BA --diameter 8mm|needs --angle when it is countersunk, else --height",
        "head sink 2BA --diameter 8mm --angle 90 --height 2mm|needs --angle",
        "head sink 1/4UNC --style socket-cap --washer|no table lists a washer"
      })
  void badInputIsToldWithARemedy(String typed, String told) {
    Answer answer = SESSION.type(typed.split(" "));

    assertEquals(2, answer.status());
    assertTrue(answer.err().contains(told), answer.err());
  }
}
