package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.measure.Point;

/** Tells whether a place lies within a closed line of straight sides and arcs. */
final class Parity {
  private final double[] fromX;
  private final double[] fromY;
  private final double[] toX;
  private final double[] toY;
  private final Bow[] bows;

  private Parity(int count, List<Bow> bows) {
    this.fromX = new double[count];
    this.fromY = new double[count];
    this.toX = new double[count];
    this.toY = new double[count];
    this.bows = bows.toArray(new Bow[0]);
  }

  static Parity of(List<? extends Side> sides) {
    List<Bow> bows = new ArrayList<>();
    for (Side side : sides) {
      if (side instanceof Bow bow) {
        bows.add(bow);
      }
    }
    Parity parity = new Parity(sides.size(), bows);
    for (int i = 0; i < sides.size(); i++) {
      List<Point> line = sides.get(i).line();
      Point from = line.get(0);
      Point to = line.get(line.size() - 1);
      parity.fromX[i] = from.xMm();
      parity.fromY[i] = from.yMm();
      parity.toX[i] = to.xMm();
      parity.toY[i] = to.yMm();
    }
    return parity;
  }

  /** Counts the straight lines crossed on the way to the far right, and the arcs cut off. */
  boolean inside(double x, double y) {
    boolean inside = false;
    for (int i = 0; i < fromX.length; i++) {
      if (fromY[i] > y != toY[i] > y) {
        double share = (y - fromY[i]) / (toY[i] - fromY[i]);
        inside ^= x < fromX[i] + share * (toX[i] - fromX[i]);
      }
    }
    for (Bow bow : bows) {
      inside ^= bow.cutsOff(x, y);
    }
    return inside;
  }
}
