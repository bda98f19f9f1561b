package org.fettlebench.fits;

import java.util.OptionalDouble;

/**
 * A head, nut or washer as it will sit.
 *
 * @param title for people, such as {@code 2 BA hexagon}
 * @param sweepDiameterMm circle it sweeps when turned: across corners, or the diameter when round
 * @param acrossFlatsMm of a hexagon; empty when round
 * @param heightMm height above the flat, where known
 * @param flatsAlongDegrees set with flats parallel to this direction; empty when turned anywhere
 * @param caveat why the figures are less than certain ("from memory"), empty when published
 */
public record SeatedHead(
    String title,
    double sweepDiameterMm,
    OptionalDouble acrossFlatsMm,
    OptionalDouble heightMm,
    OptionalDouble flatsAlongDegrees,
    String caveat) {

  /**
   * Returns the same head set with its flats parallel to a direction.
   *
   * @param degrees anticlockwise from x
   */
  public SeatedHead withFlatsAlong(double degrees) {
    return new SeatedHead(
        title, sweepDiameterMm, acrossFlatsMm, heightMm, OptionalDouble.of(degrees), caveat);
  }
}
