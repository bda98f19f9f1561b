package org.fettlebench.kits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fettlebench.holes.patterns.MeasuredPattern;
import org.fettlebench.holes.patterns.PatternQuestion;
import org.fettlebench.kits.FaultyFileException;
import org.fettlebench.kits.PatternFile;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;

class PatternFileTest {
  private static final String HEAD =
      """
      [pattern]
      name = "cover"
      thread = "4 BA"
      unit = "mm"
      circle = 36
      holes = 3
      """;

  private static final String PARTS =
      """
      [[part]]
      name = "cover"
      hole = "No 26"
      method = "jig"
      [[part]]
      name = "body"
      tapped = true
      sigma = 0.05
      """;

  private static PatternFile read(String text) {
    return Bench.FILES.readPattern("a", text);
  }

  private static List<String> faults(String text) {
    return assertThrows(FaultyFileException.class, () -> read(text)).faults().stream()
        .map(fault -> fault.line() + ":" + fault.column() + " " + fault.wrong())
        .toList();
  }

  /** 0.05 over 10 mm is 0.03 at 6 mm. */
  @Test
  void tappedHolesMayLean() {
    String leans = "tapped = true\nleans = { sigma = 0.05, over = 10, passed = 6 }";
    PatternQuestion question = read(HEAD + PARTS.replace("tapped = true", leans)).question(100, 1);
    assertEquals(0.03, question.leaning().sigmaPerAxisMm(), 1e-12);
    assertEquals(0, read(HEAD + PARTS).question(100, 1).leaning().sigmaPerAxisMm());
    assertEquals(
        List.of("10:1 is said of plain holes"),
        faults(HEAD + PARTS.replace("method", leans.substring(14) + "\nmethod")));
    assertEquals(
        List.of("14:1 leans of part \"body\" has no over"),
        faults(HEAD + PARTS.replace("tapped = true", leans.replace("over = 10, ", ""))));
  }

  @Test
  void aBoltCircleIsRead() {
    PatternFile file = read(HEAD + "first-degrees = 90\n" + PARTS);
    PatternQuestion question = file.question(100, 1);
    assertEquals("4 BA", file.fastener());
    assertEquals(3.6, question.fastenerMm());
    Point first = question.pattern().centres().get(0);
    assertEquals(0, first.xMm(), 1e-12);
    assertEquals(18, first.yMm(), 1e-12);
    // No 26 is 0.1470 in.
    assertEquals(0.147 * 25.4, question.upper().clearanceMm().getAsDouble(), 1e-9);
    assertEquals(0.05, question.upper().placing().sigmaPerAxisMm());
    assertTrue(question.lower().tapped());
    assertTrue(question.fixed());
  }

  @Test
  void placesAndEvenErrorsAreRead() {
    PatternFile file =
        read(
            """
            [pattern]
            name = "flange"
            fastener-diameter = "1/8"
            centres = [["0 mm", "0 mm"], ["1 in", "2 mm"]]
            [[part]]
            name = "a"
            hole = "3.4 mm"
            within = "0.3 mm"
            [[part]]
            name = "b"
            method = "jig"
            """);
    assertEquals(0.3 / Math.sqrt(3), file.upper().placing().orElseThrow().sigmaPerAxisMm(), 1e-12);
    assertEquals(25.4, file.wanted().orElseThrow().centres().get(1).xMm());
    assertEquals("as measured", file.fastener());
    String wrong =
        assertThrows(IllegalArgumentException.class, () -> file.question(100, 1)).getMessage();
    assertTrue(wrong.startsWith("part \"b\" of the pattern file has no hole"), wrong);
    assertFalse(file.holeQuestion(100, 1).fixed());
    assertThrows(IllegalArgumentException.class, file::measured);
  }

  /** The trap of the wrong hand: a part turned over from left to right has its x reversed. */
  @Test
  void aPartMeasuredFromBelowIsMirrored() {
    PatternFile file =
        read(
            """
            [pattern]
            name = "flange"
            unit = "mm"
            fastener-diameter = 3
            [[part]]
            name = "a"
            measured = [[0, 0], [20, 5]]
            diameters = [3.3, 3.4]
            seen-from = "above"
            [[part]]
            name = "b"
            tapped = true
            measured = [[0, 0], [-20, 5]]
            seen-from = "below"
            """);
    MeasuredPattern measured = file.measured();
    assertEquals(new Point(20, 5), measured.lower().holes().get(1).centre());
    assertEquals(new Point(20, 5), measured.upper().holes().get(1).centre());
    assertEquals(0.2, measured.playMm(1, 1), 1e-12);
  }

  @Test
  void everyFaultIsTold() {
    assertEquals(
        List.of("5:1 circle must be above 0 mm", "6:1 is no key that [pattern] has"),
        faults(HEAD.replace("36", "-36").replace("holes = 3", "hole = 3\nholes = 3") + PARTS));
    assertEquals(
        List.of("1:1 the file has 1 [[part]], not 2"),
        faults(HEAD + PARTS.substring(0, PARTS.indexOf("[[part]]\nname = \"body\""))));
    assertEquals(
        List.of("13:1 holds of both parts"),
        faults(HEAD + PARTS.replace("hole = \"No 26\"", "tapped = true")));
    assertEquals(
        List.of("9:1 stands beside tapped = true"),
        faults(
            HEAD
                + PARTS
                    .replace("hole = \"No 26\"", "hole = \"No 26\"\ntapped = true")
                    .replace("tapped = true\nsigma", "hole = 4\nsigma")));
    assertEquals(
        List.of("10:1 is no known way of placing a hole"),
        faults(HEAD + PARTS.replace("jig", "luck")));
    assertEquals(
        List.of("15:1 is said beside another way of placing"),
        faults(HEAD + PARTS + "within = 0.1\n"));
    assertEquals(
        List.of("5:1 hole 2 is in the same place as hole 1"),
        faults(HEAD.replace("circle = 36\nholes = 3", "centres = [[1, 1], [1, 1]]") + PARTS)
            .stream()
            .map(fault -> fault.replaceFirst("^5:\\d+", "5:1"))
            .toList());
  }

  @Test
  void measuredHolesMustBeWholeAndSayTheirSide() {
    String measured = PARTS.replace("method = \"jig\"", "measured = [[0, 0], [9, 0], [4, 8]]");
    assertTrue(faults(HEAD + measured).get(0).contains("has no seen-from"));
    assertTrue(
        faults(
                HEAD
                    + measured.replace(
                        "[[part]]\nname = \"body\"",
                        "seen-from = \"left\"\n[[part]]\nname = \"body\""))
            .get(0)
            .contains("is no side"));
    String two =
        PARTS.replace("method = \"jig\"", "seen-from = \"above\"\nmeasured = [[0, 0], [9, 0]]");
    assertTrue(faults(HEAD + two).get(0).contains("does not have the 3 holes of the pattern"));
    String unsized = two.replace("hole = \"No 26\"\n", "");
    assertTrue(
        faults(HEAD.replace("holes = 3", "holes = 2") + unsized)
            .get(0)
            .contains("does not say how large its holes are"));
  }
}
