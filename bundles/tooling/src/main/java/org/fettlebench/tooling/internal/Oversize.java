package org.fettlebench.tooling.internal;

import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFormatException;
import org.fettlebench.tooling.drilled.DrilledHole;

/** How much larger than the drill a drilled hole comes out, by a table of kind drill-oversize. */
public final class Oversize {
  /** The kind of table. */
  public static final String KIND = "drill-oversize";

  private record Point(
      double diameterMm,
      Optional<Double> leastMm,
      double meanMm,
      Optional<Double> mostMm,
      Source source) {}

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
  public static Oversize read(Table table) {
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
        RowFaults.needed(row, "diameter").millimetres(),
        RowFaults.either(row, "oversize_least").map(Length::millimetres),
        mean.millimetres(),
        RowFaults.either(row, "oversize_most").map(Length::millimetres),
        row.source());
  }

  /** Returns the mean oversize in proportion between the two nearest rows; none outside them. */
  Optional<Expected> of(Length drill) {
    return range(drill).map(range -> new Expected(range.mean(), range.source()));
  }

  /** Returns least, mean and most in proportion between the two nearest rows; none outside them. */
  public Optional<DrilledHole.Oversize> range(Length drill) {
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

  private static DrilledHole.Oversize between(Point below, Point above, double mm) {
    double span = above.diameterMm() - below.diameterMm();
    double share = span > 0 ? (mm - below.diameterMm()) / span : 0;
    return new DrilledHole.Oversize(
        below.leastMm().flatMap(low -> above.leastMm().map(high -> mixed(low, high, share))),
        mixed(below.meanMm(), above.meanMm(), share),
        below.mostMm().flatMap(low -> above.mostMm().map(high -> mixed(low, high, share))),
        above.source());
  }

  private static Length mixed(double below, double above, double share) {
    return Length.ofMillimetres(below + share * (above - below));
  }
}
