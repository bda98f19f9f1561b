package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.fettlebench.fits.Outline;
import org.fettlebench.measure.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A square of 10 mm whose near edge is bent in the middle: by h it turns 2 atan(h / 5), and a
 * rounding left out there would show about need x turn^2 / 2.
 */
class BluntCornersTest {
  private static List<Point> bent(double h) {
    return Bench.corners(0, 0, 5, h, 10, 0, 10, 10, 0, 10);
  }

  /** Where the found edges begin, as x of the lower end: 0 and 5 are the two at the bend. */
  private static Set<String> found(List<Point> corners, double needMm) {
    Set<String> found = new TreeSet<>();
    for (Outline.Edge edge : BluntCorners.edges(Outline.of(corners), needMm)) {
      double least = Math.min(edge.from().xMm(), edge.to().xMm());
      double most = Math.max(edge.from().xMm(), edge.to().xMm());
      found.add(Math.round(least) + " to " + Math.round(most));
    }
    return found;
  }

  @ParameterizedTest
  @CsvSource({
    // turn 0.04, would show 0.004 mm
    "0.1, 5, true",
    // bent outwards: nothing is to be rounded
    "-0.1, 5, false",
    // turn 0.080: the library rounds it
    "0.2, 5, false",
    // turn 0.0598 and 0.0602: just below and above what is called blunt
    "0.1495, 5, true",
    "0.1505, 5, false",
    // would show 0.00004 mm only
    "0.01, 5, false",
    "0, 5, false",
    // so little is kept off that it does not show: 0.00008 mm
    "0.1, 0.1, false"
  })
  void findsBothEdgesOfABluntCornerThatPointsInwards(double h, double needMm, boolean both) {
    Set<String> expected = both ? Set.of("0 to 5", "5 to 10") : Set.of();
    assertEquals(expected, found(bent(h), needMm));
    List<Point> clockwise = new ArrayList<>(bent(h));
    Collections.reverse(clockwise);
    assertEquals(expected, found(clockwise, needMm));
    List<Point> renumbered = new ArrayList<>(bent(h));
    Collections.rotate(renumbered, 4);
    assertEquals(expected, found(renumbered, needMm));
  }
}
