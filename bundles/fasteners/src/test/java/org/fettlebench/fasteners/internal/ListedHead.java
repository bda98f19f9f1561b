package org.fettlebench.fasteners.internal;

import java.util.Map;
import org.fettlebench.fasteners.Head;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.testkit.published.PublishedRow;

/** Finds the listed head of a printed row and holds its cells. */
record ListedHead(Head head, LengthUnit unit) {
  /** Why the least sizes are in no table of the suite. */
  static final String LARGEST = "room is found for the largest allowed: least sizes are not kept";

  /** Major diameters of BS 93 in millimetres (Machinery's Handbook, 31st ed., p2115). */
  private static final Map<String, String> BA =
      Map.ofEntries(
          Map.entry("0", "6"),
          Map.entry("1", "5.3"),
          Map.entry("2", "4.7"),
          Map.entry("3", "4.1"),
          Map.entry("4", "3.6"),
          Map.entry("5", "3.2"),
          Map.entry("6", "2.8"),
          Map.entry("7", "2.5"),
          Map.entry("8", "2.2"),
          Map.entry("9", "1.9"),
          Map.entry("10", "1.7"),
          Map.entry("11", "1.5"),
          Map.entry("12", "1.3"));

  private static final HeadTables HEADS =
      new HeadTables(
          org.fettlebench.tables.FixedTables.of(HeadTablesTest.shipped()),
          (table, fault) -> {
            throw new AssertionError(table.id(), fault);
          });

  static ListedHead of(String style, String series, String size) {
    LengthUnit unit = series.startsWith("M") ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
    return new ListedHead(
        HEADS
            .find(style, HeadTablesTest.thread(series, major(series, size)))
            .orElseThrow(() -> new IllegalStateException("no " + style + " of " + size + series)),
        unit);
  }

  static Length major(String series, String size) {
    if (series.equals("BA")) {
      return LengthReader.read(BA.get(size), LengthUnit.MILLIMETRE);
    }
    if (size.startsWith("#")) {
      return Length.ofInchFraction(60 + 13L * Integer.parseInt(size.substring(1)), 1000);
    }
    return size.startsWith("M")
        ? LengthReader.read(size.substring(1), LengthUnit.MILLIMETRE)
        : LengthReader.read(size, LengthUnit.INCH);
  }

  double flats() {
    return head.acrossFlats().orElseThrow().in(unit);
  }

  double corners() {
    return head.acrossCorners().in(unit);
  }

  double height() {
    return head.height().orElseThrow().in(unit);
  }

  double washerFace() {
    return head.washerFace().orElseThrow().in(unit);
  }

  /** Holds a size printed as a fraction or without noughts: the table rounds it to 0.001 in. */
  void nominal(PublishedRow row, String column, double largest) {
    row.checkWithin(column, largest, 0.0006, "the nominal size, of which the most is rounded");
  }

  /** The least corners of a hexagon lie a little below flats over cos 30 degrees. */
  void leastCorners(PublishedRow row, String column) {
    row.that(
        column,
        () -> row.number(column) <= corners() + 0.01 && row.number(column) > 0.92 * corners(),
        "our corners are " + corners());
  }
}
