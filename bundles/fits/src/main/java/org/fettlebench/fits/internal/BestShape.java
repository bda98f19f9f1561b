package org.fettlebench.fits.internal;

import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Sketch;
import org.fettlebench.measure.Point;

/** The way from where the hole should be to where it would be best, and the name of that place. */
final class BestShape {
  private static final String WORDS = "best centre";

  /** Directions in which the name may stand: off the centre lines. */
  private static final double[] DEGREES = {
    35, -35, 145, -145, 60, -60, 120, -120, 78, -78, 102, -102
  };

  /** Words under or over a leader less steep than this would reach back over the head. */
  private static final double STEEP = 0.8;

  private final Point intended;
  private final Point best;
  private final double size;

  BestShape(Point intended, Point best, double size) {
    this.intended = intended;
    this.best = best;
    this.size = size;
  }

  /**
   * Draws both.
   *
   * @param headReachMm what the head with all that goes with it takes about the intended centre
   */
  void draw(Sketch sketch, Surround surround, GoverningShape governing, double headReachMm) {
    double head = Math.min(0.025 * size, intended.distanceMm(best) / 3);
    sketch.arrow(LineKind.THIN, intended, best, head);
    Leader leader = leader(surround, governing, headReachMm);
    sketch.line(LineKind.THIN, best, leader.end());
    sketch.label(leader.end(), WORDS, leader.side(), false);
    if (surround.beyond(leader.side(), leader.end(), WORDS)) {
      surround.words(leader.side(), WORDS);
    }
  }

  /** A line from the best centre to its name. */
  private record Leader(Point end, Item.Side side, double costMm) {}

  /** The name stands just outside the head, the shortest way that is free of the figures. */
  private Leader leader(Surround surround, GoverningShape governing, double headReachMm) {
    Leader found = null;
    for (double degrees : DEGREES) {
      Leader each = leader(Math.toRadians(degrees), surround, governing, headReachMm);
      if (found == null || each.costMm() < found.costMm()) {
        found = each;
      }
    }
    return found;
  }

  private Leader leader(
      double angle, Surround surround, GoverningShape governing, double headReachMm) {
    double ux = Math.cos(angle);
    double uy = Math.sin(angle);
    double x = best.xMm() - intended.xMm();
    double y = best.yMm() - intended.yMm();
    double along = x * ux + y * uy;
    double inside = headReachMm * headReachMm - x * x - y * y + along * along;
    double out = Math.max(0, inside > 0 ? Math.sqrt(inside) - along : 0) + 0.05 * size;
    Point end = best.moved(out * ux, out * uy);
    Item.Side side = ux > 0 ? Item.Side.RIGHT : Item.Side.LEFT;
    Item.Side way = uy > 0 ? Item.Side.ABOVE : Item.Side.BELOW;
    boolean taken = taken(governing, side) && taken(governing, way);
    double cost = out + (taken ? 0.3 * size : 0);
    if (!surround.beyond(side, end, WORDS)) {
      return new Leader(end, side, cost);
    }
    // Where the words would cross the flat's edge they stand under or over the leader's end.
    boolean clear = Math.abs(uy) > STEEP && !surround.beyond(way, end, WORDS);
    return new Leader(end, way, cost + (clear ? 0.05 : 0.25) * size);
  }

  /** Returns whether what governs is figured on a side. */
  private static boolean taken(GoverningShape governing, Item.Side side) {
    return side == governing.wordsSide()
        || governing.dimensionSide().filter(side::equals).isPresent();
  }
}
