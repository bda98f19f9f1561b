package org.fettlebench.command.internal.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.fettlebench.command.internal.Session;
import org.fettlebench.command.internal.Session.Answer;
import org.fettlebench.testkit.trade.RealTrade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class ThreadCommandsTest {
  private final Session session =
      new Session(new ThreadShow(RealTrade.THREADS), new ThreadList(RealTrade.THREADS));

  private List<Map<String, Object>> threads(String... words) throws IOException {
    Answer answer = session.type(words);
    assertEquals("", answer.err());
    assertEquals(0, answer.status());
    @SuppressWarnings("unchecked")
    List<Map<String, Object>> threads =
        (List<Map<String, Object>>) JSON.std.mapFrom(answer.out()).get("threads");
    return threads;
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/expected/thread-show.csv", useHeadersInDisplayName = true)
  void showsThePrintedSizes(String designation, String key, String printed) throws IOException {
    Object told = threads("thread", "show", designation, "--json").get(0).get(key);
    BigDecimal half =
        BigDecimal.ONE.movePointLeft(new BigDecimal(printed).scale()).divide(BigDecimal.valueOf(2));
    BigDecimal off = new BigDecimal(told.toString()).subtract(new BigDecimal(printed)).abs();
    assertTrue(off.compareTo(half) <= 0, designation + " " + key + " " + told + ", not " + printed);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2 BA|2 BA",
        "2 BA 4 BA|2 BA;4 BA",
        "2BA, 4BA|2 BA;4 BA",
        "1/4 x 40 ME 2 BA M6 x 0.75|1/4 x 40 ME;2 BA;M6 x 0.75",
        "M6 M6 x 0.75 1/4-20 UNC|M6;M6 x 0.75;1/4-20 UNC",
      })
  void readsSeveralThreadsOutOfPlainWords(String typed, String designations) throws IOException {
    String[] words = ("thread show " + typed + " --json").split(" ");
    assertEquals(
        designations,
        String.join(";", threads(words).stream().map(t -> (String) t.get("designation")).toList()));
  }

  @Test
  void showsBothUnitsWithFormAndSource() {
    String text = session.type("thread", "show", "2", "BA").out();
    assertTrue(text.startsWith("2 BA  (47½° British Association)\n"), text);
    assertTrue(text.contains("  major diameter         4.700  0.1850\n"), text);
    assertTrue(text.contains("(published)\n"), text);
    String inches = session.type("thread", "show", "2", "BA", "--unit", "in").out();
    assertTrue(inches.contains("  major diameter         0.1850  4.700\n"), inches);
  }

  @Test
  void namesWhatIsNearAnUnknownThread() {
    Answer answer = session.type("thread", "show", "2", "BX");
    assertEquals(2, answer.status());
    assertTrue(
        answer.err().startsWith("no thread series has \"2 BX\"; near it are "), answer.err());
    assertTrue(answer.err().contains("2 BA"), answer.err());
    Answer second = session.type("thread", "show", "M6", "2", "BX", "M8");
    assertTrue(second.err().contains("\"2 BX\""), second.err());
    assertEquals("", second.out());
  }

  @Test
  void aCommaPartsThreadsUnlessItIsADecimalComma() {
    String two = session.type("thread", "show", "M6,", "2", "BA,M8").out();
    assertTrue(two.startsWith("M6  (60"), two);
    assertTrue(two.contains("\n2 BA  (47"), two);
    assertTrue(session.type("thread", "show", "M3,5").out().startsWith("M3.5  (60"));
    assertTrue(session.type("thread", "show", "M6,0").out().startsWith("M6  (60"));
    assertEquals(2, session.type("thread", "show", "M6", "0").status());
  }

  @Test
  void listsAllSeriesAndTheThreadsOfOne() {
    String all = session.type("thread", "list").out();
    for (String id : List.of("BA", "BSW", "BSF", "BSB", "ME", "M", "MF", "UNC", "UNF")) {
      assertTrue(all.contains("\n" + id + " "), id + " in " + all);
    }
    String one = session.type("thread", "list", "ba").out();
    assertTrue(one.contains("\n2 BA "), one);
    Answer none = session.type("thread", "list", "BX");
    assertEquals(2, none.status());
    assertTrue(
        none.err().startsWith("there is no thread series \"BX\"; there are BA, "), none.err());
  }
}
