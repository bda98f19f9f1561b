package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Two small linear problems about the shift from a centre, with every feature's room taken as a
 * straight function of the shift. As the true room is convex, it is never less than that, so a
 * shift found here never does worse than it promises.
 *
 * <p>Only few features matter: each problem starts with the closest feature in each of eight
 * directions and takes in the worst one left out until none is broken. What is left is so small
 * that trying all corners is quickest.
 */
final class Steps {
  private static final int SECTORS = 8;

  /** A shift and the least room promised after it. */
  record Step(double dx, double dy, double roomMm) {
    double length() {
      return Math.hypot(dx, dy);
    }
  }

  /** A line a dx + b dy - s room + c >= 0. */
  private record Bound(double a, double b, double s, double c) {
    double value(Step step) {
      return a * step.dx() + b * step.dy() - s * step.roomMm() + c;
    }
  }

  private Steps() {}

  /**
   * Returns the shift that raises the least room most; of equally good ones the shortest.
   *
   * @param touches how all features stand at the centre
   * @param mostMm how far the shift may go along x and along y
   */
  static Step raise(List<Touch> touches, double mostMm) {
    return solve(touches, mostMm, new Raise());
  }

  /**
   * Returns the shift to the point nearest to a target at which no feature fails.
   *
   * @param touches how all features stand at the centre
   * @param targetDx the target, as a shift from the centre
   * @param targetDy the target, as a shift from the centre
   */
  static Step approach(List<Touch> touches, double targetDx, double targetDy) {
    return solve(touches, 0, new Approach(targetDx, targetDy));
  }

  /** The part in which the two problems differ. */
  private interface Problem {
    Bound bound(Touch touch);

    List<Step> corners(List<Bound> bounds);

    boolean better(Step candidate, Step best);

    List<Bound> box(double mostMm);
  }

  private static Step solve(List<Touch> touches, double mostMm, Problem problem) {
    List<Bound> bounds = new ArrayList<>(problem.box(mostMm));
    for (Touch touch : closestPerSector(touches)) {
      bounds.add(problem.bound(touch));
    }
    Step stay = new Step(0, 0, Double.NEGATIVE_INFINITY);
    for (int round = 0; round < 24; round++) {
      Step step = best(bounds, problem);
      if (step == null) {
        return stay;
      }
      Bound broken = worst(touches, step, problem);
      if (broken == null || bounds.contains(broken)) {
        return step;
      }
      bounds.add(broken);
    }
    return stay;
  }

  private static List<Touch> closestPerSector(List<Touch> touches) {
    Touch[] closest = new Touch[SECTORS];
    for (Touch touch : touches) {
      double turns = Math.atan2(touch.riseY(), touch.riseX()) / (2 * Math.PI) + 0.5;
      int sector = Math.min(SECTORS - 1, (int) (turns * SECTORS));
      if (closest[sector] == null || touch.roomMm() < closest[sector].roomMm()) {
        closest[sector] = touch;
      }
    }
    return Arrays.stream(closest).filter(touch -> touch != null).toList();
  }

  private static Step best(List<Bound> bounds, Problem problem) {
    Step best = null;
    for (Step step : problem.corners(bounds)) {
      boolean holds = true;
      for (int i = 0; holds && i < bounds.size(); i++) {
        holds = bounds.get(i).value(step) >= -Tolerances.SAME_MM / 10;
      }
      if (holds && (best == null || problem.better(step, best))) {
        best = step;
      }
    }
    return best;
  }

  private static Bound worst(List<Touch> touches, Step step, Problem problem) {
    double least = -Tolerances.SAME_MM / 5;
    Bound worst = null;
    for (Touch touch : touches) {
      Bound bound = problem.bound(touch);
      double value = bound.value(step);
      if (value < least) {
        least = value;
        worst = bound;
      }
    }
    return worst;
  }

  /** Solves two equations in dx and dy for a given room; adds nothing when they are parallel. */
  private static void cross(Bound p, Bound q, List<Step> corners) {
    double det = p.a * q.b - p.b * q.a;
    if (Math.abs(det) > 1e-12) {
      double dx = (p.b * q.c - q.b * p.c) / det;
      double dy = (q.a * p.c - p.a * q.c) / det;
      corners.add(new Step(dx, dy, 0));
    }
  }

  private static final class Raise implements Problem {
    @Override
    public Bound bound(Touch touch) {
      return new Bound(touch.riseX(), touch.riseY(), 1, touch.roomMm());
    }

    @Override
    public List<Bound> box(double mostMm) {
      return List.of(
          new Bound(1, 0, 0, mostMm),
          new Bound(-1, 0, 0, mostMm),
          new Bound(0, 1, 0, mostMm),
          new Bound(0, -1, 0, mostMm));
    }

    @Override
    public List<Step> corners(List<Bound> bounds) {
      List<Step> corners = new ArrayList<>();
      int count = bounds.size();
      for (int i = 0; i < count; i++) {
        for (int j = i + 1; j < count; j++) {
          between(bounds.get(i), bounds.get(j), corners);
          for (int k = j + 1; k < count; k++) {
            meet(bounds.get(i), bounds.get(j), bounds.get(k), corners);
          }
        }
      }
      return corners;
    }

    /** Half way between two opposite features, by the shortest way. */
    private static void between(Bound p, Bound q, List<Step> corners) {
      if (p.s == 1 && q.s == 1 && p.a * q.a + p.b * q.b < -1 + 1e-12) {
        double shift = (q.c - p.c) / 2;
        corners.add(new Step(p.a * shift, p.b * shift, (p.c + q.c) / 2));
      }
    }

    /** Where three bounds are equal (Cramer's rule). */
    private static void meet(Bound p, Bound q, Bound r, List<Step> corners) {
      double pq = p.a * q.b - p.b * q.a;
      double qr = q.a * r.b - q.b * r.a;
      double rp = r.a * p.b - r.b * p.a;
      double det = p.s * qr + q.s * rp + r.s * pq;
      if (Math.abs(det) < 1e-12) {
        return;
      }
      double room = (p.c * qr + q.c * rp + r.c * pq) / det;
      double pc = p.c - p.s * room;
      double qc = q.c - q.s * room;
      double rc = r.c - r.s * room;
      Bound first = new Bound(p.a, p.b, 0, pc);
      Bound second = new Bound(q.a, q.b, 0, qc);
      Bound third = new Bound(r.a, r.b, 0, rc);
      List<Step> at = new ArrayList<>(1);
      // The least parallel pair gives the sharpest crossing.
      if (Math.abs(pq) >= Math.abs(qr) && Math.abs(pq) >= Math.abs(rp)) {
        cross(first, second, at);
      } else if (Math.abs(qr) >= Math.abs(rp)) {
        cross(second, third, at);
      } else {
        cross(third, first, at);
      }
      at.forEach(step -> corners.add(new Step(step.dx(), step.dy(), room)));
    }

    @Override
    public boolean better(Step candidate, Step best) {
      double gain = candidate.roomMm() - best.roomMm();
      return gain > Tolerances.SAME_MM / 10
          || gain > -Tolerances.SAME_MM / 10 && candidate.length() < best.length();
    }
  }

  private record Approach(double targetDx, double targetDy) implements Problem {
    @Override
    public Bound bound(Touch touch) {
      return new Bound(touch.riseX(), touch.riseY(), 0, touch.roomMm());
    }

    @Override
    public List<Bound> box(double mostMm) {
      return List.of();
    }

    @Override
    public List<Step> corners(List<Bound> bounds) {
      List<Step> corners = new ArrayList<>();
      corners.add(new Step(targetDx, targetDy, 0));
      for (int i = 0; i < bounds.size(); i++) {
        Bound p = bounds.get(i);
        double lack = -p.value(new Step(targetDx, targetDy, 0));
        double square = p.a * p.a + p.b * p.b;
        corners.add(new Step(targetDx + p.a * lack / square, targetDy + p.b * lack / square, 0));
        for (int j = i + 1; j < bounds.size(); j++) {
          cross(p, bounds.get(j), corners);
        }
      }
      return corners;
    }

    @Override
    public boolean better(Step candidate, Step best) {
      return distance(candidate) < distance(best);
    }

    private double distance(Step step) {
      return Math.hypot(step.dx() - targetDx, step.dy() - targetDy);
    }
  }
}
