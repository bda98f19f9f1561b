package org.fettlebench.tooling.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.tooling.BlindHole;
import org.fettlebench.tooling.HoleChooser.BlindHoleRequest;
import org.fettlebench.tooling.internal.BlindAllowances.Allowance;

/** Works out the depths of a blind tapped hole. */
final class BlindDepths {
  private BlindDepths() {}

  static BlindHole of(BlindHoleRequest request, List<BlindAllowances> tables) {
    Allowance lead = BlindAllowances.of(BlindAllowances.leadName(request.lead()), tables);
    Allowance chips = BlindAllowances.of(BlindAllowances.CHIP_ROOM, tables);
    Allowance floor = BlindAllowances.of(BlindAllowances.THIN_FLOOR, tables);
    Length tapLead = times(request.thread().pitch(), lead.value());
    Length chipRoom = times(request.thread().pitch(), chips.value());
    Length shoulder = request.fullThread().plus(tapLead).plus(chipRoom);
    Length point = point(request);
    Length tip = shoulder.plus(point);
    Length left = request.metal().minus(tip);
    return new BlindHole(
        request.fullThread(),
        tapLead,
        chipRoom,
        shoulder,
        point,
        tip,
        left,
        concerns(request, left, floor),
        !left.isPositive(),
        List.of(lead.source(), chips.source(), floor.source()));
  }

  private static Length times(Length length, double factor) {
    return Length.ofMillimetres(length.millimetres() * factor);
  }

  /** d / 2 / tan(angle / 2); nothing for a flat drill. */
  private static Length point(BlindHoleRequest request) {
    double half = Math.toRadians(request.pointAngleDegrees() / 2);
    return request.pointAngleDegrees() == 180
        ? Length.ZERO
        : Length.ofMillimetres(request.drill().diameter().millimetres() / 2 / Math.tan(half));
  }

  private static List<String> concerns(BlindHoleRequest request, Length left, Allowance floor) {
    List<String> concerns = new ArrayList<>();
    Length thin = times(request.drill().diameter(), floor.value());
    if (!left.isPositive()) {
      concerns.add(
          "error: the drill's point breaks through: the metal is %s, the point would reach %s"
              .formatted(show(request.metal()), show(request.metal().minus(left))));
    } else if (left.compareTo(thin) < 0) {
      concerns.add(
          "warning: thin floor: %s is left under the point, less than %s (%s drill diameters; %s)"
              .formatted(show(left), show(thin), floor.value(), floor.source().standing().words()));
    }
    return concerns;
  }

  private static String show(Length length) {
    return LengthFormat.showBoth(length, LengthUnit.MILLIMETRE);
  }
}
