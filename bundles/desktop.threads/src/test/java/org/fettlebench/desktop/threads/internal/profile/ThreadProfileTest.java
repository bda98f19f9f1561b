package org.fettlebench.desktop.threads.internal.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fettlebench.measure.Point;
import org.fettlebench.threads.ThreadForm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ThreadProfileTest {
  /**
   * Radii over the pitch as standards print them: Whitworth 0.137329 (BS 84), British Association
   * 0.1808 (BS 93), both from Machinery's Handbook, 31st ed., p2087 and p2115; ISO H/6 = 0.14434
   * (ISO 68-1). Tolerance half a unit of the last digit.
   */
  @ParameterizedTest
  @CsvSource({
    "WHITWORTH, 0.137329, 0.0000005",
    "BRITISH_ASSOCIATION, 0.1808, 0.00005",
    "ISO, 0.14434, 0.000005"
  })
  void theRootHasThePublishedRadius(ThreadForm form, double radius, double tolerance) {
    assertEquals(radius, new ThreadProfile(form, 1).rootRadiusMm(), tolerance);
  }

  @ParameterizedTest
  @EnumSource(ThreadForm.class)
  void theOutlineReachesFromTheMajorDiameterToTheDepthAndRepeats(ThreadForm form) {
    ThreadProfile profile = new ThreadProfile(form, 1.25);
    List<Point> screw = profile.screw(3);
    double high = screw.stream().mapToDouble(Point::yMm).max().orElseThrow();
    double low = screw.stream().mapToDouble(Point::yMm).min().orElseThrow();
    assertEquals(0, high, 1e-9);
    assertEquals(-form.externalDepthPerPitch() * 1.25, low, 1e-9);
    assertEquals(0, screw.get(0).xMm(), 1e-9);
    assertEquals(3.75, screw.get(screw.size() - 1).xMm(), 1e-9);
    for (int i = 1; i < screw.size(); i++) {
      assertTrue(screw.get(i).xMm() >= screw.get(i - 1).xMm() - 1e-9, "it never turns back");
    }
  }

  /** At the effective diameter thread and space are equal: the flank stands a quarter pitch out. */
  @ParameterizedTest
  @EnumSource(ThreadForm.class)
  void theFlankCrossesTheEffectiveDiameterAQuarterPitchFromTheCrest(ThreadForm form) {
    double drop = form.effectiveDropPerPitch() / 2;
    List<Point> screw = new ThreadProfile(form, 1).screw(1);
    double at = Double.NaN;
    for (int i = 1; i < screw.size() / 2; i++) {
      Point a = screw.get(i - 1);
      Point b = screw.get(i);
      if (a.yMm() >= -drop && b.yMm() <= -drop) {
        at = a.xMm() + (-drop - a.yMm()) / (b.yMm() - a.yMm()) * (b.xMm() - a.xMm());
      }
    }
    assertEquals(0.25, at, 1e-4);
  }

  @Test
  void theNutIsCutOffWhereTheHoleIsAndNowhereElse() {
    ThreadProfile profile = new ThreadProfile(ThreadForm.ISO, 1);
    List<Point> nut = profile.nut(2, 0.4);
    double low = nut.stream().mapToDouble(Point::yMm).min().orElseThrow();
    assertEquals(-0.4, low, 1e-12);
    assertEquals(0, nut.stream().mapToDouble(Point::yMm).max().orElseThrow(), 1e-9);
    List<Point> whole = profile.nut(2, 0.6);
    assertEquals(profile.nut(2), whole, "a hole below the crests cuts nothing");
  }
}
