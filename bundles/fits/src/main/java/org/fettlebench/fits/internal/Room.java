package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.List;

/** The room around any centre: the least over all features of distance less need. */
final class Room {
  private final List<Ring> rings;
  private final List<? extends Feature> obstacles;

  Room(List<Ring> rings, List<? extends Feature> obstacles) {
    this.rings = List.copyOf(rings);
    this.obstacles = List.copyOf(obstacles);
  }

  /** Returns the room at a centre in millimetres; negative when something fails there. */
  double at(double x, double y) {
    double least = Double.POSITIVE_INFINITY;
    for (Ring ring : rings) {
      least = Math.min(least, ring.room(x, y, least));
    }
    for (Feature obstacle : obstacles) {
      least = Math.min(least, obstacle.room(x, y));
    }
    return least;
  }

  /** Returns how every feature stands to a centre. */
  List<Touch> touches(double x, double y) {
    List<Touch> touches = new ArrayList<>();
    for (Ring ring : rings) {
      ring.touch(x, y, touches);
    }
    for (Feature obstacle : obstacles) {
      touches.add(obstacle.touch(x, y));
    }
    return touches;
  }

  /** Returns the feature with the least room at a centre; of equals the first. */
  Touch governing(double x, double y) {
    return least(touches(x, y));
  }

  static Touch least(List<Touch> touches) {
    Touch least = null;
    for (Touch touch : touches) {
      if (least == null || touch.roomMm() < least.roomMm()) {
        least = touch;
      }
    }
    return least;
  }
}
