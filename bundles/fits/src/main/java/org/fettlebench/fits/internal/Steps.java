package org.fettlebench.fits.internal;

import java.util.List;

/**
 * Two small linear problems about the shift from a centre, with every feature's room taken as a
 * straight function of the shift. As the true room is convex (but inside arcs, which are asked
 * again at every shift), it is never less than that, so a shift found here never does worse than it
 * promises.
 *
 * <p>Only few features matter: each problem starts with one and takes in the worst one left out
 * until none is broken. The new optimum then lies on the feature just taken in, so only its
 * crossings with the others are tried.
 */
final class Steps {
  private static final int MOST_ROUNDS = 60;
  private static final double BROKEN = -Tolerances.SAME_MM / 5;
  private static final double HOLDS = -Tolerances.SAME_MM / 10;

  /** A shift and the least room promised after it. */
  record Step(double dx, double dy, double roomMm) {
    double length() {
      return Math.hypot(dx, dy);
    }
  }

  private final List<Touch> touches;
  private final boolean raising;
  private final double targetX;
  private final double targetY;

  /** Room that a shift towards a target must leave. */
  private final double leaving;

  // Bounds a dx + b dy - s room + c >= 0.
  private final double[] a = new double[MOST_ROUNDS + 5];
  private final double[] b = new double[MOST_ROUNDS + 5];
  private final double[] s = new double[MOST_ROUNDS + 5];
  private final double[] c = new double[MOST_ROUNDS + 5];
  private int count;

  private double dx;
  private double dy;
  private double room;
  private boolean found;

  private Steps(List<Touch> touches) {
    this.touches = touches;
    this.raising = true;
    this.targetX = 0;
    this.targetY = 0;
    this.leaving = 0;
  }

  private Steps(List<Touch> touches, double targetX, double targetY, double leaving) {
    this.touches = touches;
    this.raising = false;
    this.targetX = targetX;
    this.targetY = targetY;
    this.leaving = leaving;
  }

  /**
   * Returns the shift that raises the least room most; of equally good ones the shortest.
   *
   * @param touches how all features stand at the centre
   * @param mostMm how far the shift may go along x and along y
   */
  static Step raise(List<Touch> touches, double mostMm) {
    Steps steps = new Steps(touches);
    steps.box(mostMm);
    Touch least = Room.least(touches);
    steps.add(least.riseX(), least.riseY(), least.roomMm());
    steps.room = Double.POSITIVE_INFINITY;
    return steps.solve();
  }

  /**
   * Returns the shift to the point nearest to a target at which every feature leaves some room.
   *
   * @param touches how all features stand at the centre
   * @param targetDx the target, as a shift from the centre
   * @param targetDy the target, as a shift from the centre
   * @param leavingMm how much room; 0 where none may fail
   */
  static Step approach(List<Touch> touches, double targetDx, double targetDy, double leavingMm) {
    Steps steps = new Steps(touches, targetDx, targetDy, leavingMm);
    steps.dx = targetDx;
    steps.dy = targetDy;
    steps.found = true;
    return steps.solve();
  }

  private void box(double mostMm) {
    for (int i = 0; i < 4; i++) {
      a[i] = i < 2 ? 1 - 2 * i : 0;
      b[i] = i < 2 ? 0 : 5 - 2 * i;
      c[i] = mostMm;
    }
    count = 4;
  }

  private void add(double riseX, double riseY, double roomMm) {
    a[count] = riseX;
    b[count] = riseY;
    s[count] = raising ? 1 : 0;
    c[count] = roomMm - leaving;
    count++;
  }

  private Step solve() {
    if (raising && !improve()) {
      return new Step(0, 0, Double.NEGATIVE_INFINITY);
    }
    for (int round = 0; round < MOST_ROUNDS - 1; round++) {
      if (!addWorst()) {
        return new Step(dx, dy, room);
      }
      if (!improve()) {
        return new Step(0, 0, Double.NEGATIVE_INFINITY);
      }
    }
    return new Step(dx, dy, room);
  }

  /** Takes in the feature that the shift breaks most; returns false when it breaks none. */
  private boolean addWorst() {
    double least = BROKEN;
    Touch worst = null;
    for (Touch touch : touches) {
      double value = touch.roomMm() + touch.riseX() * dx + touch.riseY() * dy;
      // A straight function overrates the room inside an arc, never underrates it.
      if (touch.hollow()) {
        value = Math.min(value, touch.shifted(dx, dy).roomMm());
      }
      value -= raising ? room : leaving;
      if (value < least) {
        least = value;
        worst = touch;
      }
    }
    if (worst == null) {
      return false;
    }
    return worst.hollow() ? addHollow(worst) : addNew(worst.riseX(), worst.riseY(), worst.roomMm());
  }

  private boolean addHollow(Touch touch) {
    Touch there = touch.shifted(dx, dy);
    double roomHere = there.roomMm() - there.riseX() * dx - there.riseY() * dy;
    return addNew(there.riseX(), there.riseY(), roomHere);
  }

  private boolean addNew(double riseX, double riseY, double roomMm) {
    for (int i = 0; i < count; i++) {
      if (a[i] == riseX && b[i] == riseY && c[i] == roomMm - leaving) {
        return false;
      }
    }
    add(riseX, riseY, roomMm);
    return true;
  }

  /** Finds the best shift on the bound added last; returns false when there is none. */
  private boolean improve() {
    found = false;
    int last = count - 1;
    if (!raising) {
      project(last);
    }
    for (int i = 0; i < last; i++) {
      if (raising) {
        between(last, i);
        for (int j = i + 1; j < last; j++) {
          meet(last, i, j);
        }
      } else {
        cross(last, i);
      }
    }
    return found;
  }

  private void project(int p) {
    double lack = -(a[p] * targetX + b[p] * targetY + c[p]);
    double share = lack / (a[p] * a[p] + b[p] * b[p]);
    offer(targetX + a[p] * share, targetY + b[p] * share, 0);
  }

  private void cross(int p, int q) {
    double det = a[p] * b[q] - b[p] * a[q];
    if (Math.abs(det) > 1e-12) {
      offer((b[p] * c[q] - b[q] * c[p]) / det, (a[q] * c[p] - a[p] * c[q]) / det, 0);
    }
  }

  /** Half way between two opposite features, by the shortest way. */
  private void between(int p, int q) {
    if (s[q] == 1 && a[p] * a[q] + b[p] * b[q] < -1 + 1e-12) {
      double shift = (c[q] - c[p]) / 2;
      offer(a[p] * shift, b[p] * shift, (c[p] + c[q]) / 2);
    }
  }

  /** Where three bounds are equal (Cramer's rule). */
  private void meet(int p, int q, int r) {
    double pq = a[p] * b[q] - b[p] * a[q];
    double qr = a[q] * b[r] - b[q] * a[r];
    double rp = a[r] * b[p] - b[r] * a[p];
    double det = s[p] * qr + s[q] * rp + s[r] * pq;
    if (Math.abs(det) < 1e-12) {
      return;
    }
    double level = (c[p] * qr + c[q] * rp + c[r] * pq) / det;
    // The least parallel pair gives the sharpest crossing.
    if (Math.abs(pq) >= Math.abs(qr) && Math.abs(pq) >= Math.abs(rp)) {
      crossAt(p, q, pq, level);
    } else if (Math.abs(qr) >= Math.abs(rp)) {
      crossAt(q, r, qr, level);
    } else {
      crossAt(r, p, rp, level);
    }
  }

  private void crossAt(int p, int q, double det, double level) {
    if (Math.abs(det) > 1e-12) {
      double up = c[p] - s[p] * level;
      double uq = c[q] - s[q] * level;
      offer((b[p] * uq - b[q] * up) / det, (a[q] * up - a[p] * uq) / det, level);
    }
  }

  /** Takes a shift if it holds and is the best so far. */
  private void offer(double x, double y, double level) {
    if (found && !better(x, y, level)) {
      return;
    }
    for (int i = 0; i < count; i++) {
      if (!(a[i] * x + b[i] * y - s[i] * level + c[i] >= HOLDS)) {
        return;
      }
    }
    dx = x;
    dy = y;
    room = level;
    found = true;
  }

  private boolean better(double x, double y, double level) {
    double near = Math.hypot(x - targetX, y - targetY);
    double nearest = Math.hypot(dx - targetX, dy - targetY);
    if (!raising) {
      return near < nearest;
    }
    double gain = level - room;
    return gain > -HOLDS || gain > HOLDS && near < nearest;
  }
}
