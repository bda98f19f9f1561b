package org.fettlebench.kits;

import java.util.List;
import org.fettlebench.club.StockLine;

/**
 * What is at hand when a kit is checked: a picture of the stock at one moment.
 *
 * @param lines all stock lines
 */
public record Holdings(List<StockLine> lines) {
  /** Copies what could change. */
  public Holdings {
    lines = List.copyOf(lines);
  }
}
