package org.fettlebench.tooling.internal;

import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFormatException;

/** How much larger than the drill a drilled hole comes out, by a table of kind drill-oversize. */
final class Oversize {
  static final String KIND = "drill-oversize";

  private record Point(double diameterMm, double meanMm, Source source) {}

  /** An oversize and where it comes from. */
  record Expected(Length mean, Source source) {}

  private final List<Point> points;

  private Oversize(List<Point> points) {
    this.points = points;
  }

  /**
   * Reads a table.
   *
   * @throws TableFormatException with every fault of the table
   */
  static Oversize read(Table table) {
    List<Point> points = RowFaults.read(table, Oversize::point);
    for (int i = 1; i < points.size(); i++) {
      if (!(points.get(i).diameterMm() > points.get(i - 1).diameterMm())) {
        throw new TableFormatException(
            KIND + " " + table.id(), List.of("the diameters must rise from row to row"));
      }
    }
    return new Oversize(points);
  }

  private static Point point(Table.Row row) {
    Length mean =
        RowFaults.either(row, "oversize_mean")
            .orElseThrow(() -> RowFaults.fault(row, "the mean oversize is missing"));
    return new Point(
        RowFaults.needed(row, "diameter").millimetres(), mean.millimetres(), row.source());
  }

  /** Returns the oversize in proportion between the two nearest rows; none outside the table. */
  Optional<Expected> of(Length drill) {
    double mm = drill.millimetres();
    for (int i = 0; i < points.size(); i++) {
      Point above = points.get(i);
      if (above.diameterMm() >= mm) {
        return i == 0 && above.diameterMm() > mm
            ? Optional.empty()
            : Optional.of(between(points.get(Math.max(0, i - 1)), above, mm));
      }
    }
    return Optional.empty();
  }

  private static Expected between(Point below, Point above, double mm) {
    double span = above.diameterMm() - below.diameterMm();
    double share = span > 0 ? (mm - below.diameterMm()) / span : 0;
    double mean = below.meanMm() + share * (above.meanMm() - below.meanMm());
    return new Expected(Length.ofMillimetres(mean), above.source());
  }
}
