package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.SeatException;
import org.fettlebench.fits.StationOutline;
import org.fettlebench.fits.StationOutline.Station;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.Point;

/**
 * Widths measured at stations along a datum edge.
 *
 * @param used whether the outline comes from them, else from its corners
 * @param oneWidth whether the datum edge is the near side itself, so that one width tells all
 * @param rows in the order in which they were typed
 */
record Stations(boolean used, boolean oneWidth, List<Row> rows) {
  /** A dragged station stays this far from the next, mm. */
  private static final double LEAST_STEP_MM = 0.01;

  Stations {
    rows = List.copyOf(rows);
  }

  Stations with(List<Row> others) {
    return new Stations(used, oneWidth, others);
  }

  Stations withUsed(boolean use) {
    return new Stations(use, oneWidth, rows);
  }

  /** Returns the same with one width a station or with two; the figures stay. */
  Stations withOneWidth(boolean one) {
    return new Stations(used, one, rows);
  }

  /**
   * Returns the same with one figure changed; a row is added where it is the first after the last.
   */
  Stations with(int row, int column, Optional<Length> figure) {
    List<Row> changed = new ArrayList<>(rows);
    while (changed.size() <= row) {
      changed.add(Row.BLANK);
    }
    changed.set(row, changed.get(row).with(column, figure));
    while (!changed.isEmpty() && changed.get(changed.size() - 1).blank()) {
      changed.remove(changed.size() - 1);
    }
    return with(changed);
  }

  private boolean whole(Row row) {
    return row.at().isPresent() && row.far().isPresent() && (oneWidth || row.near().isPresent());
  }

  /** Returns the numbers of the rows that are whole, by their place along the datum. */
  private List<Integer> order() {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      if (whole(rows.get(i))) {
        order.add(i);
      }
    }
    order.sort(Comparator.comparing(i -> rows.get(i).at().orElseThrow()));
    return order;
  }

  private Station station(int row) {
    Row figures = rows.get(row);
    double near = oneWidth ? 0 : figures.near().orElseThrow().millimetres();
    return new Station(
        figures.at().orElseThrow().millimetres(), near, figures.far().orElseThrow().millimetres());
  }

  /** Returns the stations whose figures are all there, along the datum. */
  List<Station> stations() {
    return order().stream().map(this::station).toList();
  }

  /** Returns the corners, or nothing while there are too few stations or they cannot be. */
  List<Point> corners() {
    try {
      return order().size() < 2 ? List.of() : StationOutline.of(stations());
    } catch (SeatException refused) {
      return List.of();
    }
  }

  /** Returns what is wrong with the figures, or what is still missing; empty when nothing. */
  String trouble() {
    try {
      if (order().size() < 2) {
        return "Two stations at least make an outline; measure the flat near each end.";
      }
      StationOutline.of(stations());
      return "";
    } catch (SeatException refused) {
      return refused.getMessage();
    }
  }

  /** Which row a corner of the outline stands for, and on which side. */
  private record Side(int place, int row, boolean far) {}

  private Side side(int corner) {
    List<Integer> order = order();
    if (corner < order.size()) {
      return new Side(corner, order.get(corner), false);
    }
    int at = order.size();
    for (int i = order.size() - 1; i >= 0; i--) {
      Station station = station(order.get(i));
      if (station.nearMm() + station.farMm() > 0 && at++ == corner) {
        return new Side(i, order.get(i), true);
      }
    }
    throw new IllegalArgumentException("there is no corner " + corner);
  }

  /** Returns the same with a corner of the outline moved: its station goes along with it. */
  Stations moved(int corner, Point to) {
    Side side = side(corner);
    List<Integer> order = order();
    double low =
        side.place() == 0
            ? Double.NEGATIVE_INFINITY
            : station(order.get(side.place() - 1)).alongMm() + LEAST_STEP_MM;
    double high =
        side.place() == order.size() - 1
            ? Double.POSITIVE_INFINITY
            : station(order.get(side.place() + 1)).alongMm() - LEAST_STEP_MM;
    Station before = station(side.row());
    double along = Math.max(low, Math.min(high, to.xMm()));
    double near = side.far() ? before.nearMm() : -to.yMm();
    double far = side.far() ? to.yMm() : before.farMm();
    List<Row> changed = new ArrayList<>(oneWidth && !side.far() ? spelled() : rows);
    changed.set(side.row(), Row.ofMillimetres(along, near, far));
    // A datum side that is pulled away is no datum any more.
    return new Stations(used, oneWidth && side.far(), changed);
  }

  /** Returns the rows with the nothing written out that one width implies. */
  private List<Row> spelled() {
    return rows.stream().map(row -> row.with(1, Optional.of(Length.ZERO))).toList();
  }

  /** Returns the same with a station more where the flat is as wide as its neighbours make it. */
  Stations added(double alongMm) {
    List<Station> all = stations();
    for (int i = 0; i + 1 < all.size(); i++) {
      Station left = all.get(i);
      Station right = all.get(i + 1);
      if (alongMm > left.alongMm() && alongMm < right.alongMm()) {
        double share = (alongMm - left.alongMm()) / (right.alongMm() - left.alongMm());
        List<Row> more = new ArrayList<>(rows);
        more.add(
            order().get(i) + 1,
            Row.ofMillimetres(
                alongMm,
                left.nearMm() + share * (right.nearMm() - left.nearMm()),
                left.farMm() + share * (right.farMm() - left.farMm())));
        return with(more);
      }
    }
    return this;
  }

  /** Returns the same without the station of a corner; unchanged when only two are left. */
  Stations without(int corner) {
    if (order().size() <= 2) {
      return this;
    }
    List<Row> fewer = new ArrayList<>(rows);
    fewer.remove(side(corner).row());
    return with(fewer);
  }
}
