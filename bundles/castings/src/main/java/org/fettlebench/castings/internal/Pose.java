package org.fettlebench.castings.internal;

import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.fettlebench.castings.Spot;

/**
 * Where the drawing's frame lies in the rough one: turned about a fixed centre amid the spots, then
 * shifted. Millimetres and radians.
 */
record Pose(Vector3D centre, Rotation turn, Vector3D shift) {
  static Pose none(Vector3D centre) {
    return new Pose(centre, Rotation.IDENTITY, Vector3D.ZERO);
  }

  static Vector3D vector(Spot spot) {
    return new Vector3D(spot.xMm(), spot.yMm(), spot.zMm());
  }

  /** Returns a rough spot from the centre, in the directions of the drawing. */
  Vector3D armOf(Spot rough) {
    return turn.applyInverseTo(vector(rough).subtract(centre).subtract(shift));
  }

  /** Returns where a rough spot lies on the drawing. */
  Vector3D onDrawing(Spot rough) {
    return centre.add(armOf(rough));
  }

  /**
   * Returns the pose after a further small movement, both in the directions of the drawing.
   *
   * @param step shift in millimetres
   * @param small turn as a vector in radians
   */
  Pose moved(Vector3D step, Vector3D small) {
    double angle = small.getNorm();
    Rotation further =
        angle == 0
            ? Rotation.IDENTITY
            : new Rotation(small, angle, RotationConvention.VECTOR_OPERATOR);
    Rotation next = turn.applyTo(further);
    return new Pose(centre, next, shift.add(next.applyTo(step)));
  }

  /** Returns the whole turn as a vector: its length the angle in radians. */
  Vector3D turned() {
    double angle = turn.getAngle();
    return angle == 0
        ? Vector3D.ZERO
        : turn.getAxis(RotationConvention.VECTOR_OPERATOR).scalarMultiply(angle);
  }

  /** Returns where the drawing's datum lies in the rough frame. */
  Vector3D datum() {
    return centre.add(shift).subtract(turn.applyTo(centre));
  }
}
