package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.PositionLaw;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatAnswer.Region;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.measure.Point;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Areas of allowed centres against closed forms, with a round head of radius 2 unless told. */
class AllowedRegionsTest {
  private static final Point MIDDLE = new Point(10, 6);

  private static double area(SeatQuestion question) {
    double sum = 0;
    for (Region region : new SeatChecker().check(question).allowed()) {
      sum += Math.abs(Plan.areaMm2(region.shell()));
      for (List<Point> hole : region.holes()) {
        sum -= Math.abs(Plan.areaMm2(hole));
      }
    }
    return sum;
  }

  private static double area(Seat seat) {
    return area(new SeatQuestion(seat, Bench.round(4), 1, 0.1, "a test"));
  }

  private static Seat plate() {
    return Bench.seat(Bench.rectangle(20, 12), MIDDLE);
  }

  @Test
  void ofARectangleIsASmallerRectangle() {
    assertEquals((20 - 4) * (12 - 4), area(plate()), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"4, 3", "8, 6", "30, 4.5", "12, 35"})
  void ofATriangleIsTheTriangleShrunkAboutItsIncentre(double base, double height) {
    double inradius = base * height / (base + height + Math.hypot(base, height));
    double left = Math.max(0, 1 - 0.4 / inradius);
    Seat seat = Bench.seat(Bench.corners(0, 0, base, 0, 0, height), new Point(1, 1));

    assertEquals(
        base * height / 2 * left * left,
        area(new SeatQuestion(seat, Bench.round(0.8), 0.1, 0.1, "a test")),
        1e-9);
  }

  @Test
  void ofARoundBossIsASmallerCircle() {
    Seat boss = Bench.seat(Outline.circle(MIDDLE, 7), MIDDLE);

    assertEquals(Math.PI * 5 * 5, area(boss), boundary(2 * Math.PI * 5));
  }

  /** How much an area may be off when its boundary of a length is. */
  private static double boundary(double lengthMm) {
    return lengthMm * SeatAnswer.REGION_ERROR_MM;
  }

  /** Rayleigh's law: 1 - exp(-(r / sigma)^2 / 2); of a large boss only little is left. */
  @ParameterizedTest
  @CsvSource({"12, 0.2", "12, 0.5", "40, 0.05", "1, 0.1", "3, 0.01"})
  void theChanceOnWhatIsLeftOfARoundBossIsRayleighs(double diameter, double left) {
    double sigma = 0.15;
    Seat boss = Bench.seat(Outline.circle(MIDDLE, diameter / 2), MIDDLE);
    SeatedHead head = Bench.round(diameter - 2 * left);
    SeatAnswer answer =
        new SeatChecker().check(new SeatQuestion(boss, head, diameter / 4, 0.1, "a test"));
    Source source = new Source("a test", Standing.COMMON_PRACTICE);

    assertEquals(
        1 - Math.exp(-left * left / (2 * sigma * sigma)),
        PositionLaw.round("a test", sigma, source).chanceWithin(answer.allowed(), MIDDLE),
        Math.exp(-0.5) * SeatAnswer.REGION_ERROR_MM / sigma);
  }

  /** Ten teeth in a side, 2 mm apart, from too low for the library up to sharp ones. */
  @ParameterizedTest
  @ValueSource(doubles = {0.002, 0.02, 0.028, 0.05})
  void teethInASideAreNotLeftOut(double high) {
    double[] xy = new double[2 * 23];
    for (int i = 0; i <= 20; i++) {
      xy[2 * i] = i;
      xy[2 * i + 1] = i % 2 == 0 ? 0 : high;
    }
    xy[42] = 20;
    xy[43] = 12;
    xy[44] = 0;
    xy[45] = 12;
    Seat toothed = Bench.seat(Bench.corners(xy), MIDDLE);
    // Centres keep 5 off: an arc about each point, then square off the side that slopes from it.
    double slope = Math.atan(high);
    double arc = 5 * Math.sin(slope);
    double besideAPoint =
        high * arc
            + (arc * 5 * Math.cos(slope) + 25 * slope) / 2
            + (1 - arc) * (high + 5 / Math.cos(slope))
            - high * (1 - arc * arc) / 2;

    assertEquals(
        10 * (12 - 5 - 5) + 10 * (5 - besideAPoint),
        area(new SeatQuestion(toothed, Bench.round(10), 1, 0.1, "a test")),
        boundary(10));
  }

  /** Along the reentrant corner a quarter of the head's circle is kept off. */
  @Test
  void ofAnAngleIsRoundedAtItsReentrantCorner() {
    Seat angle = Bench.seat(Bench.corners(0, 0, 20, 0, 20, 8, 8, 8, 8, 20, 0, 20), MIDDLE);
    double arms = 4 * 16 + 4 * 16 - 4 * 4;
    // Of the square of 2 by 2 before the corner all but the quarter circle is gained.
    double gained = 2 * 2 - Math.PI * 2 * 2 / 4;

    assertEquals(arms + gained, area(angle), boundary(Math.PI));
  }

  /** A wall with a fillet of 1.5 stands along the far side: a head sits on no part of either. */
  @Test
  void aWallAndItsFilletTakeAStrip() {
    Seat walled =
        Bench.with(plate(), new Seat.Wall("wall", new Point(-9, 12), new Point(29, 12), 9, 1.5));

    assertEquals((20 - 4) * (12 - 4 - 1.5), area(walled), 1e-6);
  }

  @Test
  void aNeighbourTakesACircle() {
    Seat beside = plate().withNeighbours(List.of(new Seat.Neighbour("stud", MIDDLE, 1)));

    assertEquals(16 * 8 - Math.PI * 3 * 3, area(beside), boundary(2 * Math.PI * 3));
  }

  /** A hollow is kept off by the hole alone, radius 0.5: Minkowski's sum with a square of 2. */
  @Test
  void aHollowTakesItselfAndTheHoleRoundIt() {
    Seat hollow =
        plate().withCavities(List.of(Outline.of(Bench.corners(9, 5, 11, 5, 11, 7, 9, 7))));

    assertEquals(16 * 8 - (4 + 4 * 2 * 0.5 + Math.PI * 0.25), area(hollow), boundary(8 + Math.PI));
  }

  /** Below, the part is only 9 wide from the right: with 1 mm of metal 1.5 mm is kept off. */
  @Test
  void whatIsBelowIsKeptOffByTheHoleAndItsMetal() {
    Seat tapered =
        plate()
            .withUnderside(Optional.of(Outline.of(Bench.corners(11, 0, 20, 0, 20, 12, 11, 12))))
            .withLeastMetal(1);

    assertEquals((18 - 12.5) * 8, area(tapered), 1e-6);
  }

  /** Set square a hexagon's flats face the near edge, its corners the side edges. */
  @Test
  void aHexagonSetSquareNeedsItsFlatsOneWayAndItsCornersTheOther() {
    SeatedHead square = Bench.hexagon(5).withFlatsAlong(0);

    assertEquals(
        (20 - 5 / Math.cos(Math.PI / 6)) * (12 - 5),
        area(new SeatQuestion(plate(), square, 1, 0.1, "a test")),
        1e-6);
  }

  @Test
  void nothingIsAllowedWhereTheHeadIsTooLarge() {
    assertEquals(0, area(new SeatQuestion(plate(), Bench.round(12.1), 1, 0.1, "a test")));
  }
}
