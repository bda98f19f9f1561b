package org.fettlebench.desktop.seats.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;

class StationsTest {
  private static final Stations NONE = Shape.EMPTY.stations();

  private static Optional<Length> mm(double value) {
    return Optional.of(Length.ofMillimetres(value));
  }

  private static Stations typed(double[]... rows) {
    Stations stations = NONE;
    for (int row = 0; row < rows.length; row++) {
      for (int column = 0; column < 3; column++) {
        stations = stations.with(row, column, mm(rows[row][column]));
      }
    }
    return stations;
  }

  @Test
  void theOutlineAppearsWithTheSecondStation() {
    Stations one = typed(new double[] {0, 4, 5});
    assertTrue(one.corners().isEmpty());
    assertTrue(one.trouble().startsWith("Two stations"), one.trouble());
    Stations begun = one.with(1, 0, mm(10)).with(1, 1, mm(4));
    assertTrue(begun.corners().isEmpty(), "a row that lacks a figure is not used");
    Stations two = begun.with(1, 2, mm(6));
    assertEquals(
        List.of(new Point(0, -4), new Point(10, -4), new Point(10, 6), new Point(0, 5)),
        two.corners());
    assertEquals("", two.trouble());
  }

  @Test
  void aStationForgottenAndTypedLastFindsItsPlace() {
    Stations stations =
        typed(new double[] {0, 4, 5}, new double[] {10, 4, 6}, new double[] {5, 3, 3});
    assertEquals(new Point(5, -3), stations.corners().get(1));
    assertEquals("", stations.trouble());
  }

  @Test
  void whatCannotBeIsTold() {
    Stations twice = typed(new double[] {0, 4, 5}, new double[] {0, 4, 6});
    assertTrue(twice.corners().isEmpty());
    assertTrue(twice.trouble().contains("station 2"), twice.trouble());
    Stations none = typed(new double[] {0, 4, 5}, new double[] {5, 4, -4}, new double[] {9, 4, 4});
    assertTrue(none.trouble().contains("leave no width"), none.trouble());
  }

  @Test
  void oneWidthIsTakenFromTheDatumEdge() {
    Stations stations = NONE.withOneWidth(true);
    stations = stations.with(0, 0, mm(0)).with(0, 2, mm(7));
    stations = stations.with(1, 0, mm(20)).with(1, 2, mm(9));
    assertEquals(
        List.of(new Point(0, 0), new Point(20, 0), new Point(20, 9), new Point(0, 7)),
        stations.corners());
  }

  @Test
  void aDraggedCornerTakesItsStationAlongAndStopsAtTheNext() {
    Stations stations =
        typed(new double[] {0, 4, 5}, new double[] {10, 4, 6}, new double[] {20, 4, 5});
    Stations moved = stations.moved(4, new Point(12, 7));
    assertEquals(new Point(12, -4), moved.corners().get(1));
    assertEquals(new Point(12, 7), moved.corners().get(4));
    Stations stopped = stations.moved(1, new Point(25, -4));
    assertEquals(19.99, stopped.corners().get(1).xMm(), 1e-9);
  }

  @Test
  void aDatumSideThatIsPulledAwayIsNoDatumAnyMore() {
    Stations one =
        NONE.withOneWidth(true)
            .with(0, 0, mm(0))
            .with(0, 2, mm(7))
            .with(1, 0, mm(20))
            .with(1, 2, mm(9));
    Stations far = one.moved(2, new Point(20, 10));
    assertTrue(far.oneWidth());
    Stations near = one.moved(0, new Point(0, -1));
    assertFalse(near.oneWidth());
    assertEquals(
        List.of(new Point(0, -1), new Point(20, 0), new Point(20, 9), new Point(0, 7)),
        near.corners());
  }

  @Test
  void aStationAddedChangesNothingOfTheOutline() {
    Stations stations = typed(new double[] {0, 4, 5}, new double[] {10, 6, 6});
    Stations more = stations.added(2.5);
    assertEquals(6, more.corners().size());
    assertEquals(new Point(2.5, -4.5), more.corners().get(1));
    assertEquals(new Point(2.5, 5.25), more.corners().get(4));
    assertEquals(stations.corners(), more.without(1).corners());
    assertEquals(stations, stations.without(0), "two stations are the least");
  }

  @Test
  void aPointedEndIsOneCorner() {
    Stations stations =
        typed(new double[] {0, 1, -1}, new double[] {10, 4, 6}, new double[] {20, 0, 0});
    assertEquals(4, stations.corners().size());
    Stations moved = stations.moved(3, new Point(10, 8));
    assertEquals(new Point(10, 8), moved.corners().get(3));
  }
}
