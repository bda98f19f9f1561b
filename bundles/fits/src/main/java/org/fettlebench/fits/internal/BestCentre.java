package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;
import org.fettlebench.measure.Point;

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

  /** One does for straight sides; at corners and arcs each goes on from the last. */
  private static final int MOST_SLIDES = 20;

  private final Room room;
  private final Box box;
  private final Point intended;
  private final List<Spot> tops = new ArrayList<>();
  private final Set<Set<Feature>> climbed = new HashSet<>();
  private int squaresTried;

  /** A centre and its room. */
  record Spot(double x, double y, double roomMm) {
    Point point() {
      return new Point(x, y);
    }

    private double bound(double halfMm) {
      return roomMm + halfMm * Math.sqrt(2);
    }
  }

  /** A square of the plane, with what can govern in it. */
  private record Square(Spot middle, double halfMm, Room room) {
    double bound() {
      return middle.bound(halfMm);
    }
  }

  BestCentre(Room room, Box box, Point intended) {
    this.room = room;
    this.box = box;
    this.intended = intended;
  }

  /**
   * Returns the best centre; along a slot, where many are as good, the one nearest to the intended.
   */
  Spot find() {
    climb(spot(intended.xMm(), intended.yMm()));
    PriorityQueue<Square> queue =
        new PriorityQueue<>((a, b) -> Double.compare(b.bound(), a.bound()));
    firstSquares(queue);
    double least = box.longest() * Tolerances.COARSE;
    while (!queue.isEmpty() && queue.peek().bound() > best().roomMm() + Tolerances.SAME_MM) {
      Square square = queue.poll();
      squaresTried++;
      if (boundBetween(square) <= best().roomMm() + Tolerances.SAME_MM) {
        continue;
      }
      if (square.middle().roomMm() > best().roomMm() || square.halfMm() < least) {
        climbOnce(square);
      }
      if (square.halfMm() >= least) {
        split(square, queue);
      }
    }
    return slidden(best());
  }

  /** Slides a top towards the intended centre as far as it loses no room. */
  private Spot slidden(Spot top) {
    Spot here = top;
    for (int i = 0; i < MOST_SLIDES; i++) {
      Steps.Step step =
          Steps.approach(
              room.touches(here.x(), here.y()),
              intended.xMm() - here.x(),
              intended.yMm() - here.y(),
              top.roomMm());
      Spot there = spot(here.x() + step.dx(), here.y() + step.dy());
      boolean closer = there.point().distanceMm(intended) < here.point().distanceMm(intended);
      if (!(closer && there.roomMm() > top.roomMm() - Tolerances.SAME_MM)) {
        break;
      }
      here = there;
    }
    return new Spot(here.x(), here.y(), top.roomMm());
  }

  /** Returns how many squares the search looked into: what it costs. */
  int squaresTried() {
    return squaresTried;
  }

  /** Returns how often it went uphill. */
  int climbs() {
    return tops.size();
  }

  /**
   * Returns a sharper bound where two features face each other: the room is at most half the sum of
   * theirs, which is convex, so nowhere in a square more than at its corners. Along a slot that sum
   * does not change, and the whole slot is settled at once.
   */
  private double boundBetween(Square square) {
    List<Touch> touches = square.room().touches(square.middle().x(), square.middle().y());
    if (touches.stream().anyMatch(touch -> touch.feature().hollow())) {
      return square.bound();
    }
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
    double side = Math.min(box.width(), box.height());
    // A sliver would make thousands of squares; sixteen along it are enough to begin with.
    double half = Math.max(side, box.longest() / 16) / 2;
    for (double x = box.minX() + half; x < box.maxX() + half; x += 2 * half) {
      for (double y = box.minY() + half; y < box.maxY() + half; y += 2 * half) {
        queue.add(new Square(spot(x, y), half, room));
      }
    }
  }

  private void split(Square square, PriorityQueue<Square> queue) {
    double half = square.halfMm() / 2;
    Spot middle = square.middle();
    Room close = square.room().near(middle.x(), middle.y(), square.halfMm() * Math.sqrt(2));
    for (int corner = 0; corner < 4; corner++) {
      double x = middle.x() + (corner % 2 == 0 ? -half : half);
      double y = middle.y() + (corner / 2 == 0 ? -half : half);
      Square part = new Square(new Spot(x, y, close.at(x, y)), half, close);
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
  private void climbOnce(Square square) {
    if (climbed.size() < MOST_CLIMBS && climbed.add(closest(square))) {
      climb(square.middle());
    }
  }

  private static Set<Feature> closest(Square square) {
    List<Touch> touches =
        new ArrayList<>(square.room().touches(square.middle().x(), square.middle().y()));
    touches.sort((a, b) -> Double.compare(a.roomMm(), b.roomMm()));
    Set<Feature> three = new HashSet<>();
    touches.stream().limit(3).forEach(touch -> three.add(touch.feature()));
    return three;
  }

  /** Goes uphill by steps no longer than the surroundings that are looked at. */
  private void climb(Spot start) {
    double reach = box.longest() / 6;
    Spot here = start;
    Room close = room.near(here.x(), here.y(), reach * Math.sqrt(2));
    Spot about = here;
    for (int i = 0; i < 100; i++) {
      double left =
          reach - Math.max(Math.abs(here.x() - about.x()), Math.abs(here.y() - about.y()));
      if (left < reach / 2) {
        close = room.near(here.x(), here.y(), reach * Math.sqrt(2));
        about = here;
        left = reach;
      }
      Steps.Step step = Steps.raise(close.touches(here.x(), here.y()), left);
      Spot there = spot(here.x() + step.dx(), here.y() + step.dy());
      if (!(there.roomMm() > here.roomMm() + Tolerances.SAME_MM / 100)) {
        break;
      }
      here = there;
    }
    tops.add(here);
  }
}
