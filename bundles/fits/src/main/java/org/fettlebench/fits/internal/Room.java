package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.List;

/** The room around any centre: the least over all features of distance less need. */
final class Room {
  private final Ring[] rings;
  private final Feature[] obstacles;

  Room(List<Ring> rings, List<? extends Feature> obstacles) {
    this.rings = rings.toArray(new Ring[0]);
    this.obstacles = obstacles.toArray(new Feature[0]);
  }

  /** Returns the room at a centre in millimetres; negative when something fails there. */
  double at(double x, double y) {
    double least = Double.POSITIVE_INFINITY;
    for (Ring ring : rings) {
      least = Math.min(least, ring.room(x, y, least));
    }
    for (Feature obstacle : obstacles) {
      if (obstacle.leastRoom(x, y) < least) {
        least = Math.min(least, obstacle.room(x, y));
      }
    }
    return least;
  }

  /**
   * Returns the same room close to a place, with only what can govern there: as rooms have slope 1
   * at most, what has twice the reach more than the least at the place never does.
   */
  Room near(double x, double y, double reach) {
    double ceiling = at(x, y) + 2 * reach;
    List<Ring> fewRings = new ArrayList<>(rings.length);
    for (Ring ring : rings) {
      Ring few = ring.near(x, y, reach, ceiling);
      if (few != null) {
        fewRings.add(few);
      }
    }
    List<Feature> fewObstacles = new ArrayList<>();
    for (Feature obstacle : obstacles) {
      if (obstacle.leastRoom(x, y) <= ceiling) {
        fewObstacles.add(obstacle);
      }
    }
    return new Room(fewRings, fewObstacles);
  }

  /** Returns how many sides and obstacles are looked at: what a look costs. */
  int sides() {
    int sides = obstacles.length;
    for (Ring ring : rings) {
      sides += ring.features().length;
    }
    return sides;
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
