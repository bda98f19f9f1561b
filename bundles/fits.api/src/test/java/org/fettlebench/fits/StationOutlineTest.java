package org.fettlebench.fits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fettlebench.fits.StationOutline.Station;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StationOutlineTest {
  @Test
  void sidesNeedNotBeParallel() {
    List<Point> outline =
        StationOutline.of(
            List.of(new Station(0, 4, 5), new Station(10, 4.5, 5), new Station(25, 3, 6)));

    assertEquals(
        List.of(
            new Point(0, -4),
            new Point(10, -4.5),
            new Point(25, -3),
            new Point(25, 6),
            new Point(10, 5),
            new Point(0, 5)),
        outline);
  }

  @Test
  void anEndWithoutWidthIsOneCorner() {
    assertEquals(
        List.of(new Point(0, 0), new Point(8, -3), new Point(8, 3)),
        StationOutline.of(List.of(new Station(0, 0, 0), new Station(8, 3, 3))));
  }

  @Test
  void datumMayLieOutsideTheFlat() {
    assertEquals(
        List.of(new Point(0, 2), new Point(8, 2), new Point(8, 9), new Point(0, 7)),
        StationOutline.of(List.of(new Station(0, -2, 7), new Station(8, -2, 9))));
  }

  @ParameterizedTest
  @CsvSource({
    "10, 3, 3, station 2: 10.0 mm along is not beyond the station before it",
    "5, 3, 3, station 2: 5.0 mm along is not beyond",
    "12, -3, 3, station 2: near -3.0 mm and far 3.0 mm leave no width",
    "12, 2, -3, station 2: near 2.0 mm and far -3.0 mm leave no width",
    "NaN, 3, 3, station 2:",
    "12, NaN, 3, station 2:",
    "12, 3, Infinity, station 2:",
  })
  void faultyStationIsNamed(double along, double near, double far, String message) {
    List<Station> stations =
        List.of(new Station(10, 3, 3), new Station(along, near, far), new Station(20, 3, 3));

    String said = assertThrows(SeatException.class, () -> StationOutline.of(stations)).getMessage();

    assertTrue(said.startsWith(message), said);
  }

  @Test
  void oneStationIsTooFew() {
    assertTrue(
        assertThrows(SeatException.class, () -> StationOutline.of(List.of(new Station(0, 1, 1))))
            .getMessage()
            .startsWith("stations: 1 given, at least 2"));
  }
}
