package org.fettlebench.fits.internal;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Outline.Edge;
import org.fettlebench.fits.SeatAnswer;

/**
 * Finds corners that point into the flat so bluntly that the geometry library does not round what
 * is kept off them: it leaves out an arc shorter than a twentieth of its radius, and so keeps too
 * little off one of the edges there.
 */
final class BluntCorners {
  /** A little more than where the library begins to round. */
  private static final double BLUNT_RADIANS = 0.06;

  private BluntCorners() {}

  /** Returns the straight edges at corners where that would show, at so much to be kept off. */
  static Set<Edge> edges(Outline outline, double needMm) {
    boolean clockwise = Plan.areaMm2(outline.points()) < 0;
    List<Edge> edges = outline.edges();
    Set<Edge> found = new LinkedHashSet<>();
    for (int i = 0; i < edges.size(); i++) {
      Edge before = edges.get((i + edges.size() - 1) % edges.size());
      Edge after = edges.get(i);
      double turn = clockwise ? turn(before, after) : -turn(before, after);
      boolean straight = before.arc().isEmpty() && after.arc().isEmpty();
      boolean shows = needMm * turn * turn / 2 > SeatAnswer.REGION_ERROR_MM;
      if (straight && turn > 0 && turn < BLUNT_RADIANS && shows) {
        found.add(before);
        found.add(after);
      }
    }
    return found;
  }

  /** Returns how far the line turns at a corner, to the left positive. */
  private static double turn(Edge before, Edge after) {
    double ax = before.to().xMm() - before.from().xMm();
    double ay = before.to().yMm() - before.from().yMm();
    double bx = after.to().xMm() - after.from().xMm();
    double by = after.to().yMm() - after.from().yMm();
    return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  }
}
