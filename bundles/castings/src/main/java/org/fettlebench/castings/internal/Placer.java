package org.fettlebench.castings.internal;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.fettlebench.castings.Casting;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Freedom;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;

/**
 * Finds the pose of a casting: first the greatest least spare, by linear programmes about one pose
 * after another (a turn is straight only while it is small); then, with what governs held, the
 * greatest least spare of the rest, until nothing is free.
 */
final class Placer {
  /** Below this nobody could measure a difference, and the programme could not tell one. */
  static final double SAME_MM = 1e-7;

  private static final int MOST_STEPS = 200;

  /** How often a bore or boss may learn before a shorter turn is tried. */
  private static final int PATIENCE = 5;

  /** Radians below which a turn moves no spot by what could be told. */
  private static final double LEAST_TURN = 1e-11;

  /** Radians within which a turn is straight to a thousandth of a micrometre for bench sizes. */
  private static final double NEAR_TURN = 1e-4;

  /** What sharing out the rest may cost the least spare. */
  private static final double LOST_MM = 1e-6;

  private static final int MOST_SHARINGS = 12;

  private final List<Skin> skins;
  private final Freedom freedom;
  private final Vector3D centre;
  private final double reachMm;

  /** A pose with the features that hold the least spare down. */
  record Placed(Pose pose, double spareMm, List<Integer> governing) {}

  Placer(Casting casting) {
    this.skins = casting.features().stream().map(Skin::of).toList();
    this.freedom = casting.freedom();
    List<Vector3D> spots = casting.features().stream().flatMap(Placer::spots).toList();
    this.centre =
        spots.stream().reduce(Vector3D.ZERO, Vector3D::add).scalarMultiply(1.0 / spots.size());
    this.reachMm = spots.stream().mapToDouble(s -> s.distance(centre)).max().orElse(0) + 1;
  }

  private static Stream<Vector3D> spots(Feature feature) {
    Stream<Spot> rough =
        feature instanceof FlatFace flat
            ? flat.rough().stream()
            : ((RoundFace) feature).rough().stream().map(RoundFace.Rough::centre);
    return rough.map(Pose::vector);
  }

  /** Returns the greatest least spare, without settling the rest. */
  double spareMm() {
    return leastSpare(settle(Pose.none(centre)));
  }

  Placed place() {
    Pose best = settle(Pose.none(centre));
    double spareMm = leastSpare(best);
    Sharing sharing = new Sharing(movement(best, NEAR_TURN), slopes(best));
    List<Integer> governing = sharing.governing();
    for (int i = 0; i < MOST_SHARINGS; i++) {
      Movement.Best shared = sharing.share();
      Pose pose = best.moved(shared.step(), shared.small());
      if (leastSpare(pose) >= spareMm - LOST_MM) {
        return new Placed(pose, leastSpare(pose), governing);
      }
      // A bore or boss seemed to have room where none was known: now it is.
      learn(pose);
      sharing = new Sharing(movement(best, NEAR_TURN), slopes(best));
    }
    return new Placed(best, spareMm, governing);
  }

  private double leastSpare(Pose pose) {
    return skins.stream().mapToDouble(skin -> skin.spareMm(pose)).min().orElseThrow();
  }

  private List<List<Skin.Slope>> slopes(Pose pose) {
    return skins.stream().map(skin -> skin.slopes(pose)).toList();
  }

  /**
   * Moves step by step until the programme promises nothing more. A turn is nearly straight only
   * near the pose, so a step that brings much less than promised is not taken; the next may turn
   * less, or knows more of bores and bosses.
   */
  private Pose settle(Pose start) {
    Pose pose = start;
    double mostTurn = Math.toRadians(freedom.mostTurnDegrees());
    int refused = 0;
    for (int i = 0; i < MOST_STEPS && mostTurn > LEAST_TURN; i++) {
      double now = leastSpare(pose);
      Movement.Best best = movement(pose, mostTurn).best(Movement.allAsked(slopes(pose)));
      double promised = best.spareMm() - now;
      if (promised < SAME_MM / 10) {
        return pose;
      }
      Pose next = pose.moved(best.step(), best.small());
      double brought = leastSpare(next) - now;
      if (brought > promised / 4) {
        pose = next;
        mostTurn = brought > promised * 3 / 4 ? mostTurn * 2 : mostTurn;
        refused = 0;
      } else if (!learn(next) || ++refused % PATIENCE == 0) {
        mostTurn /= 3;
      }
    }
    return pose;
  }

  /** Bores and bosses learn from where a step led that was not taken. */
  private boolean learn(Pose pose) {
    boolean learned = false;
    for (Skin skin : skins) {
      learned |= skin.learn(pose);
    }
    return learned;
  }

  private Movement movement(Pose pose, double mostTurn) {
    return new Movement(freedom, pose.turned(), mostTurn, reachMm);
  }
}
