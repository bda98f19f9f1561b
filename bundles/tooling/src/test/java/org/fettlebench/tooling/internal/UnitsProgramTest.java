package org.fettlebench.tooling.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Number and letter drills against the definitions of the program {@code units}, as the package of
 * that name installs them on Debian. Where they are not installed the test is passed over, unless
 * {@code -Dunits.needed=true} says that they must be there, as {@code product/verify} does.
 */
@ExtendWith(OurTooling.Fresh.class)
class UnitsProgramTest {
  private static final Path DEFINITIONS =
      Path.of(System.getProperty("units.definitions", "/usr/share/units/definitions.units"));

  private static String text;

  @BeforeAll
  static void read() throws IOException {
    assumeTrue(
        Boolean.getBoolean("units.needed") || Files.isReadable(DEFINITIONS),
        DEFINITIONS + " is not installed: the package is called units");
    text = Files.readString(DEFINITIONS);
  }

  /** The nodes of {@code drillgauge[in]}, read between its heading and the next definition. */
  private static NavigableMap<Integer, BigDecimal> numbers() {
    NavigableMap<Integer, BigDecimal> nodes = new TreeMap<>();
    Matcher table = Pattern.compile("(?m)^drillgauge\\[in\\] ((?:.*\\\\\n)*.*)$").matcher(text);
    if (table.find()) {
      Matcher node = Pattern.compile("(\\d+) +([\\d.]+)").matcher(table.group(1));
      while (node.find()) {
        nodes.put(Integer.valueOf(node.group(1)), new BigDecimal(node.group(2)));
      }
    }
    return nodes;
  }

  /** Between two nodes the program takes a straight line: to half a unit of its last digit. */
  @Test
  void numberDrillsAreThoseOfItsDrillGauge() {
    NavigableMap<Integer, BigDecimal> nodes = numbers();
    assertEquals(new BigDecimal("0.2280"), nodes.get(1));
    assertTrue(nodes.size() > 60, nodes.toString());
    for (int number = 1; number <= 80; number++) {
      var below = nodes.floorEntry(number);
      var above = nodes.ceilingEntry(number);
      int gap = above.getKey() - below.getKey();
      double share = gap == 0 ? 0 : (number - below.getKey()) / (double) gap;
      double printed =
          below.getValue().doubleValue()
              + share * (above.getValue().doubleValue() - below.getValue().doubleValue());
      double ours = OurTooling.printed(String.valueOf(number)).diameter().inches();
      assertEquals(printed, ours, gap == 0 ? 1e-9 : 0.00005 + 1e-9, "No " + number);
    }
    assertEquals(0.0095, OurTooling.printed("88").diameter().inches(), 1e-9);
    assertEquals(new BigDecimal("0.0095"), nodes.get(88));
  }

  @Test
  void letterDrillsAreThoseItDefines() {
    Matcher letter = Pattern.compile("(?m)^drill([A-Z]) +([\\d.]+) in").matcher(text);
    int found = 0;
    while (letter.find()) {
      BigDecimal inches = new BigDecimal(letter.group(2));
      assertEquals(
          inches.doubleValue(),
          inches(letter.group(1), inches.scale()).doubleValue(),
          1e-12,
          "letter " + letter.group(1));
      found++;
    }
    assertEquals(26, found);
  }

  /** Returns our drill's size rounded as it is printed there. */
  private static BigDecimal inches(String name, int places) {
    return BigDecimal.valueOf(OurTooling.printed(name).diameter().inches())
        .setScale(places, RoundingMode.HALF_EVEN);
  }
}
