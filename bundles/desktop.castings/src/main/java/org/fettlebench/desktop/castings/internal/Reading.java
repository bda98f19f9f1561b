package org.fettlebench.desktop.castings.internal;

import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Spot;
import org.fettlebench.measure.Length;

/**
 * What was measured at a place of the rough casting, any figure of which may still be missing.
 *
 * @param x to the right of the rough datum
 * @param y away from the reader
 * @param z up
 * @param diameter of a round one there
 */
record Reading(Entry x, Entry y, Entry z, Entry diameter) {
  /** Column of the diameter, behind those of the axes. */
  static final int DIAMETER = 3;

  static final Reading BLANK = new Reading(Entry.BLANK, Entry.BLANK, Entry.BLANK, Entry.BLANK);

  static Reading of(Spot spot) {
    return new Reading(
        Entry.ofMillimetres(spot.xMm()),
        Entry.ofMillimetres(spot.yMm()),
        Entry.ofMillimetres(spot.zMm()),
        Entry.BLANK);
  }

  /** Returns a reading of which one axis alone is known. */
  static Reading along(Axis axis, Entry figure) {
    return BLANK.with(axis.ordinal(), figure);
  }

  Entry figure(int column) {
    return switch (column) {
      case 0 -> x;
      case 1 -> y;
      case 2 -> z;
      default -> diameter;
    };
  }

  Entry figure(Axis axis) {
    return figure(axis.ordinal());
  }

  Reading with(int column, Entry figure) {
    return new Reading(
        column == 0 ? figure : x,
        column == 1 ? figure : y,
        column == 2 ? figure : z,
        column == DIAMETER ? figure : diameter);
  }

  boolean blank() {
    return equals(BLANK);
  }

  /** Returns the place; what was not measured stands at nothing. */
  Spot spot() {
    return new Spot(mm(x), mm(y), mm(z));
  }

  private static double mm(Entry figure) {
    return figure.length().map(Length::millimetres).orElse(0.0);
  }
}
