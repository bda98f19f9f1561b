package org.fettlebench.paper.internal;

import java.util.List;
import org.fettlebench.measure.LengthUnit;

/**
 * A column of a wall chart.
 *
 * @param group heading over several columns; empty for none
 * @param head heading of the column
 * @param widthMm on a sheet of which the table takes 277 mm
 * @param figures whether its cells are set to the right, as figures are
 */
record ChartColumn(String group, String head, double widthMm, boolean figures) {
  /** Width of all columns together: A4 lying, less its margins. */
  static final double TABLE_MM = 277;

  /** Returns the columns, lengths in the first unit before the other. */
  static List<ChartColumn> all(LengthUnit first) {
    boolean inch = first == LengthUnit.INCH;
    String one = inch ? "in" : "mm";
    String other = inch ? "mm" : "in";
    return List.of(
        new ChartColumn("", "Thread", 29, false),
        new ChartColumn("Major diameter", one, 17, true),
        new ChartColumn("Major diameter", other, 17, true),
        new ChartColumn("Pitch", "mm", 14, true),
        new ChartColumn("Pitch", "tpi", 14, true),
        new ChartColumn("Core", one, 17, true),
        new ChartColumn("Tapping drill held", "drill", 24, false),
        new ChartColumn("Tapping drill held", "%", 10, true),
        new ChartColumn("Drill that is made", "drill", 24, false),
        new ChartColumn("Drill that is made", "%", 10, true),
        new ChartColumn("Clearance drill", "close", 23, false),
        new ChartColumn("Clearance drill", "medium", 23, false),
        new ChartColumn("Clearance drill", "free", 23, false),
        new ChartColumn("Hexagon", one, 16, true),
        new ChartColumn("Hexagon", other, 16, true));
  }
}
