package org.fettlebench.fits.internal;

import org.fettlebench.fits.SeatAnswer.Governing;
import org.fettlebench.measure.Point;

/**
 * How a feature stands to one centre.
 *
 * @param feature the feature
 * @param roomMm distance less what is needed; negative when it fails
 * @param riseX how the room grows per millimetre to the right
 * @param riseY how the room grows per millimetre away
 * @param distanceMm to its nearest point; negative on the wrong side
 * @param nearX its nearest point
 * @param nearY its nearest point
 */
record Touch(
    Feature feature,
    double roomMm,
    double riseX,
    double riseY,
    double distanceMm,
    double nearX,
    double nearY) {

  /** Returns the room at a shift from the centre, as far as a straight line can tell it. */
  double roomAfter(double dx, double dy) {
    return roomMm + riseX * dx + riseY * dy;
  }

  Governing governing() {
    return new Governing(
        feature.label().kind(),
        feature.label().name(),
        feature.from(),
        feature.to(),
        new Point(nearX, nearY),
        distanceMm,
        distanceMm - roomMm);
  }
}
