package org.fettlebench.fits.internal;

import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.fettlebench.measure.Point;

/**
 * Finds the allowed centre nearest to one that fails.
 *
 * <p>Squares of the plane are split, nearest first; as the room has slope 1 at most, a square whose
 * middle lacks more than its half diagonal holds no allowed centre. Small squares that may hold one
 * are led there, and to the nearest such place, by linear steps.
 */
final class NearestAllowed {
  private static final double DIAGONAL = Math.sqrt(2);
  private static final int MOST_LED = 60;

  private final Room room;
  private final Point failing;
  private Point nearest;
  private double nearestMm;
  private int squaresTried;

  private record Square(double x, double y, double half, double fromMm, Room room) {}

  /**
   * Prepares the search.
   *
   * @param room the room of any centre
   * @param failing the centre that is not allowed
   */
  NearestAllowed(Room room, Point failing) {
    this.room = room;
    this.failing = failing;
  }

  /**
   * Returns it, exact to rounding.
   *
   * @param best a centre known to be allowed, with no others about it needed
   */
  Point find(Point best) {
    nearest = best;
    nearestMm = best.distanceMm(failing);
    take(improve(best));
    double least = nearestMm * Tolerances.COARSE;
    PriorityQueue<Square> queue = new PriorityQueue<>(Comparator.comparingDouble(Square::fromMm));
    queue.add(new Square(failing.xMm(), failing.yMm(), nearestMm, 0, room));
    int led = 0;
    while (!queue.isEmpty() && queue.peek().fromMm() < nearestMm && led < MOST_LED) {
      Square square = queue.poll();
      squaresTried++;
      double lack = square.room().at(square.x(), square.y());
      if (lack < -square.half() * DIAGONAL) {
        continue;
      }
      if (square.half() < least || lack >= 0) {
        led++;
        take(improve(new Point(square.x(), square.y())));
      }
      if (square.half() >= least) {
        split(square, queue);
      }
    }
    return nearest;
  }

  /** Returns how many squares the search looked into: what it costs. */
  int squaresTried() {
    return squaresTried;
  }

  private void split(Square square, PriorityQueue<Square> queue) {
    double half = square.half() / 2;
    Room close = square.room().near(square.x(), square.y(), square.half() * DIAGONAL);
    for (int corner = 0; corner < 4; corner++) {
      double x = square.x() + (corner % 2 == 0 ? -half : half);
      double y = square.y() + (corner / 2 == 0 ? -half : half);
      double dx = Math.max(0, Math.abs(x - failing.xMm()) - half);
      double dy = Math.max(0, Math.abs(y - failing.yMm()) - half);
      double from = Math.hypot(dx, dy);
      if (from < nearestMm) {
        queue.add(new Square(x, y, half, from, close));
      }
    }
  }

  private void take(Point candidate) {
    double distance = candidate.distanceMm(failing);
    if (distance < nearestMm && room.at(candidate.xMm(), candidate.yMm()) > -1e-8) {
      nearest = candidate;
      nearestMm = distance;
    }
  }

  /**
   * Goes towards the failing centre by linear steps. Each looks only at what can govern so far off
   * as the step may go; where it goes farther, the next step looks again about its end.
   */
  private Point improve(Point start) {
    Point here = start;
    Point about = start;
    double reach = reach(start);
    Room close = room.near(start.xMm(), start.yMm(), reach);
    for (int i = 0; i < 40; i++) {
      if (here.distanceMm(about) > reach / 2) {
        about = here;
        reach = reach(here);
        close = room.near(here.xMm(), here.yMm(), reach);
      }
      List<Touch> touches = close.touches(here.xMm(), here.yMm());
      Steps.Step step =
          Steps.approach(touches, failing.xMm() - here.xMm(), failing.yMm() - here.yMm(), 0);
      here = here.moved(step.dx(), step.dy());
      if (!(step.length() > Tolerances.SAME_MM / 10)) {
        break;
      }
    }
    return here;
  }

  private double reach(Point here) {
    return Math.max(here.distanceMm(failing), Tolerances.SMALLEST_MM);
  }
}
