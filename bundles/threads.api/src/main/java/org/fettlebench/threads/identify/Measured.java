package org.fettlebench.threads.identify;

import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ThreadSide;

/**
 * What was measured on one thread.
 *
 * @param side screw or nut
 * @param diameter outside diameter of a screw, or bore of a nut
 * @param pitch pitch, or one inch over the threads per inch
 * @param hexagon across the flats
 * @param wear by how much a worn thread may be smaller (a worn nut larger); not negative
 */
public record Measured(
    ThreadSide side,
    Optional<Reading> diameter,
    Optional<Reading> pitch,
    Optional<Reading> hexagon,
    Length wear) {
  /**
   * Checks what there is.
   *
   * @throws MeasureException if neither diameter nor pitch was measured, or the wear is negative
   */
  public Measured {
    if (diameter.isEmpty() && pitch.isEmpty()) {
      throw new MeasureException("a diameter or a pitch must be measured to name a thread");
    }
    if (wear.compareTo(Length.ZERO) < 0) {
      throw new MeasureException("wear " + wear + " must not be below 0 mm");
    }
  }
}
