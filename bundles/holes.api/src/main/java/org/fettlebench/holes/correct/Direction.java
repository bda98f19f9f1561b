package org.fettlebench.holes.correct;

import java.util.Locale;
import org.fettlebench.fits.Eighths;

/**
 * A direction on a face as the person looks at it.
 *
 * @param degrees anticlockwise from the right, at least 0 and below 360
 */
public record Direction(double degrees) {
  /**
   * Refuses what is no direction.
   *
   * @throws HoleException if the angle is outside 0 to 360, 360 excluded
   */
  public Direction {
    if (!(degrees >= 0 && degrees < 360)) {
      throw new HoleException("direction " + degrees + " degrees is outside 0 to below 360");
    }
  }

  /** Returns the direction of a step of {@code dx} to the right and {@code dy} away. */
  public static Direction of(double dx, double dy) {
    double degrees = Math.toDegrees(Math.atan2(dy, dx));
    double turned = degrees < 0 ? degrees + 360 : degrees;
    return new Direction(turned < 360 ? turned : 0);
  }

  /** Returns the direction straight against this one. */
  public Direction opposite() {
    return new Direction((degrees + 180) % 360);
  }

  /** Returns how far it leads to the right, -1 to 1. */
  public double dx() {
    return Math.cos(Math.toRadians(degrees));
  }

  /** Returns how far it leads away from the reader, -1 to 1. */
  public double dy() {
    return Math.sin(Math.toRadians(degrees));
  }

  /**
   * Returns the direction as on a clock face that lies on the work with 12 away from the reader, to
   * the half hour: {@code 4 o'clock}, {@code half past 1}.
   */
  public String clock() {
    int halves = (int) Math.round(((450 - degrees) % 360) / 15) % 24;
    int hour = halves / 2 == 0 ? 12 : halves / 2;
    return halves % 2 == 0 ? hour + " o'clock" : "half past " + hour;
  }

  /** Returns the direction by eighths of a turn: {@code right and near}. */
  public String words() {
    return Eighths.words(degrees);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%s (%s)", clock(), words());
  }
}
