package org.fettlebench.desktop.seats.internal;

import java.util.Optional;
import org.fettlebench.fits.SeatAnswer;

/**
 * What can be said of a sketch.
 *
 * @param answer there when everything needed is
 * @param next what to do next, or what is wrong; empty when there is an answer
 * @param wrong whether {@code next} tells of something wrong rather than missing
 */
record Reply(Optional<SeatAnswer> answer, String next, boolean wrong) {
  static Reply of(SeatAnswer answer) {
    return new Reply(Optional.of(answer), "", false);
  }

  static Reply missing(String next) {
    return new Reply(Optional.empty(), next, false);
  }

  static Reply refused(String why) {
    return new Reply(Optional.empty(), why, true);
  }
}
