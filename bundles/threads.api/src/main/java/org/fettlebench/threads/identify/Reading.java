package org.fettlebench.threads.identify;

import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;

/**
 * A measured length.
 *
 * @param value above 0
 * @param uncertainty standard uncertainty, above 0 and below the value
 */
public record Reading(Length value, Length uncertainty) {
  /**
   * Checks the figures.
   *
   * @throws MeasureException if one is outside its range
   */
  public Reading {
    if (!value.isPositive()) {
      throw new MeasureException("a reading of " + value + " must be above 0 mm");
    }
    if (!(uncertainty.isPositive() && uncertainty.compareTo(value) < 0)) {
      throw new MeasureException(
          "uncertainty %s of a reading of %s must be above 0 mm and below the reading"
              .formatted(uncertainty, value));
    }
  }
}
