package org.fettlebench.castings.internal;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.CastingView;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.castings.Towards;
import org.fettlebench.measure.Point;

/** Where the finished part lies on paper, and how far it reaches along each axis. */
final class PlacedPart {
  /** A side that nothing bounds is drawn at least this share of the largest size away. */
  private static final double OPEN_SHARE = 0.3;

  /** Along an axis that nothing was measured along it is drawn this much of the largest size. */
  private static final double UNKNOWN_SHARE = 1.5;

  private static final double SMALLEST_MM = 1;

  private final Placing placing;
  private final CastingView view;
  private final Rotation turn;
  private final Vector3D datum;
  private final Map<Axis, double[]> reach = new EnumMap<>(Axis.class);

  PlacedPart(Placing placing, CastingView view) {
    this.placing = placing;
    this.view = view;
    this.datum = Pose.vector(placing.shift());
    Vector3D turned = Pose.vector(placing.turnDegrees()).scalarMultiply(Math.PI / 180);
    this.turn =
        turned.getNorm() == 0
            ? Rotation.IDENTITY
            : new Rotation(turned, turned.getNorm(), RotationConvention.VECTOR_OPERATOR);
    for (Axis axis : Axis.values()) {
      reach.put(axis, measured(axis));
    }
    widen();
  }

  /** Returns the outermost face that looks a way. */
  Optional<Placing.Coming> outermost(Towards towards) {
    return placing.features().stream()
        .filter(one -> one.feature() instanceof FlatFace face && face.towards() == towards)
        .max(
            (one, other) ->
                Double.compare(
                    towards.sign() * ((FlatFace) one.feature()).finishedMm(),
                    towards.sign() * ((FlatFace) other.feature()).finishedMm()));
  }

  double low(Axis axis) {
    return reach.get(axis)[0];
  }

  double high(Axis axis) {
    return reach.get(axis)[1];
  }

  double size(Axis axis) {
    return high(axis) - low(axis);
  }

  private double middle(Axis axis) {
    return (low(axis) + high(axis)) / 2;
  }

  /** Returns a rough spot in the drawing's frame. */
  Spot onDrawing(Spot rough) {
    Vector3D place = turn.applyInverseTo(Pose.vector(rough).subtract(datum));
    return new Spot(place.getX(), place.getY(), place.getZ());
  }

  /** Returns a spot of the rough frame on paper. */
  Point onPaper(Spot rough) {
    return new Point(rough.alongMm(view.across()), rough.alongMm(view.up()));
  }

  /** Returns a place of the drawing's frame on paper, amid the part along the line of sight. */
  Point placed(double across, double up) {
    Vector3D place =
        Skin.unit(view.across())
            .scalarMultiply(across)
            .add(Skin.unit(view.up()).scalarMultiply(up))
            .add(Skin.unit(view.along()).scalarMultiply(middle(view.along())));
    Vector3D rough = turn.applyTo(place).add(datum);
    return onPaper(new Spot(rough.getX(), rough.getY(), rough.getZ()));
  }

  private double[] measured(Axis axis) {
    List<Double> all = new ArrayList<>();
    for (Feature feature : placing.casting().features()) {
      if (feature instanceof FlatFace face) {
        all.addAll(
            face.towards().axis() == axis
                ? List.of(face.finishedMm())
                : face.rough().stream().map(spot -> onDrawing(spot).alongMm(axis)).toList());
      } else {
        RoundFace round = (RoundFace) feature;
        double half = round.along() == axis ? 0 : round.finishedDiameterMm() / 2;
        double centre = round.finishedCentre().alongMm(axis);
        all.addAll(List.of(centre - half, centre + half));
      }
    }
    double low = all.stream().mapToDouble(Double::doubleValue).min().orElse(0);
    double high = all.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    return new double[] {
      face(axis, -1).orElse(Math.min(low, high)), face(axis, 1).orElse(Math.max(low, high))
    };
  }

  private Optional<Double> face(Axis axis, int sign) {
    for (Towards towards : Towards.values()) {
      if (towards.axis() == axis && towards.sign() == sign) {
        return outermost(towards).map(one -> ((FlatFace) one.feature()).finishedMm());
      }
    }
    return Optional.empty();
  }

  /** Returns whether it is known how far the part reaches along an axis, by a face or a boss. */
  boolean bounded(Axis axis, int sign) {
    return face(axis, sign).isPresent()
        || placing.casting().features().stream()
            .anyMatch(
                one ->
                    one instanceof RoundFace round
                        && round.kind() == RoundFace.Kind.BOSS
                        && round.along() != axis);
  }

  private void widen() {
    double largest = SMALLEST_MM;
    for (Axis axis : Axis.values()) {
      largest = Math.max(largest, size(axis));
    }
    for (Axis axis : Axis.values()) {
      double share = size(axis) < SMALLEST_MM ? UNKNOWN_SHARE : OPEN_SHARE;
      double lacks = share * largest - size(axis);
      boolean lowOpen = face(axis, -1).isEmpty();
      boolean highOpen = face(axis, 1).isEmpty();
      double[] ends = reach.get(axis);
      if (lacks > 0 && lowOpen) {
        ends[0] -= highOpen ? lacks / 2 : lacks;
      }
      if (lacks > 0 && highOpen) {
        ends[1] += lowOpen ? lacks / 2 : lacks;
      }
    }
  }
}
