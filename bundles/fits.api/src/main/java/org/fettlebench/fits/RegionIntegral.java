package org.fettlebench.fits;

import java.util.Arrays;
import java.util.List;
import org.fettlebench.measure.Point;

/**
 * The chance of landing in a region, as an integral along its boundary: by Green's theorem it is -1
 * times the integral of F(y) f(x) dx anticlockwise, with F the distribution function along y and f
 * the density along x. Each edge is parted where a law ceases to be smooth.
 */
final class RegionIntegral implements Mixture.Integral {
  private final List<SeatAnswer.Region> region;
  private final Point aimed;

  private RegionIntegral(List<SeatAnswer.Region> region, Point aimed) {
    this.region = region;
    this.aimed = aimed;
  }

  static RegionIntegral of(List<SeatAnswer.Region> region, Point aimed) {
    return new RegionIntegral(region, aimed);
  }

  @Override
  public double chance(Mixture.Component law) {
    Walk walk = new Walk(law, aimed);
    double sum = 0;
    for (SeatAnswer.Region part : region) {
      sum += Math.abs(walk.round(part.shell()));
      for (List<Point> hole : part.holes()) {
        sum -= Math.abs(walk.round(hole));
      }
    }
    return sum;
  }

  /** Walks round a ring and adds up; the sign tells which way round the ring was. */
  private static final class Walk {
    private final AxisLaw x;
    private final AxisLaw y;
    private final double originX;
    private final double originY;
    private double[] cuts = new double[64];

    Walk(Mixture.Component law, Point aimed) {
      this.x = law.x();
      this.y = law.y();
      this.originX = aimed.xMm() + law.offsetX();
      this.originY = aimed.yMm() + law.offsetY();
    }

    double round(List<Point> ring) {
      double sum = 0;
      Point last = ring.get(ring.size() - 1);
      double fromX = last.xMm() - originX;
      double fromY = last.yMm() - originY;
      for (Point corner : ring) {
        double toX = corner.xMm() - originX;
        double toY = corner.yMm() - originY;
        sum += x.exact() ? crossing(fromX, fromY, toX, toY) : edge(fromX, fromY, toX, toY);
        fromX = toX;
        fromY = toY;
      }
      return sum;
    }

    /** Without an error along x only the edges above and below the place itself count. */
    private double crossing(double fromX, double fromY, double toX, double toY) {
      if (fromX <= 0 == toX <= 0) {
        return 0;
      }
      double height = fromY + (toY - fromY) * (-fromX / (toX - fromX));
      return fromX <= 0 ? -y.cumulative(height) : y.cumulative(height);
    }

    private double edge(double fromX, double fromY, double toX, double toY) {
      double reach = x.reach();
      boolean beside = Math.max(fromX, toX) <= -reach || Math.min(fromX, toX) >= reach;
      if (beside || fromX == toX || Math.max(fromY, toY) <= -y.reach()) {
        return 0;
      }
      if (Math.min(fromY, toY) >= y.reach()) {
        return x.cumulative(fromX) - x.cumulative(toX);
      }
      double runX = toX - fromX;
      double runY = toY - fromY;
      int count = cuts(fromX, runX, fromY, runY);
      double sum = 0;
      for (int i = 1; i < count; i++) {
        if (cuts[i] > cuts[i - 1]) {
          sum +=
              Gauss.integral(
                  t -> x.density(fromX + t * runX) * y.cumulative(fromY + t * runY),
                  cuts[i - 1],
                  cuts[i]);
        }
      }
      return -sum * runX;
    }

    /** Lists, rising from 0 to 1, where along an edge a law ceases to be smooth. */
    private int cuts(double fromX, double runX, double fromY, double runY) {
      int most = x.knots().length + y.knots().length + 2;
      if (cuts.length < most) {
        cuts = new double[most];
      }
      cuts[0] = 0;
      cuts[1] = 1;
      int count = cutsAlong(x.knots(), fromX, runX, 2);
      count = cutsAlong(y.knots(), fromY, runY, count);
      Arrays.sort(cuts, 0, count);
      return count;
    }

    private int cutsAlong(double[] knots, double from, double run, int before) {
      int count = before;
      for (double knot : knots) {
        double at = (knot - from) / run;
        if (at > 0 && at < 1) {
          cuts[count++] = at;
        }
      }
      return count;
    }
  }
}
