package org.fettlebench.kits;

import java.util.List;
import org.fettlebench.club.MeasuredError;
import org.fettlebench.club.StockLine;

/**
 * What is at hand when a kit is checked: a picture of the club's books at one moment.
 *
 * @param lines all stock lines, as {@code Stock.lines()} gives them
 * @param errors how far holes were out, as {@code MeasuredErrors.all()} gives them
 */
public record Holdings(List<StockLine> lines, List<MeasuredError> errors) {
  /** Copies what could change. */
  public Holdings {
    lines = List.copyOf(lines);
    errors = List.copyOf(errors);
  }

  /** Returns the holdings of a club that has measured no holes. */
  public Holdings(List<StockLine> lines) {
    this(lines, List.of());
  }

  /** Returns empty holdings: a club that holds nothing. */
  public static Holdings none() {
    return new Holdings(List.of());
  }
}
