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

  /** Returns whether a straight step may overrate its room: inside an arc, on the right side. */
  boolean hollow() {
    return distanceMm >= 0 && feature.hollow();
  }

  Governing governing() {
    Label label = feature.label();
    return new Governing(
        label.kind(),
        label.words(),
        label.meets(),
        feature.line(),
        new Point(nearX, nearY),
        distanceMm,
        distanceMm - roomMm);
  }
}
