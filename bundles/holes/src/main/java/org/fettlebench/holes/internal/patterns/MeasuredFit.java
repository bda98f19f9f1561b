package org.fettlebench.holes.internal.patterns;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.fettlebench.holes.patterns.MeasuredPattern;
import org.fettlebench.holes.patterns.MeasuredPattern.Hole;
import org.fettlebench.holes.patterns.PatternFit;
import org.fettlebench.holes.patterns.PatternFit.HoleFit;
import org.fettlebench.holes.patterns.PatternFit.Movement;
import org.fettlebench.measure.Point;
import org.fettlebench.measure.Tolerances;

/** Puts two measured parts together as well as they go. */
final class MeasuredFit {
  private final MeasuredPattern measured;
  private final int count;

  MeasuredFit(MeasuredPattern measured) {
    this.measured = measured;
    this.count = measured.upper().holes().size();
  }

  PatternFit answer() {
    Placed best =
        IntStream.range(0, measured.circleHoles() ? count : 1)
            .mapToObj(this::place)
            .min(Comparator.comparingDouble(MeasuredFit::rounded))
            .orElseThrow();
    boolean goes = best.lackMm() <= Tolerances.GEOMETRY_SLACK_MM;
    return new PatternFit(
        measured,
        goes,
        best.movement(),
        best.holes(),
        goes ? List.of() : new FitCures(measured, best.movement().holesOn()).cures(),
        !goes && new MeasuredFit(mirrored()).place(0).lackMm() <= Tolerances.GEOMETRY_SLACK_MM);
  }

  /** Positions that are equally good to a step of length stay in order: the first is taken. */
  private static double rounded(Placed placed) {
    return Math.rint(placed.lackMm() / Tolerances.GEOMETRY_SLACK_MM);
  }

  private MeasuredPattern mirrored() {
    return new MeasuredPattern(
        measured.name(),
        measured.fastenerMm(),
        measured.upper(),
        measured.lower().mirrored(),
        measured.circleHoles());
  }

  /** The parts put together, and by how much the worst hole fails. */
  record Placed(double lackMm, Movement movement, List<HoleFit> holes) {}

  /** Returns the best movement with the lower part turned on by some holes. */
  Placed place(int holesOn) {
    return place(holesOn, new double[count]);
  }

  /** Returns the best movement with more play at some upper holes. */
  Placed place(int holesOn, double[] morePlayMm) {
    Motion motion = new Motion(count);
    for (int i = 0; i < count; i++) {
      Point up = upper(i).centre();
      Point low = lower(i, holesOn).centre();
      double play = measured.playMm(i, lowerIndex(i, holesOn)) + morePlayMm[i];
      motion.add(up.xMm(), up.yMm(), low.xMm(), low.yMm(), play);
    }
    double lack = motion.least();
    return new Placed(lack, movement(motion, holesOn), holes(motion, holesOn));
  }

  private Movement movement(Motion motion, int holesOn) {
    Point middle = new Point(motion.middleX(), motion.middleY());
    return new Movement(
        middle,
        Math.toDegrees(motion.turn()),
        motion.movedX(middle.xMm(), middle.yMm()) - middle.xMm(),
        motion.movedY(middle.xMm(), middle.yMm()) - middle.yMm(),
        holesOn);
  }

  private List<HoleFit> holes(Motion motion, int holesOn) {
    List<HoleFit> holes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Point low = lower(i, holesOn).centre();
      Point moved =
          new Point(motion.movedX(low.xMm(), low.yMm()), motion.movedY(low.xMm(), low.yMm()));
      holes.add(
          new HoleFit(
              i + 1,
              lowerIndex(i, holesOn) + 1,
              upper(i).centre(),
              moved,
              moved.distanceMm(upper(i).centre()),
              measured.playMm(i, lowerIndex(i, holesOn)),
              motion.governs(i)));
    }
    return holes;
  }

  private Hole upper(int index) {
    return measured.upper().holes().get(index);
  }

  private Hole lower(int index, int holesOn) {
    return measured.lower().holes().get(lowerIndex(index, holesOn));
  }

  private int lowerIndex(int index, int holesOn) {
    return (index + holesOn) % count;
  }
}
