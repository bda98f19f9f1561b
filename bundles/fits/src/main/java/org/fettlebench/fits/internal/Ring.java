package org.fettlebench.fits.internal;

import java.util.Arrays;
import java.util.List;

/**
 * A closed line that a centre must keep inside of (an outline) or outside of (a hollow), each side
 * at its distance.
 */
final class Ring {
  private final Side[] sides;
  private final Feature[] features;
  private final boolean keepInside;
  private final Within within;

  /** What every side needs, when they are plain distances; else negative. */
  private final double evenNeedMm;

  /** Tells on which side of the line a place lies. */
  private interface Within {
    boolean inside(double x, double y);
  }

  /**
   * Makes a ring.
   *
   * @param sides in order, anticlockwise
   * @param features the same as what the centre keeps off, in the same order: the sides themselves,
   *     or hulls
   * @param keepInside whether the centre belongs inside
   */
  Ring(List<? extends Side> sides, List<? extends Feature> features, boolean keepInside) {
    this(
        sides.toArray(new Side[0]),
        features.toArray(new Feature[0]),
        keepInside,
        Parity.of(sides)::inside);
  }

  private Ring(Side[] sides, Feature[] features, boolean keepInside, Within within) {
    this.sides = sides;
    this.features = features;
    this.keepInside = keepInside;
    this.within = within;
    this.evenNeedMm = features[0] instanceof Side first ? first.needMm() : -1;
  }

  Feature[] features() {
    return features.clone();
  }

  /** Returns the room, or any figure at or above the ceiling when it is at or above that. */
  double room(double x, double y, double ceiling) {
    if (within.inside(x, y) != keepInside) {
      return beyond(x, y).roomMm();
    }
    if (evenNeedMm >= 0) {
      return nearest(x, y) - evenNeedMm;
    }
    double least = ceiling;
    for (Feature feature : features) {
      if (feature.leastRoom(x, y) < least) {
        least = Math.min(least, feature.room(x, y));
      }
    }
    return least;
  }

  /** Adds how each side stands to a centre; on the wrong side only the nearest side counts. */
  void touch(double x, double y, List<Touch> touches) {
    if (within.inside(x, y) != keepInside) {
      touches.add(beyond(x, y));
      return;
    }
    for (Feature feature : features) {
      touches.add(feature.touch(x, y));
    }
  }

  /**
   * Returns what of the ring can govern close to a place; null when none of it.
   *
   * @param reach how far from the place is close
   * @param ceiling sides with more room than this at the place never govern there
   */
  Ring near(double x, double y, double reach, double ceiling) {
    double[] distances = new double[sides.length];
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < sides.length; i++) {
      distances[i] = sides[i].distance(x, y);
      nearest = Math.min(nearest, distances[i]);
    }
    boolean inside = within.inside(x, y);
    boolean sure = nearest > reach;
    boolean right = !sure || inside == keepInside;
    boolean wrong = !sure || inside != keepInside;
    int[] kept = new int[sides.length];
    int count = 0;
    for (int i = 0; i < sides.length; i++) {
      if (right && governs(i, distances[i], x, y, ceiling)
          || wrong && distances[i] <= nearest + 2 * reach) {
        kept[count++] = i;
      }
    }
    return count == 0 ? null : only(Arrays.copyOf(kept, count), sure ? fixed(inside) : within);
  }

  private boolean governs(int index, double distance, double x, double y, double ceiling) {
    return evenNeedMm >= 0
        ? distance - evenNeedMm <= ceiling
        : features[index].leastRoom(x, y) <= ceiling;
  }

  private static Within fixed(boolean inside) {
    return (x, y) -> inside;
  }

  private Ring only(int[] kept, Within how) {
    Side[] fewSides = new Side[kept.length];
    Feature[] fewFeatures = new Feature[kept.length];
    for (int i = 0; i < kept.length; i++) {
      fewSides[i] = sides[kept[i]];
      fewFeatures[i] = features[kept[i]];
    }
    return new Ring(fewSides, fewFeatures, keepInside, how);
  }

  /** On the wrong side the lack is the way back to the nearest side, and its whole need there. */
  private Touch beyond(double x, double y) {
    int nearest = 0;
    double distance = Double.POSITIVE_INFINITY;
    for (int i = 0; i < sides.length; i++) {
      double candidate = sides[i].distance(x, y);
      if (candidate < distance) {
        distance = candidate;
        nearest = i;
      }
    }
    double nearX = sides[nearest].nearestX(x, y);
    double nearY = sides[nearest].nearestY(x, y);
    Touch there = features[nearest].touch(nearX, nearY);
    boolean apart = distance > Tolerances.SAME_MM;
    double riseX = apart ? (nearX - x) / distance : there.riseX();
    double riseY = apart ? (nearY - y) / distance : there.riseY();
    return new Touch(
        features[nearest], there.roomMm() - distance, riseX, riseY, -distance, nearX, nearY);
  }

  private double nearest(double x, double y) {
    double least = Double.POSITIVE_INFINITY;
    for (Side side : sides) {
      least = Math.min(least, side.squaredDistance(x, y));
    }
    return Math.sqrt(least);
  }
}
