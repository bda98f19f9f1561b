package org.fettlebench.desktop.seats.internal;

import java.util.Optional;
import org.fettlebench.measure.Length;

/**
 * A row of figures as they are read from a calliper; any may still be missing.
 *
 * @param at along the datum
 * @param near how far the flat reaches towards the person
 * @param far how far it reaches away
 */
record Row(Optional<Length> at, Optional<Length> near, Optional<Length> far) {
  static final Row BLANK = new Row(Optional.empty(), Optional.empty(), Optional.empty());

  static Row ofMillimetres(double at, double near, double far) {
    return new Row(
        Optional.of(Length.ofMillimetres(at)),
        Optional.of(Length.ofMillimetres(near)),
        Optional.of(Length.ofMillimetres(far)));
  }

  boolean blank() {
    return equals(BLANK);
  }

  /** Returns the same row with one figure changed: 0 along, 1 near, 2 far. */
  Row with(int column, Optional<Length> figure) {
    return new Row(
        column == 0 ? figure : at, column == 1 ? figure : near, column == 2 ? figure : far);
  }

  Optional<Length> figure(int column) {
    return column == 0 ? at : column == 1 ? near : far;
  }
}
