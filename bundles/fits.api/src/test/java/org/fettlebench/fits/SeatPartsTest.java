package org.fettlebench.fits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.fits.SeatedHead.Washer;
import org.fettlebench.measure.Point;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A change to one part of a question changes that part and no other. */
class SeatPartsTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final Outline FLAT = Outline.of(Plane.points(0, 0, 20, 0, 20, 10));
  private static final Outline OTHER = Outline.of(Plane.points(0, 0, 30, 0, 30, 10));
  private static final Seat.Wall WALL =
      new Seat.Wall("wall", new Point(0, 10), new Point(20, 10), 5, 1);
  private static final Seat SEAT = Seat.flat("lug", FLAT, new Point(10, 5));
  private static final SeatedHead HEAD =
      new SeatedHead("hexagon", 9.5, OptionalDouble.of(8.2), OptionalDouble.of(3), NONE, "old");
  private static final Spanner RING =
      new Spanner(Spanner.Kind.RING, "ring", 14, OptionalDouble.of(6), 0, "published");
  private static final SeatQuestion ASKED = new SeatQuestion(SEAT, HEAD, 4.9, 0.1, "a test");

  @Test
  void aSeat() {
    Seat.Neighbour beside = new Seat.Neighbour("nut", new Point(3, 3), 4);
    Seat full =
        new Seat(
            "boss",
            OTHER,
            Optional.of(FLAT),
            List.of(WALL),
            List.of(FLAT),
            List.of(beside),
            new Point(1, 2),
            1.5);
    assertEquals(
        full,
        SEAT.withName("boss")
            .withOutline(OTHER)
            .withUnderside(Optional.of(FLAT))
            .withWallAdded(WALL)
            .withCavities(List.of(FLAT))
            .withNeighbours(List.of(beside))
            .withIntended(new Point(1, 2))
            .withLeastMetal(1.5));
    assertEquals(NONE, beside.heightMm());
    Seat.Wall low = new Seat.Wall("low", WALL.from(), WALL.to(), 1, 0);
    assertEquals(List.of(WALL, low), SEAT.withWalls(List.of(low, low)).withWall(0, WALL).walls());
  }

  @Test
  void aHeadBearsOnWhatIsUnderIt() {
    SeatedHead round = new SeatedHead("cheese", 7, NONE, NONE, NONE, "");
    Washer washer = new Washer("M4 washer", 9, 0.8, "");
    assertEquals(7, round.bearsOnMm());
    assertEquals(8.2, HEAD.bearsOnMm());
    assertEquals(7.8, HEAD.withBearing(7.8).bearsOnMm());
    assertEquals(9, HEAD.withBearing(7.8).withWasher(washer).bearsOnMm());
    assertEquals(7.8, HEAD.withWasher(washer).withBearing(7.8).withoutWasher().bearsOnMm());
    assertEquals(new Washer("M4 washer turned down", 8.5, 0.8, ""), washer.turnedDownTo(8.5));
  }

  @Test
  void aHeadIsSetAndTurnedDown() {
    SeatedHead set = HEAD.withFlatsAlong(30);
    assertEquals(OptionalDouble.of(30), set.flatsAlongDegrees());
    assertEquals(HEAD, set.turnedAnywhere());
    assertEquals(Optional.of(RING), set.withSpanner(RING).spanner());
    assertEquals(set, set.withSpanner(RING).withoutSpanner());

    SeatedHead down = set.withBearing(9).turnedDownTo(8.6);
    assertEquals("hexagon turned down", down.title());
    assertEquals(8.6, down.sweepDiameterMm());
    assertEquals(8.6, down.bearsOnMm());
    assertEquals(NONE, down.flatsAlongDegrees());
    assertEquals(8, set.withBearing(8).turnedDownTo(8.6).bearsOnMm());
    assertEquals(NONE, HEAD.turnedDownTo(8.6).bearingDiameterMm());
  }

  @Test
  void aSpanner() {
    assertEquals(
        new Spanner(Spanner.Kind.RING, "ring", 14, OptionalDouble.of(6), 2.5, "published"),
        RING.withLift(2.5));
    assertEquals("ring spanner's rim", RING.kind().part());
    assertEquals("open spanner", Spanner.Kind.OPEN.words());
  }

  @Test
  void aQuestion() {
    SeatedHead small = HEAD.withBearing(7);
    assertEquals(
        new SeatQuestion(SEAT.withName("boss"), small.withSpanner(RING), 5.1, 0.2, "care"),
        ASKED
            .withSeat(SEAT.withName("boss"))
            .withHead(small)
            .withSpanner(RING)
            .withHole(5.1)
            .withError(0.2, "care"));
    assertEquals(new Point(1, 1), ASKED.withIntended(new Point(1, 1)).seat().intended());
  }

  private static SeatAnswer answer(
      SeatQuestion asked, Verdict verdict, double bestMm, double neededMm, List<Integer> calls) {
    return new SeatAnswer(
        asked,
        verdict,
        new SeatAnswer.Figures(new Point(6, 4), bestMm, 0.25, OptionalDouble.of(45)),
        new SeatAnswer.Governing(
            SeatAnswer.Governing.Kind.EDGE,
            "edge",
            "head",
            Plane.points(0, 0, 5, -1, 12, 0),
            new Point(6, 0),
            5,
            neededMm),
        List.of("odd"),
        () -> {
          calls.add(1);
          return Plane.rectangle(1, 1, 2, 2);
        });
  }

  @Test
  void anAnswerGivesItsFiguresAndWorksOutItsRegionsOnce() {
    List<Integer> calls = new ArrayList<>();
    SeatAnswer answer = answer(ASKED, Verdict.CLEARS, 0.5, 4.75, calls);
    assertEquals(new Point(6, 4), answer.best());
    assertEquals(0.5, answer.allowanceAtBestMm());
    assertEquals(0.25, answer.allowanceAtIntendedMm());
    assertEquals(OptionalDouble.of(45), answer.spannerFromDegrees());
    assertEquals(List.of("odd"), answer.cautions());
    assertEquals(new Point(0, 0), answer.governing().from());
    assertEquals(new Point(12, 0), answer.governing().to());
    assertTrue(answer.toString().startsWith("lug: CLEARS"), answer.toString());
    assertEquals(0, calls.size());
    assertEquals(Plane.rectangle(1, 1, 2, 2), answer.allowed());
    answer.allowed();
    assertEquals(1, calls.size());
  }

  @Test
  void answersAreEqualWhenEveryFigureIs() {
    SeatAnswer answer = answer(ASKED, Verdict.CLEARS, 0.5, 4.75, new ArrayList<>());
    SeatAnswer same = answer(ASKED, Verdict.CLEARS, 0.5, 4.75, new ArrayList<>());
    assertEquals(answer, same);
    assertEquals(answer.hashCode(), same.hashCode());
    List<SeatAnswer> others =
        List.of(
            answer(ASKED.withHole(5), Verdict.CLEARS, 0.5, 4.75, new ArrayList<>()),
            answer(ASKED, Verdict.TIGHT, 0.5, 4.75, new ArrayList<>()),
            answer(ASKED, Verdict.CLEARS, 0.6, 4.75, new ArrayList<>()));
    for (SeatAnswer other : others) {
      assertNotEquals(answer, other);
      assertNotEquals(answer.hashCode(), other.hashCode());
    }
    assertNotEquals(answer, answer(ASKED, Verdict.CLEARS, 0.5, 4.8, new ArrayList<>()));
    assertNotEquals(answer, (Object) ASKED);
  }

  /** Rayleigh: the root of chi-square with two degrees at 95 %, 5.991465 as printed. */
  @Test
  void aMethodOfOneSpreadHasTheRadiusOfRayleigh() {
    HoleMethod method =
        new HoleMethod("dot", "Scribe", List.of("scribe"), 0.1, source(Standing.PUBLISHED, "x"));
    assertEquals(0.1, method.sigmaPerAxisMm(), 1e-15);
    assertEquals(0.1 * Math.sqrt(5.991465), method.errorRadiusMm(0.95), 1e-7);
    assertEquals(HoleMethod.WHOLE, method.law().parts().get(0).cause());
    PositionLaw wider = Plane.law(ErrorLaw.Normal.round(0.2));
    Source from = source(Standing.RULE, "other");
    assertEquals(
        new HoleMethod("dot", "Scribe", List.of("scribe"), wider, from),
        method.withLaw(wider, from));
  }

  private static Source source(Standing standing, String citation) {
    return new Source(citation, standing);
  }

  private static HoleMethod from(Standing standing, String citation) {
    return new HoleMethod("dot", "Scribe", List.of(), 0.1, source(standing, citation));
  }

  @Test
  void aMethodSaysHowFarItsFigureIsToBeTrusted() {
    String measured = "measured by A. Turner, 12 holes";
    assertEquals("Scribe, 95 % of holes", from(Standing.PUBLISHED, "a book").errorMeans(0.95));
    assertEquals(
        "Scribe, 99.5 % of holes (from memory)",
        from(Standing.FROM_MEMORY, measured).errorMeans(0.995));
    assertEquals(
        "Scribe, 90 % of holes (" + measured + ")",
        from(Standing.MEASURED, measured).errorMeans(0.9));
    assertEquals("measured by the club", from(Standing.MEASURED, "a log").standing());
    assertEquals("Scribe, 90 % of holes", from(Standing.MEASURED, "a log").errorMeans(0.9));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.1, Double.NaN, Double.POSITIVE_INFINITY})
  void aMethodHasASpread(double sigma) {
    Source source = source(Standing.RULE, "x");
    SeatException refused =
        assertThrows(
            SeatException.class, () -> new HoleMethod("dot", "Scribe", List.of(), sigma, source));
    assertEquals("method dot: sigma " + sigma + " mm is not above 0", refused.getMessage());
  }
}
