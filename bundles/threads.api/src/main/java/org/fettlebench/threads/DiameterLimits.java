package org.fettlebench.threads;

import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Source;

/**
 * What a class of thread allows a diameter to be.
 *
 * @param threadClass standard and class, such as {@code ISO 965-1 6H}
 * @param least smallest diameter allowed
 * @param most largest diameter allowed, not below the least
 * @param source of the limits
 */
public record DiameterLimits(String threadClass, Length least, Length most, Source source) {
  /**
   * Checks the order of the two.
   *
   * @throws MeasureException if the most is below the least
   */
  public DiameterLimits {
    if (!(least.compareTo(most) <= 0)) {
      throw new MeasureException(
          threadClass + ": the most, " + most + ", is below the least, " + least);
    }
  }

  /** Returns whether a diameter is inside, the limits included. */
  public boolean allow(Length diameter) {
    return diameter.compareTo(least) >= 0 && diameter.compareTo(most) <= 0;
  }
}
