package org.fettlebench.threads.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fettlebench.testkit.published.PublishedRow;
import org.fettlebench.testkit.published.PublishedTable;
import org.fettlebench.threads.ThreadForm;
import org.junit.jupiter.api.Test;

/** The forms' constants against those that are printed as formulas. */
class ThreadFormConstantsTest {
  private static final String OF_THE_PITCH = "([\\d.]+)\\*p";
  private static final String OFF_THE_DIAMETER = "[dD] - ([\\d.]+)(?:\\*P|/n)";

  /** What the suite has for a printed constant. */
  private record Held(String pattern, double value) {}

  private final Map<String, Held> held = new HashMap<>();

  ThreadFormConstantsTest() {
    ThreadForm ba = ThreadForm.BRITISH_ASSOCIATION;
    ThreadForm whitworth = ThreadForm.WHITWORTH;
    put("BA, flank angle", "([\\d.]+) degrees", ba.includedAngleDegrees());
    put("BA, triangle height H", OF_THE_PITCH, ba.triangleHeightPerPitch());
    put("BA, thread depth h", OF_THE_PITCH, ba.internalDepthPerPitch());
    // What is left of H outside the rounded crest and root, half on each side.
    put(
        "BA, shortening at crest and root",
        OF_THE_PITCH,
        (ba.triangleHeightPerPitch() - ba.internalDepthPerPitch()) / 2);
    put("Whitworth, flank angle", "(\\d+) degrees", whitworth.includedAngleDegrees());
    put("Whitworth, triangle height H", OF_THE_PITCH, whitworth.triangleHeightPerPitch());
    put("Whitworth, shortening H/6", OF_THE_PITCH, whitworth.triangleHeightPerPitch() / 6);
    put("Whitworth, depth h", OF_THE_PITCH, whitworth.internalDepthPerPitch());
    sixty("ISO metric, pitch diameter d2 = D2", ThreadForm.ISO.effectiveDropPerPitch());
    sixty("ISO metric, internal minor D1", 2 * ThreadForm.ISO.internalDepthPerPitch());
    sixty("ISO metric, external minor d3", 2 * ThreadForm.ISO.externalDepthPerPitch());
    sixty("Unified, pitch diameter", ThreadForm.UNIFIED.effectiveDropPerPitch());
    sixty("Unified, internal minor D1", 2 * ThreadForm.UNIFIED.internalDepthPerPitch());
    sixty("Unified, UNR external minor d3", 2 * ThreadForm.UNIFIED.externalDepthPerPitch());
  }

  private void put(String name, String pattern, double value) {
    held.put(name, new Held(pattern, value));
  }

  private void sixty(String name, double value) {
    put(name, OFF_THE_DIAMETER, value);
  }

  @Test
  void constants() {
    PublishedTable table =
        PublishedTable.read(ThreadFormConstantsTest.class, "thread-form-formulas.csv");
    table.apart("who says it", "source").holdEach(this::constant);
    assertEquals(14, held.size());
  }

  private void constant(PublishedRow row) {
    String name = row.cell("thread") + ", " + row.cell("quantity");
    Held one = held.get(name);
    if (one == null) {
      row.passOver("formula", whereElse(name));
      return;
    }
    Matcher found = Pattern.compile(one.pattern()).matcher(row.cell("formula"));
    row.that("formula", found::find, "no constant found by " + one.pattern());
    String printed = found.group(1);
    int point = printed.indexOf('.');
    int places = point < 0 ? 0 : printed.length() - point - 1;
    // (H - h)/2 of BA is printed 0.0002 in the fifth place apart from the more exact 0.2681683.
    assertEquals(
        Double.parseDouble(printed), one.value(), 0.5001 * Math.pow(10, -places), name + " " + row);
  }

  /** Formulas that are held by tables of their results, or are another's way of saying them. */
  private static String whereElse(String name) {
    return switch (name) {
      case "BA, pitch mm of number n", "BA, major mm" ->
          "ThreadLawsTest, associationFollowsItsRule";
      case "BA, radius", "Whitworth, rounding depth e", "Whitworth, radius r" ->
          "PublishedBritishSizesTest, and WireGeometry's largest wire";
      case "BA, depth and radius, older statement" -> "2p/11 is 0.1818p, superseded by BS 93";
      case "ISO metric, tensile stress area", "Unified, tensile stress area (in2)" ->
          "PublishedStrengthTest";
      case "ISO metric, fundamental deviation G (um)",
          "ISO metric, Td grade 6 (um)",
          "ISO metric, Td2 grade 6 (um)",
          "ISO metric, TD2 grade 6 (um)",
          "ISO metric, TD1 grade 6 (um)" ->
          "MetricFormulasTest: the table is within a step of each";
      case "Unified, class 2A pitch diameter tolerance (in)",
          "Unified, class 2A allowance",
          "Unified, class 2A/3A major diameter tolerance (in)",
          "Unified, class 2B / 3A / 3B pitch diameter tolerance" ->
          "PublishedUnifiedLimitsTest";
      default -> throw new AssertionError("nothing holds " + name);
    };
  }
}
