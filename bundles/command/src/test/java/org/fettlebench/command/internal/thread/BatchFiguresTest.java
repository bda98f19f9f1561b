package org.fettlebench.command.internal.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fettlebench.command.internal.Session;
import org.fettlebench.command.internal.Session.Answer;
import org.fettlebench.testkit.trade.RealTrade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tapping drills and strengths of lists of threads. */
class BatchFiguresTest {
  private final Session session =
      new Session(
          new ThreadBatch(
              RealTrade.THREADS,
              RealTrade.THREAD_CLASSES,
              RealTrade.STRENGTH,
              RealTrade.WIRES,
              RealTrade.MATERIALS,
              RealTrade.DRILLS,
              RealTrade.HOLES),
          new ThreadStrengthCommand(RealTrade.THREADS, RealTrade.STRENGTH, RealTrade.MATERIALS));

  private Answer answer(String list, String figures) {
    return session.piped(list).type("thread", "batch", "-", "--figures", figures);
  }

  private static String cell(Answer answer, String column) {
    List<String> lines = answer.out().lines().toList();
    int place = List.of(lines.get(0).split(",")).indexOf(column);
    assertTrue(place >= 0, column + " is not among " + lines.get(0));
    return lines.get(1).split(",", -1)[place];
  }

  /**
   * Printed: ISO 2306 for M6 and M10, docslib.org/doc/4942776 for 1/4-20; 2 BA is model engineers'
   * habit; OSG's table for brass, whose middle is 67.5 per cent (No 21 with 68 is above the 4.034
   * mm that BS 93 allows the nut).
   */
  @ParameterizedTest
  @CsvSource({
    "M6, , , 5.0 mm, 75",
    "M10, , , 8.5 mm, 75",
    "1/4-20 UNC-2B, , , No 7, 75",
    "2 BA, , , 5/32 in, 75",
    "2 BA, , brass, 4.0 mm, 67.5",
    "M6, 70, , 5.1 mm, 70"
  })
  void tappingDrills(String thread, String percent, String material, String drill, String wanted) {
    String list =
        "designation,percent,material\n%s,%s,%s\n"
            .formatted(thread, percent == null ? "" : percent, material == null ? "" : material);
    Answer answer = answer(list, "tapping");
    assertEquals("", answer.err());
    assertEquals(drill, cell(answer, "tapping_drill"));
    assertEquals(wanted, cell(answer, "tapping_percent_wanted"));
  }

  /** The same as of one joint, whose figures are held to published examples. */
  @Test
  void strengthAsOfOneJoint() {
    Answer answer =
        answer(
            "designation,screw_material,nut_material,engagement_mm\nM6,class-8.8,brass-cz121,9\n",
            "strength");
    String one =
        session
            .type(
                ("thread strength M6 --screw class-8.8 --nut brass-cz121 --engagement 9mm --json")
                    .split(" "))
            .out();
    assertTrue(one.contains("\"leastEngagementMm\" : " + cell(answer, "least_engagement_mm")), one);
    assertTrue(one.contains("\"givesWay\" : \"" + cell(answer, "gives_way")), one);
  }

  @Test
  void saysWhatARowLacks() {
    Answer none = answer("designation\nM6\n", "strength");
    assertEquals(1, none.status());
    assertTrue(cell(none, "error").contains("screw_material and nut_material"), none.out());
    Answer unknown = answer("designation,screw_material,nut_material\nM6,cheese,800\n", "strength");
    assertTrue(unknown.out().contains("there is no material \"\"cheese\"\""), unknown.out());
    Answer large = answer("designation\nG2\n", "tapping");
    assertTrue(cell(large, "error").contains("no drill of the catalogue"), large.out());
  }
}
