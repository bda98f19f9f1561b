package org.fettlebench.command.internal.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.fettlebench.command.internal.Session;
import org.fettlebench.command.internal.Session.Answer;
import org.fettlebench.testkit.trade.RealTrade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lists of threads, as they are piped in and written to files. */
class ThreadBatchTest {
  private final Session session =
      new Session(
          new ThreadBatch(
              RealTrade.THREADS,
              RealTrade.THREAD_CLASSES,
              RealTrade.STRENGTH,
              RealTrade.WIRES,
              RealTrade.MATERIALS,
              RealTrade.DRILLS,
              RealTrade.HOLES));

  private Answer answer(String list, String... options) {
    List<String> words = new java.util.ArrayList<>(List.of("thread", "batch", "-"));
    words.addAll(Arrays.asList(options));
    return session.piped(list).type(words.toArray(String[]::new));
  }

  private static List<String> lines(Answer answer) {
    return answer.out().lines().toList();
  }

  private static String cell(Answer answer, int row, String column) {
    List<String> lines = lines(answer);
    int place = List.of(lines.get(0).split(",")).indexOf(column);
    assertTrue(place >= 0, column + " is not among " + lines.get(0));
    return lines.get(row).split(",", -1)[place];
  }

  /**
   * Printed: ASME B1.13M for M10 (engineersedge, apporo), efunda for #1-64, ISO 228-1 for G 1/4.
   */
  @ParameterizedTest
  @CsvSource({
    "M10-6g, , mm, screw_major_least_mm, 9.732",
    "M10-6g, , mm, screw_effective_least_mm, 8.862",
    "M10, 6H, mm, nut_effective_most_mm, 9.206",
    "#1-64 UNC-2A, , in, screw_effective_least_in, 0.0603",
    "#1-64 UNC, 3B, in, nut_effective_most_in, 0.0648",
    "G1/4A, , mm, screw_effective_least_mm, 12.176"
  })
  void limitsAsPrinted(
      String designation, String threadClass, String unit, String column, String printed) {
    String list =
        "designation,class\n" + designation + "," + (threadClass == null ? "" : threadClass) + "\n";
    Answer answer = answer(list, "--unit", unit);
    assertEquals("", answer.err());
    assertEquals(0, answer.status());
    assertEquals(printed, cell(answer, 1, column));
  }

  @Test
  void theErrorsOfALongListStillSayWhatToDo() {
    StringBuilder list = new StringBuilder("designation\n");
    for (int i = 0; i < 105; i++) {
      list.append("2").append(i).append(" BX\n");
    }
    List<String> lines = lines(answer(list.append("1/4 NPT\n").toString(), "--figures", "basic"));
    assertTrue(lines.get(1).contains("near it are "), lines.get(1));
    assertTrue(lines.get(105).contains("; ask \"\"thread show\"\" for it alone"), lines.get(105));
    assertTrue(lines.get(106).contains("are not carried"), lines.get(106));
  }

  @Test
  void aBadRowSaysWhyAndTheOthersStand() {
    Answer answer = answer("designation,class\nM6,6g\nM6x0.33,\n\n2 BA,9z\nM6,6g,\n\"\",\nM8,6g\n");
    assertEquals(1, answer.status());
    List<String> lines = lines(answer);
    assertEquals(7, lines.size());
    assertTrue(lines.get(1).startsWith("2,M6,6g,M6,ISO 965-1 6g,5.794,"), lines.get(1));
    assertTrue(lines.get(2).startsWith("3,M6x0.33,,,,"), lines.get(2));
    assertTrue(
        lines.get(2).contains("no thread series has \"\"M6x0.33\"\"; near it"), lines.get(2));
    assertTrue(lines.get(3).startsWith("5,2 BA,9z,,"), lines.get(3));
    assertTrue(lines.get(3).endsWith("BS 93 has no class '9z' for 2 BA: say close or normal"));
    assertTrue(lines.get(4).endsWith(",\"the row has 3 cells, the header 2\""), lines.get(4));
    assertTrue(lines.get(5).endsWith(",designation is empty"), lines.get(5));
    assertTrue(lines.get(6).startsWith("8,M8,6g,M8,"), lines.get(6));
    int columns = lines.get(0).split(",", -1).length;
    assertEquals(columns, lines.get(3).replace("'9z'", "").split(",", -1).length);
  }

  @Test
  void otherColumnsComeAlongAsTheyAre() {
    Answer answer =
        answer("Part;Designation;Note\nA1;M6;\"two, \"\"long\"\"\"\n", "--figures", "basic");
    assertEquals(
        "line,part,designation,note,thread,major_mm,pitch_mm,effective_mm,nut_minor_mm,"
            + "screw_minor_mm,threads_per_inch,form,basic_standing,error",
        lines(answer).get(0));
    assertTrue(
        lines(answer).get(1).startsWith("2,A1,M6,\"two, \"\"long\"\"\",M6,6,1,5.350481,4.917468,"));
  }

  /**
   * Stress area: ISO 898-1 prints 20.1 mm2 for M6. Hole: 75 per cent of M6 x 1 is 5.03 mm by
   * Machinery's Handbook's D - 1.299 p x per cent.
   */
  @Test
  void stressAndHole() {
    Answer answer =
        answer(
            "designation,hole_mm,percent\nM6,5,75\nM6,6.1,\nM6,,101\nM6,,\n",
            "--figures",
            "stress,hole");
    assertEquals(20.1, Double.parseDouble(cell(answer, 1, "stress_area_mm2")), 0.05);
    assertEquals(5.026, Double.parseDouble(cell(answer, 1, "hole_for_percent_mm")), 0.0005);
    assertEquals(76.98, Double.parseDouble(cell(answer, 1, "percent_of_hole")), 0.005);
    assertTrue(lines(answer).get(2).contains("hole 6.1 mm is outside"), lines(answer).get(2));
    assertTrue(lines(answer).get(3).contains("\"\"101\"\" is no number above 0.0 and up to 100.0"));
    assertTrue(
        lines(answer).get(4).contains("the hole needs a column percent, hole_mm or hole_in"));
  }

  @Test
  void bestWireByTheRuleForSixtyDegrees() {
    Answer answer = answer("designation\nM6\n", "--figures", "wires");
    // p / (2 cos 30 degrees) for p = 1 mm.
    assertEquals("0.57735", cell(answer, 1, "best_wire_mm"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''|the list is empty",
        "size,class|there must be a column designation; there are size, class",
        "designation,designation|column 2 \"designation\" is there twice",
        "designation,,x|column 2 has no name",
        "designation,thread|the answer has a column thread of its own",
      })
  void aListWithoutItsColumnsIsRefusedWhole(String header, String told) {
    Answer answer = answer(header);
    assertEquals(2, answer.status());
    assertEquals("", answer.out());
    assertTrue(answer.err().contains(told), answer.err());
  }

  @ParameterizedTest
  @CsvSource({
    "--figures=limits;limits, --figures names limits twice",
    "--figures=weight, \"weight\" is none of basic; limits; stress; hole; wires",
    "--json, with --out FILE its count is told as JSON",
  })
  void optionsThatCannotBe(String option, String told) {
    Answer answer = answer("designation\nM6\n", option.replace(';', ','));
    assertEquals(2, answer.status());
    assertTrue(answer.err().contains(told.replace(';', ',')), answer.err());
  }

  @Test
  void anOpenQuoteMarkEndsTheRunWithItsLine(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("answer.csv");
    Files.writeString(file, "as it was");
    Answer answer =
        answer("designation\nM6\n\"M8\n" + "M10\n".repeat(40_000), "--out", file.toString());
    assertEquals(2, answer.status());
    assertTrue(answer.err().contains("line 3: the row is longer than 100000 signs"), answer.err());
    assertEquals("as it was", Files.readString(file));
    assertEquals(1, Files.list(folder).count());
  }

  @Test
  void theAnswerGoesToAFileAndItsCountIsTold(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("answer.csv");
    Answer answer =
        answer("designation\nM6\nM6x0.33\n", "--out", file.toString(), "--json", "--progress");
    assertEquals(1, answer.status());
    String told = answer.out().replaceAll("\\s", "");
    assertTrue(told.contains("\"rows\":2,\"refused\":1"), told);
    assertEquals(3, Files.readAllLines(file).size());
  }

  @Test
  void manyRowsKeepTheirOrder() {
    StringBuilder list = new StringBuilder("designation,part\n");
    for (int i = 0; i < 120_000; i++) {
      list.append(i % 2 == 0 ? "M6" : "1/4 BSF").append(",P").append(i).append('\n');
    }
    Answer answer = answer(list.toString(), "--figures", "stress", "--progress");
    assertTrue(answer.err().startsWith("100000 rows, 0 refused, "), answer.err());
    List<String> lines = lines(answer);
    assertEquals(120_001, lines.size());
    for (int i = 0; i < 120_000; i++) {
      assertTrue(lines.get(i + 1).startsWith((i + 2) + ","), lines.get(i + 1));
      assertTrue(lines.get(i + 1).contains(",P" + i + ","), lines.get(i + 1));
    }
    assertFalse(lines.contains(""));
  }
}
