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
    return distanceMm >= 0 && feature.hollow() && feature.hollowAt(centreX(), centreY());
  }

  /** Returns how the feature stands to a shifted centre, where {@link #hollow}. */
  Touch shifted(double dx, double dy) {
    return feature.inwards(centreX() + dx, centreY() + dy);
  }

  /** From its nearest point up the rise lies the centre that the touch is about. */
  private double centreX() {
    return nearX + riseX * distanceMm;
  }

  private double centreY() {
    return nearY + riseY * distanceMm;
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
