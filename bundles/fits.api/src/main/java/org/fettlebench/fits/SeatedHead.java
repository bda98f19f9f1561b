package org.fettlebench.fits;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A head or nut as it will sit: what bears on the flat, what rises above it, and what turns it.
 *
 * @param title for people, such as {@code 2 BA hexagon}
 * @param sweepDiameterMm circle it sweeps when turned: across corners, or the diameter when round
 * @param acrossFlatsMm of a hexagon; empty when round
 * @param heightMm height above what it bears on, where known
 * @param flatsAlongDegrees set with flats parallel to this direction; empty when turned anywhere
 * @param bearingDiameterMm of the washer face on which it bears; empty when its whole underside
 *     bears
 * @param washer under it; empty when it bears on the flat itself
 * @param spanner that must go on it; empty when not asked
 * @param caveat why the figures are less than certain ("from memory"), empty when published
 */
public record SeatedHead(
    String title,
    double sweepDiameterMm,
    OptionalDouble acrossFlatsMm,
    OptionalDouble heightMm,
    OptionalDouble flatsAlongDegrees,
    OptionalDouble bearingDiameterMm,
    Optional<Washer> washer,
    Optional<Spanner> spanner,
    String caveat) {

  /**
   * A washer under a head or nut; round.
   *
   * @param title for people, such as {@code M4 washer}
   * @param diameterMm its outside diameter
   * @param thicknessMm how far it lifts the head
   * @param caveat why the figures are less than certain, empty when published
   */
  public record Washer(String title, double diameterMm, double thicknessMm, String caveat) {
    /** Returns the same washer turned down to a diameter, in millimetres. */
    public Washer turnedDownTo(double otherMm) {
      return new Washer(title + " turned down", otherMm, thicknessMm, caveat);
    }
  }

  /** Makes a head that bears with its whole underside, without washer or spanner. */
  public SeatedHead(
      String title,
      double sweepDiameterMm,
      OptionalDouble acrossFlatsMm,
      OptionalDouble heightMm,
      OptionalDouble flatsAlongDegrees,
      String caveat) {
    this(
        title,
        sweepDiameterMm,
        acrossFlatsMm,
        heightMm,
        flatsAlongDegrees,
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.empty(),
        caveat);
  }

  /**
   * Returns the diameter of what bears on the flat: its washer's, its washer face's, else across
   * flats or the head's own. A wider hole lets it drop through.
   */
  public double bearsOnMm() {
    return washer
        .map(Washer::diameterMm)
        .orElse(bearingDiameterMm.orElse(acrossFlatsMm.orElse(sweepDiameterMm)));
  }

  /**
   * Returns the same head set with its flats parallel to a direction.
   *
   * @param degrees anticlockwise from x
   */
  public SeatedHead withFlatsAlong(double degrees) {
    return with(OptionalDouble.of(degrees), bearingDiameterMm, washer, spanner);
  }

  /** Returns the same head turned anywhere. */
  public SeatedHead turnedAnywhere() {
    return with(OptionalDouble.empty(), bearingDiameterMm, washer, spanner);
  }

  /** Returns the same head bearing on a washer face of a diameter, in millimetres. */
  public SeatedHead withBearing(double diameterMm) {
    return with(flatsAlongDegrees, OptionalDouble.of(diameterMm), washer, spanner);
  }

  /** Returns the same head on a washer. */
  public SeatedHead withWasher(Washer other) {
    return with(flatsAlongDegrees, bearingDiameterMm, Optional.of(other), spanner);
  }

  /** Returns the same head on the flat itself. */
  public SeatedHead withoutWasher() {
    return with(flatsAlongDegrees, bearingDiameterMm, Optional.empty(), spanner);
  }

  /** Returns the same head with a spanner that must go on it. */
  public SeatedHead withSpanner(Spanner other) {
    return with(flatsAlongDegrees, bearingDiameterMm, washer, Optional.of(other));
  }

  /** Returns the same head without asking for room for a spanner. */
  public SeatedHead withoutSpanner() {
    return with(flatsAlongDegrees, bearingDiameterMm, washer, Optional.empty());
  }

  /** Returns the same head with its corners turned down to a circle, in millimetres. */
  public SeatedHead turnedDownTo(double diameterMm) {
    OptionalDouble bearing =
        bearingDiameterMm.isPresent()
            ? OptionalDouble.of(Math.min(bearingDiameterMm.getAsDouble(), diameterMm))
            : bearingDiameterMm;
    return new SeatedHead(
        title + " turned down",
        diameterMm,
        acrossFlatsMm,
        heightMm,
        OptionalDouble.empty(),
        bearing,
        washer,
        spanner,
        caveat);
  }

  private SeatedHead with(
      OptionalDouble along,
      OptionalDouble bearing,
      Optional<Washer> under,
      Optional<Spanner> turnedBy) {
    return new SeatedHead(
        title, sweepDiameterMm, acrossFlatsMm, heightMm, along, bearing, under, turnedBy, caveat);
  }
}
