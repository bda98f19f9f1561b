package org.fettlebench.holes.internal.chance;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.measure.Point;

/**
 * Tells whether a place lies in a region: a ray from it crosses the boundary an odd number of
 * times.
 */
final class Inside {
  /** Rings as co-ordinates x, y, x, y ... */
  private final List<double[]> rings = new ArrayList<>();

  Inside(List<SeatAnswer.Region> region) {
    for (SeatAnswer.Region part : region) {
      rings.add(plain(part.shell()));
      part.holes().forEach(hole -> rings.add(plain(hole)));
    }
  }

  private static double[] plain(List<Point> ring) {
    double[] plain = new double[2 * ring.size()];
    for (int i = 0; i < ring.size(); i++) {
      plain[2 * i] = ring.get(i).xMm();
      plain[2 * i + 1] = ring.get(i).yMm();
    }
    return plain;
  }

  boolean holds(double x, double y) {
    boolean odd = false;
    for (double[] ring : rings) {
      for (int i = 0, last = ring.length - 2; i < ring.length; last = i, i += 2) {
        if (ring[i + 1] > y != ring[last + 1] > y
            && x
                < (ring[last] - ring[i]) * (y - ring[i + 1]) / (ring[last + 1] - ring[i + 1])
                    + ring[i]) {
          odd = !odd;
        }
      }
    }
    return odd;
  }
}
