package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.fettlebench.fits.Reach;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatAnswer.Governing.Kind;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Spanner;
import org.fettlebench.fits.Verdict;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What bears, what rises above it and what turns it, each against what stands at its height. */
class TiersTest {
  private static final double EXACT = 1e-6;
  private static final double CORNERS = 10 / Math.cos(Math.PI / 6);
  private final SeatChecker seats = new SeatChecker();

  /** A flat of 40 by 20 with a wall along its far side. */
  private static Seat seat(double wallHeight, double fillet, double y) {
    Seat plain = Bench.seat(Bench.rectangle(40, 20), new Point(20, y));
    return Bench.with(
        plain, new Seat.Wall("barrel", new Point(0, 20), new Point(40, 20), wallHeight, fillet));
  }

  private SeatAnswer check(Seat seat, SeatedHead head) {
    return seats.check(Bench.ask(seat, head));
  }

  private static Spanner spanner(Spanner.Kind kind, double diameter) {
    return new Spanner(kind, kind.words(), diameter, OptionalDouble.empty(), 0, "as measured");
  }

  @Test
  void theWasherFaceBearsAndTheCornersMayOverhangTheEdge() {
    SeatAnswer answer = check(seat(9, 0, 6), Bench.hexagon(10).withBearing(9));

    assertEquals(6 - 4.5, answer.allowanceAtIntendedMm(), EXACT);
    assertEquals("washer face", answer.governing().meets());
    assertEquals(Kind.EDGE, answer.governing().kind());
    SeatAnswer wall = check(seat(9, 0, 14), Bench.hexagon(10).withBearing(9));
    assertEquals(6 - CORNERS / 2, wall.allowanceAtIntendedMm(), EXACT);
    assertEquals("head", wall.governing().meets());
  }

  @Test
  void aWasherBearsWithItsWholeRimAndLiftsTheHeadOverALowWall() {
    SeatedHead head = Bench.hexagon(10).withWasher(new SeatedHead.Washer("washer", 9, 1, ""));

    assertEquals(6 - 4.5, check(seat(0.9, 0, 14), head).allowanceAtIntendedMm(), EXACT);
    assertEquals("washer", check(seat(0.9, 0, 14), head).governing().meets());
    assertEquals(6 - CORNERS / 2, check(seat(1.1, 0, 14), head).allowanceAtIntendedMm(), EXACT);
  }

  @Test
  void theHeadOnAWasherMeetsTheFilletHigherUpWhereItIsLess() {
    SeatedHead head = Bench.hexagon(10).withWasher(new SeatedHead.Washer("washer", 10, 1, ""));

    // A fillet of 2 reaches out 2 - sqrt(4 - 1) at the height of 1, and 2 at the flat.
    double corners = 10 - CORNERS / 2 - (2 - Math.sqrt(3));
    double washer = 10 - 5 - 2;
    assertEquals(
        Math.min(corners, washer), check(seat(9, 2, 10), head).allowanceAtIntendedMm(), EXACT);
    assertEquals(washer, check(seat(9, 2, 10), head).allowanceAtIntendedMm(), EXACT);
    SeatedHead small = Bench.hexagon(10).withWasher(new SeatedHead.Washer("washer", 6, 1, ""));
    assertEquals(corners, check(seat(9, 2, 10), small).allowanceAtIntendedMm(), EXACT);
  }

  @Test
  void ringAndSocketNeedTheirWholeCircle() {
    for (Spanner.Kind kind : List.of(Spanner.Kind.RING, Spanner.Kind.SOCKET)) {
      SeatAnswer answer = check(seat(9, 0, 12), Bench.hexagon(10).withSpanner(spanner(kind, 18)));
      assertEquals(8 - 9, answer.allowanceAtIntendedMm(), EXACT);
      assertEquals(kind.part(), answer.governing().meets());
      assertEquals("barrel", answer.governing().name());
    }
    // Towards the near edge nothing stands: the spanner may overhang it.
    SeatAnswer free =
        check(seat(9, 0, 7), Bench.hexagon(10).withSpanner(spanner(Spanner.Kind.RING, 18)));
    assertEquals(7 - CORNERS / 2, free.allowanceAtIntendedMm(), EXACT);
  }

  @Test
  void aSpannerHeldHigherPassesOverALowWallAndALowNeighbour() {
    SeatedHead head = Bench.hexagon(10).withSpanner(spanner(Spanner.Kind.RING, 18).withLift(2));

    assertEquals(8 - CORNERS / 2, check(seat(2, 0, 12), head).allowanceAtIntendedMm(), EXACT);
    assertEquals(8 - 9, check(seat(2.01, 0, 12), head).allowanceAtIntendedMm(), EXACT);
    Seat seat = Bench.seat(Bench.rectangle(60, 60), new Point(30, 30));
    Seat.Neighbour low = new Seat.Neighbour("stud", new Point(42, 30), 4, OptionalDouble.of(2));
    Seat.Neighbour unknown = new Seat.Neighbour("stud", new Point(42, 30), 4);
    assertEquals(
        12 - 4 - CORNERS / 2,
        check(seat.withNeighbours(List.of(low)), head).allowanceAtIntendedMm(),
        EXACT);
    assertEquals(
        12 - 4 - 9,
        check(seat.withNeighbours(List.of(unknown)), head).allowanceAtIntendedMm(),
        EXACT);
  }

  @Test
  void anOpenSpannerComesFromTheFreeSide() {
    SeatedHead head = Bench.hexagon(10).withSpanner(spanner(Spanner.Kind.OPEN, 28));

    SeatAnswer answer = check(seat(9, 0, 13), head);

    assertEquals(7 - CORNERS / 2, answer.allowanceAtIntendedMm(), EXACT);
    assertEquals(270, answer.spannerFromDegrees().orElseThrow());
    // In a channel narrower than its head on three sides it does not go.
    Seat pocket =
        Bench.with(
            Bench.seat(Bench.rectangle(40, 40), new Point(20, 20)),
            new Seat.Wall("left", new Point(12, 0), new Point(12, 40), 9, 0),
            new Seat.Wall("right", new Point(28, 0), new Point(28, 40), 9, 0));
    SeatAnswer shut = check(pocket, head);
    assertEquals(Verdict.FOULS, shut.verdict());
    assertEquals("open spanner's head", shut.governing().meets());
  }

  @Test
  void noSpannerGoesOnARoundHead() {
    SeatedHead round = Bench.round(8).withSpanner(spanner(Spanner.Kind.RING, 18));

    assertEquals(8 - 4, check(seat(9, 0, 12), round).allowanceAtIntendedMm(), EXACT);
  }

  @Test
  void curesOfWasherAndSpannerAreCheckedAndSaid() {
    SeatedHead washered =
        Bench.hexagon(10).withWasher(new SeatedHead.Washer("M6 washer", 16, 1, ""));
    List<SeatCure> off = cures(seat(9, 0, 13), washered);
    assertTrue(kinds(off).contains(SeatCure.Kind.WASHER_OFF), off.toString());
    assertTrue(kinds(off).contains(SeatCure.Kind.TURN_WASHER_DOWN), off.toString());
    SeatCure turned =
        off.stream()
            .filter(cure -> cure.kind() == SeatCure.Kind.TURN_WASHER_DOWN)
            .findFirst()
            .orElseThrow();
    assertEquals(13.8, turned.after().question().head().washer().orElseThrow().diameterMm(), 1e-9);

    SeatedHead ring = Bench.hexagon(10).withSpanner(spanner(Spanner.Kind.RING, 18));
    List<SeatCure> other =
        cures(seat(9, 0, 13), ring, ring.withSpanner(spanner(Spanner.Kind.OPEN, 28)));
    assertTrue(kinds(other).contains(SeatCure.Kind.OTHER_SPANNER), other.toString());
    // A bigger ring is no cure.
    List<SeatCure> worse =
        cures(seat(9, 0, 13), ring, ring.withSpanner(spanner(Spanner.Kind.RING, 20)));
    assertTrue(!kinds(worse).contains(SeatCure.Kind.OTHER_SPANNER), worse.toString());
  }

  private List<SeatCure> cures(Seat seat, SeatedHead head, SeatedHead... others) {
    return seats.cures(check(seat, head), List.of(others), List.of(), 0.95);
  }

  private static List<SeatCure.Kind> kinds(List<SeatCure> cures) {
    return cures.stream().map(SeatCure::kind).toList();
  }

  @Test
  void theRoseReachesTheBoundaryInEveryDirection() {
    List<Reach> rose = seats.rose(Bench.ask(seat(9, 1, 8), Bench.round(6)), 4);

    assertEquals(
        List.of(0.0, 90.0, 180.0, 270.0), rose.stream().map(Reach::bearingDegrees).toList());
    assertEquals(17, rose.get(0).allowanceMm().orElseThrow(), EXACT);
    assertEquals(12 - 3 - 1, rose.get(1).allowanceMm().orElseThrow(), EXACT);
    assertEquals(17, rose.get(2).allowanceMm().orElseThrow(), EXACT);
    assertEquals(5, rose.get(3).allowanceMm().orElseThrow(), EXACT);
  }

  @Test
  void theRoseOfAFailingCentreSaysWhereItBeginsToBeAllowed() {
    List<Reach> rose = seats.rose(Bench.ask(seat(9, 0, 1), Bench.round(6)), 8);

    assertEquals(-2, rose.get(2).allowanceMm().orElseThrow(), EXACT);
    assertEquals(-2 * Math.sqrt(2), rose.get(1).allowanceMm().orElseThrow(), EXACT);
    assertTrue(rose.get(0).allowanceMm().isEmpty());
    assertTrue(rose.get(6).allowanceMm().isEmpty());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, -1, 3601})
  void theRoseHasItsRange(int directions) {
    org.junit.jupiter.api.Assertions.assertThrows(
        org.fettlebench.fits.SeatException.class,
        () -> seats.rose(Bench.ask(seat(9, 0, 1), Bench.round(6)), directions));
  }
}
