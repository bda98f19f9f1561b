package org.fettlebench.holes.patterns;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.fettlebench.measure.Point;

/**
 * Where the holes of a joint should be, the same in both parts.
 *
 * @param name for people
 * @param centres 1 to 500, in the order in which people number them from 1, no two the same
 * @param circleHoles whether they stand evenly on a circle in that order, so that a part may be
 *     turned on by whole holes
 */
public record HolePattern(String name, List<Point> centres, boolean circleHoles) {
  /** Most holes of a pattern. */
  public static final int MOST = 500;

  /**
   * Copies what could change.
   *
   * @throws IllegalArgumentException if there are too few or too many holes, or two in one place
   */
  public HolePattern {
    centres = List.copyOf(centres);
    Require.count("number of holes", centres.size(), 1, MOST);
    if (new HashSet<>(centres).size() < centres.size()) {
      throw new IllegalArgumentException("pattern " + name + " has two holes in one place");
    }
  }

  /**
   * Returns holes evenly on a circle about zero, anticlockwise.
   *
   * @param diameterMm of the circle through their centres
   * @param holes how many
   * @param firstDegrees direction of the first, from x
   */
  public static HolePattern circle(String name, double diameterMm, int holes, double firstDegrees) {
    Require.size("diameter of the bolt circle", diameterMm);
    Require.count("number of holes", holes, 1, MOST);
    List<Point> centres = new ArrayList<>();
    for (int i = 0; i < holes; i++) {
      double turn = Math.toRadians(firstDegrees + 360.0 * i / holes);
      centres.add(new Point(diameterMm / 2 * Math.cos(turn), diameterMm / 2 * Math.sin(turn)));
    }
    return new HolePattern(name, centres, true);
  }

  /** Returns holes at given places. */
  public static HolePattern at(String name, List<Point> centres) {
    return new HolePattern(name, centres, false);
  }
}
