package org.fettlebench.fits;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.measure.Point;

/**
 * Turns widths measured at stations along a datum edge into an outline.
 *
 * <p>The datum lies along x and stations are read from its zero to the right. At each station the
 * flat reaches {@code nearMm} towards the reader and {@code farMm} away from the datum, so that
 * sides that are not parallel need no angle to be measured: between stations the sides are
 * straight.
 */
public final class StationOutline {
  private StationOutline() {}

  /**
   * Widths measured at one place along the datum.
   *
   * @param alongMm distance along the datum from its zero
   * @param nearMm how far the flat reaches towards the reader; negative when its near side lies
   *     beyond the datum
   * @param farMm how far the flat reaches away from the reader; negative when its far side lies
   *     before the datum
   */
  public record Station(double alongMm, double nearMm, double farMm) {
    private double widthMm() {
      return nearMm + farMm;
    }
  }

  /**
   * Returns the corners, anticlockwise: along the near side to the right, back along the far side.
   * A first or last station without width becomes a single corner.
   *
   * @param stations at least two, {@code alongMm} rising; every one but the first and the last has
   *     a width above 0
   * @throws SeatException if they do not, naming the station (counted from 1)
   */
  public static List<Point> of(List<Station> stations) {
    if (stations.size() < 2) {
      throw new SeatException(
          "stations: "
              + stations.size()
              + " given, at least 2 are needed; measure the flat near each end");
    }
    for (int i = 0; i < stations.size(); i++) {
      check(stations, i);
    }
    List<Point> corners = new ArrayList<>();
    for (Station station : stations) {
      corners.add(new Point(station.alongMm(), 0 - station.nearMm()));
    }
    for (int i = stations.size() - 1; i >= 0; i--) {
      Station station = stations.get(i);
      if (station.widthMm() > 0) {
        corners.add(new Point(station.alongMm(), station.farMm()));
      }
    }
    return List.copyOf(corners);
  }

  private static void check(List<Station> stations, int index) {
    Station station = stations.get(index);
    String name = "station " + (index + 1);
    if (!(Double.isFinite(station.alongMm()) && Double.isFinite(station.widthMm()))) {
      throw new SeatException(name + ": " + station + " is not made of numbers; measure it again");
    }
    boolean end = index == 0 || index == stations.size() - 1;
    boolean wide = end ? station.widthMm() >= 0 : station.widthMm() > 0;
    if (!wide) {
      throw new SeatException(
          name
              + ": near "
              + station.nearMm()
              + " mm and far "
              + station.farMm()
              + " mm leave no width; check which side of the datum each was measured on");
    }
    if (index > 0 && !(station.alongMm() > stations.get(index - 1).alongMm())) {
      throw new SeatException(
          name
              + ": "
              + station.alongMm()
              + " mm along is not beyond the station before it at "
              + stations.get(index - 1).alongMm()
              + " mm; list the stations in order along the datum");
    }
  }
}
