package org.fettlebench.threads;

import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Source;

/**
 * What a class of thread allows one diameter to be. A standard may leave one end open, such as the
 * largest major diameter of a nut.
 *
 * @param least smallest diameter allowed, if there is one
 * @param most largest diameter allowed, if there is one; not below the least
 * @param source of the limits
 */
public record DiameterRange(Optional<Length> least, Optional<Length> most, Source source) {
  /**
   * Checks the order of the two.
   *
   * @throws MeasureException if the most is below the least
   */
  public DiameterRange {
    if (least.isPresent() && most.isPresent() && !(least.get().compareTo(most.get()) <= 0)) {
      throw new MeasureException(
          "the most, " + most.get() + ", is below the least, " + least.get());
    }
  }

  /** Returns whether a diameter is inside, the limits included. */
  public boolean allows(Length diameter) {
    return least.map(low -> diameter.compareTo(low) >= 0).orElse(true)
        && most.map(high -> diameter.compareTo(high) <= 0).orElse(true);
  }
}
