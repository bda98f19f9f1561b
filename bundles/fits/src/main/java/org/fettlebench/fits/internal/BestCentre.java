package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;
import org.fettlebench.measure.Point;
import org.locationtech.jts.geom.Envelope;

/**
 * Finds the centre with most room.
 *
 * <p>Squares of the plane are split, most promising first; as the room has slope 1 at most, the
 * room at a square's middle bounds the room in it (branch and bound). Every promising square's
 * middle is then led uphill to the exact top by linear steps, which for straight edges are exact
 * and for corners converge fast.
 */
final class BestCentre {
  private static final int MOST_CLIMBS = 40;

  private final Room room;
  private final Envelope box;
  private final Point intended;
  private final List<Spot> tops = new ArrayList<>();
  private final Set<Set<Feature>> climbed = new HashSet<>();

  /** A centre and its room. */
  record Spot(double x, double y, double roomMm) {
    Point point() {
      return new Point(x, y);
    }

    private double bound(double halfMm) {
      return roomMm + halfMm * Math.sqrt(2);
    }
  }

  private record Square(Spot middle, double halfMm) {
    double bound() {
      return middle.bound(halfMm);
    }
  }

  BestCentre(Room room, Envelope box, Point intended) {
    this.room = room;
    this.box = box;
    this.intended = intended;
  }

  /** Returns the best centre; of equally good ones the nearest found to the intended. */
  Spot find() {
    climb(spot(intended.xMm(), intended.yMm()));
    PriorityQueue<Square> queue =
        new PriorityQueue<>((a, b) -> Double.compare(b.bound(), a.bound()));
    firstSquares(queue);
    double least = Math.max(box.getWidth(), box.getHeight()) * Tolerances.COARSE;
    while (!queue.isEmpty() && queue.peek().bound() > best().roomMm() + Tolerances.SAME_MM) {
      Square square = queue.poll();
      if (boundBetween(square) <= best().roomMm() + Tolerances.SAME_MM) {
        continue;
      }
      if (square.middle().roomMm() > best().roomMm() || square.halfMm() < least) {
        climbOnce(square.middle());
      }
      if (square.halfMm() >= least) {
        split(square, queue);
      }
    }
    return best();
  }

  /**
   * Returns a sharper bound where two features face each other: the room is at most half the sum of
   * theirs, which is convex, so nowhere in a square more than at its corners. Along a slot that sum
   * does not change, and the whole slot is settled at once.
   */
  private double boundBetween(Square square) {
    List<Touch> touches = room.touches(square.middle().x(), square.middle().y());
    Touch first = Room.least(touches);
    Touch facing = null;
    for (Touch other : touches) {
      double turn = first.riseX() * other.riseX() + first.riseY() * other.riseY();
      if (turn < -0.5 && (facing == null || other.roomMm() < facing.roomMm())) {
        facing = other;
      }
    }
    if (facing == null) {
      return square.bound();
    }
    double most = Double.NEGATIVE_INFINITY;
    for (int corner = 0; corner < 4; corner++) {
      double x = square.middle().x() + (corner % 2 == 0 ? -1 : 1) * square.halfMm();
      double y = square.middle().y() + (corner / 2 == 0 ? -1 : 1) * square.halfMm();
      most = Math.max(most, (first.feature().room(x, y) + facing.feature().room(x, y)) / 2);
    }
    return most;
  }

  private void firstSquares(PriorityQueue<Square> queue) {
    double side = Math.min(box.getWidth(), box.getHeight());
    // A sliver would make thousands of squares; sixteen along it are enough to begin with.
    double half = Math.max(side, Math.max(box.getWidth(), box.getHeight()) / 16) / 2;
    for (double x = box.getMinX() + half; x < box.getMaxX() + half; x += 2 * half) {
      for (double y = box.getMinY() + half; y < box.getMaxY() + half; y += 2 * half) {
        queue.add(new Square(spot(x, y), half));
      }
    }
  }

  private void split(Square square, PriorityQueue<Square> queue) {
    double half = square.halfMm() / 2;
    for (int corner = 0; corner < 4; corner++) {
      double x = square.middle().x() + (corner % 2 == 0 ? -half : half);
      double y = square.middle().y() + (corner / 2 == 0 ? -half : half);
      Square part = new Square(spot(x, y), half);
      if (part.bound() > best().roomMm() + Tolerances.SAME_MM) {
        queue.add(part);
      }
    }
  }

  private Spot spot(double x, double y) {
    return new Spot(x, y, room.at(x, y));
  }

  private Spot best() {
    Spot best = tops.get(0);
    for (Spot top : tops) {
      double gain = top.roomMm() - best.roomMm();
      boolean closer = top.point().distanceMm(intended) < best.point().distanceMm(intended);
      if (gain > Tolerances.SAME_MM || gain > -Tolerances.SAME_MM && closer) {
        best = top;
      }
    }
    return best;
  }

  /** Climbs unless the same features governed a climb before: it would end at the same top. */
  private void climbOnce(Spot start) {
    if (climbed.size() < MOST_CLIMBS && climbed.add(closest(start))) {
      climb(start);
    }
  }

  private Set<Feature> closest(Spot start) {
    List<Touch> touches = new ArrayList<>(room.touches(start.x(), start.y()));
    touches.sort((a, b) -> Double.compare(a.roomMm(), b.roomMm()));
    Set<Feature> three = new HashSet<>();
    touches.stream().limit(3).forEach(touch -> three.add(touch.feature()));
    return three;
  }

  private void climb(Spot start) {
    double most = Math.max(box.getWidth(), box.getHeight());
    Spot here = start;
    for (int i = 0; i < 60; i++) {
      Steps.Step step = Steps.raise(room.touches(here.x(), here.y()), most);
      Spot there = spot(here.x() + step.dx(), here.y() + step.dy());
      if (!(there.roomMm() > here.roomMm() + Tolerances.SAME_MM / 100)) {
        break;
      }
      here = there;
    }
    tops.add(here);
  }
}
