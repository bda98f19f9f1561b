package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Spanner;

/** What rises above the flat about the hole, tier by tier: what bears, the head, the spanner. */
final class Tiers {
  private final Tier bearing;
  private final List<Tier> tiers;

  /**
   * Something about the hole's centre.
   *
   * @param words for people
   * @param sweep its shape from above
   * @param fromMm how far above the flat it begins
   */
  record Tier(String words, Sweep sweep, double fromMm) {
    /** Returns how far off a wall's foot it must stay besides its own shape. */
    double off(Seat.Wall wall) {
      return filletReachMm(wall, fromMm);
    }
  }

  private Tiers(Tier bearing, List<Tier> tiers) {
    this.bearing = bearing;
    this.tiers = tiers;
  }

  /** Returns the tiers with an open spanner, if there is one, coming from a direction. */
  static Tiers of(SeatedHead head, double spannerFromRadians) {
    double lift = head.washer().map(SeatedHead.Washer::thicknessMm).orElse(0.0);
    Tier body = new Tier("head", Sweep.head(head), lift);
    Tier bearing = bearing(head).orElse(body);
    List<Tier> tiers = new ArrayList<>();
    tiers.add(body);
    if (bearing != body) {
      tiers.add(bearing);
    }
    head.spanner()
        .filter(spanner -> head.acrossFlatsMm().isPresent())
        .ifPresent(spanner -> tiers.add(tier(spanner, head, lift, spannerFromRadians)));
    return new Tiers(bearing, tiers);
  }

  private static Optional<Tier> bearing(SeatedHead head) {
    if (head.washer().isPresent()) {
      double radius = head.washer().get().diameterMm() / 2;
      return Optional.of(new Tier("washer", Sweep.circle(radius), 0));
    }
    OptionalDouble face = head.bearingDiameterMm();
    return face.isPresent()
        ? Optional.of(new Tier("washer face", Sweep.circle(face.getAsDouble() / 2), 0))
        : Optional.empty();
  }

  private static Tier tier(Spanner spanner, SeatedHead head, double lift, double fromRadians) {
    double radius = spanner.headDiameterMm() / 2;
    Sweep sweep =
        spanner.kind() == Spanner.Kind.OPEN
            ? Sweep.openSpanner(radius, head.sweepDiameterMm() / 2, fromRadians)
            : Sweep.circle(radius);
    return new Tier(spanner.kind().part(), sweep, lift + spanner.liftMm());
  }

  /** Returns all of them, as they are seen from above. */
  List<Tier> all() {
    return tiers;
  }

  /** Returns what bears on the flat. */
  Tier bearing() {
    return bearing;
  }

  /** Returns what a wall would meet: of round ones only the one that reaches farthest. */
  List<Tier> meeting(Seat.Wall wall) {
    return outermost(
        tiers.stream().filter(tier -> tier.fromMm() < wall.heightMm()).toList(),
        Comparator.comparingDouble(tier -> tier.sweep().radiusMm() + tier.off(wall)));
  }

  /** Returns what another head would meet. */
  List<Tier> meeting(Seat.Neighbour other) {
    double height = other.heightMm().orElse(Double.POSITIVE_INFINITY);
    return outermost(
        tiers.stream().filter(tier -> tier.fromMm() < height).toList(),
        Comparator.comparingDouble(tier -> tier.sweep().radiusMm()));
  }

  private static List<Tier> outermost(List<Tier> tiers, Comparator<Tier> reach) {
    List<Tier> met = new ArrayList<>(tiers.stream().filter(each -> !each.sweep().round()).toList());
    Tier farthest = null;
    for (Tier tier : tiers) {
      if (tier.sweep().round() && (farthest == null || reach.compare(tier, farthest) > 0)) {
        farthest = tier;
      }
    }
    if (farthest != null) {
      met.add(farthest);
    }
    return met;
  }

  /**
   * Returns how far a fillet reaches out from its wall at a height above the flat: all its radius
   * at the flat (or sqrt(2 r h - h h) where the wall ends before the arc does), less sqrt(2 r z - z
   * z) at the height z, and nothing above it.
   */
  static double filletReachMm(Seat.Wall wall, double atMm) {
    double radius = wall.filletRadiusMm();
    double top = Math.min(wall.heightMm(), radius);
    return atMm >= top ? 0 : rise(radius, top) - rise(radius, atMm);
  }

  private static double rise(double radius, double height) {
    return Math.sqrt(height * (2 * radius - height));
  }
}
