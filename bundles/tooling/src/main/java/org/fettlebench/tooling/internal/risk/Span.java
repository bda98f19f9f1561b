package org.fettlebench.tooling.internal.risk;

import org.fettlebench.tables.Source;
import org.fettlebench.tables.Table;
import org.fettlebench.tooling.internal.RowFaults;

/** A figure that is known to lie between two others. */
record Span(double least, double most, Source source) {
  /** Reads two columns that must rise and be within bounds. */
  static Span read(Table.Row row, String leastColumn, String mostColumn, double largest) {
    // Nothing at all is allowed as the least, so the bound lies a hair below.
    double least = RowFaults.within(row, leastColumn, -Double.MIN_VALUE, largest);
    double most = RowFaults.within(row, mostColumn, 0, largest);
    if (!(least <= most)) {
      throw RowFaults.fault(
          row, leastColumn + " " + least + " is above " + mostColumn + " " + most);
    }
    return new Span(least, most, row.source());
  }

  double middle() {
    return (least + most) / 2;
  }
}
