package org.fettlebench.castings.internal;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.RoundFace;

/** The rough skin of one feature: what comes off at its spots in a pose, and how that changes. */
abstract class Skin {
  /**
   * What a small movement does to the spare at a spot: spare + shift . step + turn . small, never
   * less than what is true (for a bore or boss a tangent of it).
   */
  record Slope(double spareMm, Vector3D shift, Vector3D turn) {}

  private final double takenMm;

  private Skin(double leastCutMm, double uncertaintyMm) {
    this.takenMm = leastCutMm + uncertaintyMm;
  }

  static Skin of(Feature feature) {
    return feature instanceof FlatFace flat ? new Flat(flat) : new Round((RoundFace) feature);
  }

  /** Returns what comes off at each spot. */
  abstract List<Double> comesOffMm(Pose pose);

  /** Takes up the slopes that a pose shows and that were not known; returns whether there were. */
  boolean learn(Pose pose) {
    return false;
  }

  /** Returns the slopes at all spots. */
  abstract List<Slope> slopes(Pose pose);

  /** Returns the least spare of all spots. */
  double spareMm(Pose pose) {
    return comesOffMm(pose).stream().mapToDouble(Double::doubleValue).min().orElseThrow() - takenMm;
  }

  double takenMm() {
    return takenMm;
  }

  static Vector3D unit(Axis axis) {
    return switch (axis) {
      case X -> Vector3D.PLUS_I;
      case Y -> Vector3D.PLUS_J;
      case Z -> Vector3D.PLUS_K;
    };
  }

  /**
   * Returns the slope of normal . place, where a spot's place on the drawing moves by -step - small
   * x arm.
   */
  final Slope slope(double comesOffMm, Vector3D normal, Vector3D arm) {
    // normal . (small x arm) = small . (arm x normal)
    return new Slope(comesOffMm - takenMm, normal.negate(), arm.crossProduct(normal).negate());
  }

  private static final class Flat extends Skin {
    private final FlatFace face;
    private final Vector3D out;

    Flat(FlatFace face) {
      super(face.leastCutMm(), face.uncertaintyMm());
      this.face = face;
      this.out = unit(face.towards().axis()).scalarMultiply(face.towards().sign());
    }

    @Override
    List<Double> comesOffMm(Pose pose) {
      double finished = face.towards().sign() * face.finishedMm();
      return face.rough().stream()
          .map(spot -> pose.onDrawing(spot).dotProduct(out) - finished)
          .toList();
    }

    @Override
    List<Slope> slopes(Pose pose) {
      List<Double> off = comesOffMm(pose);
      List<Slope> slopes = new ArrayList<>();
      for (int i = 0; i < off.size(); i++) {
        slopes.add(slope(off.get(i), out, pose.armOf(face.rough().get(i))));
      }
      return slopes;
    }
  }

  /**
   * Round spare is a cone over the place of the centre. Every tangent of it holds everywhere, so
   * those that were needed once are kept, and the programmes come to the cone from outside.
   */
  private static final class Round extends Skin {
    private static final int FIRST_TANGENTS = 24;

    /**
     * Tangents this close, in radians, differ from the cone by a thousand-millionth of its radius.
     */
    private static final double SAME_WAY = 3e-4;

    private final RoundFace face;
    private final Vector3D along;
    private final Vector3D centre;
    private final List<Vector3D> ways = new ArrayList<>();

    Round(RoundFace face) {
      super(face.leastCutMm(), face.uncertaintyMm());
      this.face = face;
      this.along = unit(face.along());
      this.centre = Pose.vector(face.finishedCentre());
      Vector3D first = along.orthogonal();
      Vector3D second = along.crossProduct(first);
      for (int i = 0; i < FIRST_TANGENTS; i++) {
        double angle = 2 * Math.PI * i / FIRST_TANGENTS;
        ways.add(new Vector3D(Math.cos(angle), first, Math.sin(angle), second));
      }
    }

    private double evenMm(RoundFace.Rough rough) {
      double difference = face.finishedDiameterMm() - rough.diameterMm();
      return (face.kind() == RoundFace.Kind.BORE ? difference : -difference) / 2;
    }

    private Vector3D outOfCentre(Pose pose, RoundFace.Rough rough) {
      Vector3D from = pose.onDrawing(rough.centre()).subtract(centre);
      return from.subtract(along.scalarMultiply(from.dotProduct(along)));
    }

    @Override
    List<Double> comesOffMm(Pose pose) {
      return face.rough().stream()
          .map(rough -> evenMm(rough) - outOfCentre(pose, rough).getNorm())
          .toList();
    }

    @Override
    boolean learn(Pose pose) {
      return face.rough().stream().filter(rough -> keep(outOfCentre(pose, rough))).count() > 0;
    }

    @Override
    List<Slope> slopes(Pose pose) {
      learn(pose);
      List<Slope> slopes = new ArrayList<>();
      for (RoundFace.Rough rough : face.rough()) {
        Vector3D out = outOfCentre(pose, rough);
        for (Vector3D way : ways) {
          slopes.add(
              slope(evenMm(rough) - out.dotProduct(way), way.negate(), pose.armOf(rough.centre())));
        }
      }
      return slopes;
    }

    private boolean keep(Vector3D out) {
      if (!(out.getNorm() > 0)) {
        return false;
      }
      Vector3D way = out.normalize();
      boolean isNew = ways.stream().noneMatch(known -> known.distance(way) < SAME_WAY);
      if (isNew) {
        ways.add(way);
      }
      return isNew;
    }
  }
}
