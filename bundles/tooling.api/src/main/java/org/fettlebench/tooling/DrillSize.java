package org.fettlebench.tooling;

import java.util.List;
import org.fettlebench.measure.Length;

/**
 * A drill diameter and all names it goes by; two are equal when their diameters are.
 *
 * @param diameter nominal diameter
 * @param names such as {@code 5/32 in}, {@code No 22}, {@code F}, {@code 4.0 mm}; at least one
 */
public record DrillSize(Length diameter, List<String> names) implements Comparable<DrillSize> {
  /** Copies what could change. */
  public DrillSize {
    names = List.copyOf(names);
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
