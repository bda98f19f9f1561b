package org.fettlebench.castings.internal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.PointValuePair;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.linear.UnboundedSolutionException;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Freedom;

/**
 * The linear programme about one pose: the small movement, within the freedoms, that makes a least
 * spare as large as it can be.
 *
 * <p>Unknowns: a shift and a turn for each free axis, turns scaled by the size of the casting so
 * that all are millimetres, and the spare that is asked for.
 */
final class Movement {
  /** A movement and the least spare that it promises. */
  record Best(Vector3D step, Vector3D small, double spareMm) {
    static final Best STILL = new Best(Vector3D.ZERO, Vector3D.ZERO, 0);

    /** Returns the spare of a feature after the movement, reckoned straight. */
    double spareMm(List<Skin.Slope> slopes) {
      return slopes.stream().mapToDouble(this::spareMm).min().orElseThrow();
    }

    /** Returns the spare at one spot, towards one side, after the movement. */
    double spareMm(Skin.Slope slope) {
      return slope.spareMm() + slope.shift().dotProduct(step) + slope.turn().dotProduct(small);
    }
  }

  /** One feature: its slopes, and the spare that it must keep, or empty when it is asked for. */
  record Wanted(List<Skin.Slope> slopes, Optional<Double> keepsMm) {}

  // Figures are up to some hundred millimetres; the answer is wanted to a nanometre.
  private static final double EPSILON = 1e-10;
  private static final int MOST_ITERATIONS = 20_000;

  /** Slopes of a feature that are used from the beginning, about; enough to hold it all round. */
  private static final int FIRST_SLOPES = 4;

  /** A slope that is broken by less was met, as closely as the programme can tell. */
  private static final double BROKEN_MM = 1e-9;

  private final List<Axis> shifts;
  private final List<Axis> turns;
  private final double reachMm;
  private final Collection<LinearConstraint> limits = new ArrayList<>();
  private final Set<Skin.Slope> used = Collections.newSetFromMap(new IdentityHashMap<>());

  /**
   * Begins with the freedoms alone.
   *
   * @param turned the turn that the pose has already, radians
   * @param mostStep the largest turn of this movement about each axis, radians
   * @param reachMm size of the casting, for scaling
   */
  Movement(Freedom freedom, Vector3D turned, double mostStep, double reachMm) {
    this.shifts = freedom.shifts().stream().sorted().toList();
    this.turns = freedom.turns().stream().sorted().toList();
    this.reachMm = reachMm;
    double most = Math.toRadians(freedom.mostTurnDegrees());
    for (int i = 0; i < turns.size(); i++) {
      double[] row = new double[width()];
      row[shifts.size() + i] = 1;
      double now = along(turned, turns.get(i));
      limits.add(
          new LinearConstraint(row, Relationship.LEQ, Math.min(most - now, mostStep) * reachMm));
      limits.add(
          new LinearConstraint(row, Relationship.GEQ, Math.max(-most - now, -mostStep) * reachMm));
    }
  }

  private int width() {
    return shifts.size() + turns.size() + 1;
  }

  private static double along(Vector3D vector, Axis axis) {
    return vector.dotProduct(Skin.unit(axis));
  }

  /** Returns the best movement, where nothing is kept that standing still would break. */
  Best best(List<Wanted> wanted) {
    return best(wanted, Best.STILL);
  }

  /**
   * Returns the best movement. The programme begins from one that is allowed, so that none has to
   * be looked for, which rounding could hide.
   *
   * @param from keeps what is to be kept, but for rounding
   * @throws org.apache.commons.math3.optim.linear.UnboundedSolutionException when nothing holds the
   *     part
   */
  Best best(List<Wanted> wanted, Best from) {
    // Of a bore's many tangents few ever bind: begin with some, add what a movement would break.
    wanted.forEach(this::begin);
    while (true) {
      Optional<Best> best = solve(wanted, from);
      boolean broken = best.isEmpty();
      for (Wanted one : wanted) {
        broken |= best.isPresent() && useMostBroken(one, best.get());
      }
      if (!broken) {
        return best.get();
      }
    }
  }

  private void begin(Wanted one) {
    int count = one.slopes().size();
    int step = Math.max(1, count / FIRST_SLOPES);
    for (int i = 0; i < count; i += step) {
      used.add(one.slopes().get(i));
    }
  }

  /** Takes the slope of a feature that a movement breaks most into use; returns whether it did. */
  private boolean useMostBroken(Wanted one, Best best) {
    double asked = one.keepsMm().orElse(best.spareMm());
    return one.slopes().stream()
        .min(Comparator.comparingDouble(best::spareMm))
        .filter(slope -> best.spareMm(slope) < asked - BROKEN_MM)
        .filter(used::add)
        .isPresent();
  }

  /** Returns the best movement; empty when more slopes were taken into use to hold the part. */
  private Optional<Best> solve(List<Wanted> wanted, Best from) {
    try {
      return Optional.of(solveUsed(wanted, from));
    } catch (UnboundedSolutionException loose) {
      boolean more = false;
      for (Wanted one : wanted) {
        more |= used.addAll(one.slopes());
      }
      if (!more) {
        throw loose;
      }
      return Optional.empty();
    }
  }

  private Best solveUsed(List<Wanted> wanted, Best from) {
    List<LinearConstraint> rows = new ArrayList<>(limits);
    double leastMm = Double.POSITIVE_INFINITY;
    for (Wanted one : wanted) {
      for (Skin.Slope slope : one.slopes()) {
        if (used.contains(slope)) {
          rows.add(row(slope, one.keepsMm()));
          if (one.keepsMm().isEmpty()) {
            leastMm = Math.min(leastMm, from.spareMm(slope));
          }
        }
      }
    }
    double[] objective = new double[width()];
    objective[width() - 1] = 1;
    RealVector start = unknowns(from, leastMm);
    PointValuePair found =
        new SimplexSolver(EPSILON)
            .optimize(
                new LinearObjectiveFunction(objective, 0),
                new LinearConstraintSet(rows.stream().map(row -> beyond(row, start)).toList()),
                GoalType.MAXIMIZE,
                new NonNegativeConstraint(false),
                new MaxIter(MOST_ITERATIONS));
    return read(start.add(new ArrayRealVector(found.getPoint(), false)).toArray());
  }

  /** Returns a row for what goes beyond a start that meets it, but for rounding. */
  private static LinearConstraint beyond(LinearConstraint row, RealVector start) {
    double sign = row.getRelationship() == Relationship.LEQ ? 1 : -1;
    double left = sign * (row.getValue() - row.getCoefficients().dotProduct(start));
    return new LinearConstraint(
        row.getCoefficients().mapMultiply(sign), Relationship.LEQ, Math.max(0, left));
  }

  private RealVector unknowns(Best movement, double spareMm) {
    RealVector all = new ArrayRealVector(width());
    for (int i = 0; i < shifts.size(); i++) {
      all.setEntry(i, along(movement.step(), shifts.get(i)));
    }
    for (int i = 0; i < turns.size(); i++) {
      all.setEntry(shifts.size() + i, along(movement.small(), turns.get(i)) * reachMm);
    }
    all.setEntry(width() - 1, spareMm);
    return all;
  }

  /** Returns spare + movement >= asked, or >= what must be kept. */
  private LinearConstraint row(Skin.Slope slope, Optional<Double> keeps) {
    double[] row = new double[width()];
    for (int i = 0; i < shifts.size(); i++) {
      row[i] = along(slope.shift(), shifts.get(i));
    }
    for (int i = 0; i < turns.size(); i++) {
      row[shifts.size() + i] = along(slope.turn(), turns.get(i)) / reachMm;
    }
    row[width() - 1] = keeps.isPresent() ? 0 : -1;
    return new LinearConstraint(row, Relationship.GEQ, keeps.orElse(0.0) - slope.spareMm());
  }

  private Best read(double[] point) {
    Vector3D step = Vector3D.ZERO;
    for (int i = 0; i < shifts.size(); i++) {
      step = step.add(point[i], Skin.unit(shifts.get(i)));
    }
    Vector3D small = Vector3D.ZERO;
    for (int i = 0; i < turns.size(); i++) {
      small = small.add(point[shifts.size() + i] / reachMm, Skin.unit(turns.get(i)));
    }
    return new Best(step, small, point[width() - 1]);
  }

  /** Returns the wish that the least spare of all be large. */
  static List<Wanted> allAsked(List<List<Skin.Slope>> slopes) {
    return slopes.stream().map(all -> new Wanted(all, Optional.empty())).toList();
  }
}
