package org.fettlebench.command.internal.hole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.fettlebench.command.internal.Session;
import org.fettlebench.command.internal.Session.Answer;
import org.fettlebench.testkit.trade.RealTrade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DrillSpeedTest {
  private static final Session SESSION =
      new Session(
          new DrillSpeed(RealTrade.THREADS, RealTrade.DRILLS, RealTrade.SPEEDS, RealTrade.WORK));

  private static Map<String, Object> data(String typed) throws IOException {
    Answer answer = SESSION.type((typed + " --json").split(" "));
    assertEquals("", answer.err());
    return JSON.std.mapFrom(answer.out());
  }

  private static double number(Object data, String key) {
    return ((Number) ((Map<?, ?>) data).get(key)).doubleValue();
  }

  /** Worked examples of machinistpost.com and rows of etantdonnes.com: 12 v / (π d). */
  @ParameterizedTest
  @CsvSource({
    "1/2, mild-steel, 80, 611",
    "1/4, aluminium, 300, 4584",
    "1/8, ms, 80, 2445",
    "1/4, brass, 200, 3056",
    "2 in, bronze, 100, 191"
  })
  void rpmOfASource(String size, String material, double feet, double rpm) throws IOException {
    Map<String, Object> answer = data("drill speed " + size + " --material " + material);

    assertTrue(
        ((List<?>) answer.get("surfaceSpeeds"))
            .stream()
                .anyMatch(
                    row ->
                        number(row, "leastFtPerMin") == feet
                                && Math.abs(number(row, "leastRpm") - rpm) < 0.5
                            || number(row, "mostFtPerMin") == feet
                                && Math.abs(number(row, "mostRpm") - rpm) < 0.5),
        answer.toString());
  }

  @Test
  void endsWithOneWhenTheMachineCannot() {
    assertEquals(
        1, SESSION.type(words("drill speed 1/2 --material ms --machine 2000-3000")).status());
    Answer slow =
        SESSION.type(words("drill speed 1mm --material brass --machine 300,1200,2400rpm"));
    assertEquals(1, slow.status());
    assertTrue(slow.out().contains("Set 2400 rpm: slower than wanted"), slow.out());
    Answer well = SESSION.type(words("drill speed 1/2 --material ms --machine 300,600,1200"));
    assertEquals(0, well.status());
    assertTrue(well.out().contains("Set 600 rpm: within the range wanted"), well.out());
  }

  @Test
  void threadForATapAndHalfForCarbonSteel() throws IOException {
    Map<String, Object> tap = data("drill speed M6 --operation tap --material cast-iron");
    assertEquals(6.0, number(tap, "diameterMm"));
    // 30 to 100 ft/min at 6 mm: 485.1 to 1617.0 rpm.
    assertEquals(485.1, number(tap, "leastRpm"), 0.05);
    assertEquals(1617.0, number(tap, "mostRpm"), 0.05);
    assertEquals(
        number(data("drill speed 1/2 --material ms"), "leastRpm") / 2,
        number(data("drill speed 1/2 --material ms --carbon"), "leastRpm"),
        0.001);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "drill speed 1/2|say what is worked: --material NAME",
        "drill speed 1/2 --material unobtainium|there are no figures for \"unobtainium\"",
        "drill speed 1/2 --material monel|no source gives a speed to drill Monel metal",
        "drill speed zero --material brass|is no drill and no length",
        "drill speed -4mm --material brass|has no option",
        "drill speed 1/2 --material brass --machine fast|is no range of speeds",
        "drill speed 1/2 --material brass --machine 0-100|must be above 0",
        "drill speed 1/2 --material brass --machine 500-100|is above the fastest",
        "drill speed 1/2 --material brass --operation mill|say one of drill, countersink"
      })
  void badInputIsToldWithARemedy(String typed, String told) {
    Answer answer = SESSION.type(words(typed));

    assertEquals(2, answer.status());
    assertTrue(answer.err().contains(told), answer.err());
  }

  private static String[] words(String typed) {
    return typed.split(" ");
  }
}
