package org.fettlebench.holes.internal.patterns;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.measure.Point;

/** What filing takes off one side of a round hole: the same circle moved, less the hole. */
final class Crescent {
  private static final int CHORDS = 48;

  private Crescent() {}

  static List<Point> outline(Point centre, double radiusMm, double fileMm, double degrees) {
    double towards = Math.toRadians(degrees);
    Point moved = centre.moved(fileMm * Math.cos(towards), fileMm * Math.sin(towards));
    // Both circles cross where each is half of the shift away along the direction filed.
    double half = Math.acos(Math.min(1, fileMm / 2 / radiusMm));
    double far = Math.PI - half;
    List<Point> outline = new ArrayList<>();
    for (int i = 0; i <= CHORDS; i++) {
      outline.add(at(moved, radiusMm, towards - far + 2 * far * i / CHORDS));
    }
    for (int i = 0; i <= CHORDS; i++) {
      outline.add(at(centre, radiusMm, towards + half - 2 * half * i / CHORDS));
    }
    return outline;
  }

  private static Point at(Point centre, double radius, double angle) {
    return centre.moved(radius * Math.cos(angle), radius * Math.sin(angle));
  }
}
