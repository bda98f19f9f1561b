package org.fettlebench.paper.internal;

import java.util.List;

/**
 * The line of one thread on a wall chart.
 *
 * @param cells one for each column
 */
record ChartRow(List<Cell> cells) {
  /** How a cell is to be read. */
  enum Weight {
    /** A size of the thread. */
    PLAIN,
    /** A drill that is held. */
    HELD,
    /** A drill that is held and outside the limits. */
    CARE,
    /** A drill that is made but not held, or nothing. */
    FAINT
  }

  /** What stands in a cell. */
  record Cell(String words, Weight weight) {
    static Cell plain(String words) {
      return new Cell(words, Weight.PLAIN);
    }

    static Cell none() {
      return new Cell("–", Weight.FAINT);
    }
  }

  /** Copies what could change. */
  ChartRow {
    cells = List.copyOf(cells);
  }
}
