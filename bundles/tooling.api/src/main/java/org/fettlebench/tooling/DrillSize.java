package org.fettlebench.tooling;

import java.util.List;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;

/**
 * A drill diameter and all names it goes by; two are equal when their diameters are.
 *
 * @param diameter nominal diameter, above nothing, exact to 1 nm
 * @param names such as {@code 5/32 in}, {@code No 22}, {@code F}, {@code 4.0 mm}; at least one
 */
public record DrillSize(Length diameter, List<String> names) implements Comparable<DrillSize> {
  /**
   * Copies what could change.
   *
   * @throws MeasureException if the diameter is not above nothing or there is no name
   */
  public DrillSize {
    names = List.copyOf(names);
    if (!diameter.isPositive()) {
      throw new MeasureException("drill diameter " + diameter + " must be above 0 mm");
    }
    if (names.isEmpty()) {
      throw new MeasureException("the drill of " + diameter + " has no name");
    }
  }

  /** Returns the first of its names. */
  public String name() {
    return names.get(0);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DrillSize size && size.diameter.equals(diameter);
  }

  @Override
  public int hashCode() {
    return diameter.hashCode();
  }

  @Override
  public int compareTo(DrillSize other) {
    return diameter.compareTo(other.diameter);
  }
}
