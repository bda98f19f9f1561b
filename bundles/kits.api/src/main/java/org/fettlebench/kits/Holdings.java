package org.fettlebench.kits;

import java.util.List;
import org.fettlebench.club.StockLine;

/**
 * What is at hand when a kit is checked: a picture of the stock at one moment, as {@code
 * Stock.lines()} gives it.
 *
 * @param lines all stock lines
 */
public record Holdings(List<StockLine> lines) {
  /** Copies what could change. */
  public Holdings {
    lines = List.copyOf(lines);
  }

  /** Returns empty holdings: a club that holds nothing. */
  public static Holdings none() {
    return new Holdings(List.of());
  }
}
