package org.fettlebench.holes.internal.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.fettlebench.holes.patterns.HolePattern;
import org.fettlebench.holes.patterns.MeasuredPattern;
import org.fettlebench.holes.patterns.MeasuredPattern.Hole;
import org.fettlebench.holes.patterns.MeasuredPattern.MeasuredPart;
import org.fettlebench.holes.patterns.PatternFit;
import org.fettlebench.holes.patterns.PatternFit.Cure;
import org.fettlebench.holes.patterns.PatternFit.Opening;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;

class MeasuredFitTest {
  private static final double FINE = 1e-5;

  private static MeasuredPart plain(String name, double diameterMm, List<Point> centres) {
    return new MeasuredPart(
        name, centres.stream().map(each -> new Hole(each, OptionalDouble.of(diameterMm))).toList());
  }

  private static MeasuredPart tapped(String name, List<Point> centres) {
    return new MeasuredPart(
        name, centres.stream().map(each -> new Hole(each, OptionalDouble.empty())).toList());
  }

  private static List<Point> ring() {
    return HolePattern.circle("ring", 40, 6, 20).centres();
  }

  private static PatternFit fit(List<Point> upper, List<Point> lower, boolean circle) {
    return new MeasuredFit(
            new MeasuredPattern(
                "cover", 5, plain("cover", 5.4, upper), tapped("body", lower), circle))
        .answer();
  }

  private static List<Point> with(List<Point> points, int index, double dx, double dy) {
    List<Point> moved = new ArrayList<>(points);
    moved.set(index, points.get(index).moved(dx, dy));
    return moved;
  }

  @Test
  void perfectHolesLeaveAllTheirPlay() {
    PatternFit fit = fit(ring(), ring(), false);
    assertTrue(fit.goes());
    assertEquals(0.2, fit.roomMm(), FINE);
    assertTrue(fit.cures().isEmpty());
  }

  /** Five holes agree and the sixth is 1 mm out to the right: opening it alone makes them go. */
  @Test
  void oneHoleFarOutIsTheOneToOpen() {
    PatternFit fit = fit(ring(), with(ring(), 2, 1, 0), false);
    assertFalse(fit.goes());
    Cure one = fit.cures().get(0);
    assertFalse(one.every());
    assertEquals("cover", one.part());
    Opening opening = one.openings().get(0);
    assertEquals(1, one.openings().size());
    assertEquals(3, opening.number());
    // The others give way by up to their 0.2 each, so less than 1 - 0.2 is left to be filed.
    assertTrue(opening.fileMm() > 0.3 && opening.fileMm() < 0.8, opening::toString);
    assertEquals(5.4 + 2 * opening.fileMm(), opening.openToMm(), FINE);
    checkAgain(fit, one);
  }

  /** Places the holes anew with what the cure says, which must then just go. */
  private static void checkAgain(PatternFit fit, Cure cure) {
    List<Hole> holes = new ArrayList<>(fit.question().upper().holes());
    for (Opening opening : cure.openings()) {
      Hole now = holes.get(opening.number() - 1);
      holes.set(
          opening.number() - 1,
          new Hole(now.centre(), OptionalDouble.of(opening.openToMm() + 1e-5)));
    }
    PatternFit after = again(fit, holes);
    assertTrue(after.goes(), "opened as told it must go: " + after.roomMm());
    List<Hole> less = new ArrayList<>(fit.question().upper().holes());
    Opening first = cure.openings().get(0);
    double almost = first.fromMm() + 0.98 * (first.openToMm() - first.fromMm());
    less.set(
        first.number() - 1,
        new Hole(less.get(first.number() - 1).centre(), OptionalDouble.of(almost)));
    assertFalse(again(fit, less).goes(), "opened by less it must not go");
  }

  private static PatternFit again(PatternFit fit, List<Hole> holes) {
    return new MeasuredFit(
            new MeasuredPattern(
                "again",
                fit.question().fastenerMm(),
                new MeasuredPart("cover", holes),
                fit.question().lower(),
                false))
        .answer();
  }

  /** A slot filed from the hole's centre towards the other's lets the fastener through. */
  @Test
  void filesTowardsWhereTheOtherHoleLies() {
    PatternFit fit = fit(ring(), with(ring(), 2, 1, 0), false);
    Opening opening = fit.cures().get(0).openings().get(0);
    assertEquals(0, Math.sin(Math.toRadians(opening.fileDegrees())), 0.2);
    assertTrue(Math.cos(Math.toRadians(opening.fileDegrees())) > 0.9, "to the right");
  }

  /** The wrong hand would file the lower part the same way. */
  @Test
  void inTheLowerPartItIsFiledTheOtherWay() {
    MeasuredPattern swapped =
        new MeasuredPattern(
            "cover", 5, tapped("cover", ring()), plain("body", 5.4, with(ring(), 2, 1, 0)), false);
    Opening opening = new MeasuredFit(swapped).answer().cures().get(0).openings().get(0);
    assertTrue(Math.cos(Math.toRadians(opening.fileDegrees())) < -0.9, opening::toString);
  }

  /** The lower part lies a quarter turn round, so that its left is what is up when together. */
  @Test
  void directionsInTheLowerPartAreThoseOfItsOwnReading() {
    List<Point> turned = new ArrayList<>();
    for (Point point : with(ring(), 2, 1, 0)) {
      turned.add(new Point(-point.yMm(), point.xMm()));
    }
    MeasuredPattern swapped =
        new MeasuredPattern("cover", 5, tapped("cover", ring()), plain("body", 5.4, turned), false);
    PatternFit fit = new MeasuredFit(swapped).answer();
    Opening opening = fit.cures().get(0).openings().get(0);
    // Together the hole must be filed to the left (180); read a quarter on, that is 270.
    assertEquals(270, opening.fileDegrees(), 15);
  }

  @Test
  void openingAllIsOfferedToo() {
    PatternFit fit = fit(ring(), with(ring(), 2, 1, 0), false);
    Cure all = fit.cures().get(fit.cures().size() - 1);
    assertTrue(all.every());
    assertEquals(6, all.openings().size());
    double to = 5.4 - 2 * fit.roomMm();
    for (Opening opening : all.openings()) {
      assertEquals(5.4, opening.fromMm());
      assertEquals(to, opening.openToMm(), FINE, "all to one size");
    }
    checkAgainAll(fit, to);
  }

  private static void checkAgainAll(PatternFit fit, double diameterMm) {
    MeasuredPart opened =
        plain(
            "cover",
            diameterMm,
            fit.question().upper().holes().stream().map(Hole::centre).toList());
    MeasuredPattern pattern =
        new MeasuredPattern("again", 5, opened, fit.question().lower(), false);
    assertEquals(0, new MeasuredFit(pattern).answer().roomMm(), FINE);
  }

  @Test
  void twoHolesOutNeedTwo() {
    PatternFit fit = fit(ring(), with(with(ring(), 2, 2, 0), 4, 0, 2), false);
    assertEquals(
        List.of(3, 5), fit.cures().get(0).openings().stream().map(Opening::number).toList());
    checkAgain(fit, fit.cures().get(0));
  }

  /** A ring whose lower part was numbered two holes further on goes when it is turned on by two. */
  @Test
  void aCircleMayBeTurnedOnByWholeHoles() {
    List<Point> odd = with(ring(), 1, 0.9, 0.3);
    List<Point> lower = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      lower.add(odd.get((i + 4) % 6));
    }
    PatternFit fit = fit(odd, lower, true);
    assertTrue(fit.goes());
    assertEquals(2, fit.movement().holesOn());
    assertEquals(0.2, fit.roomMm(), FINE);
    assertEquals(3, fit.holes().get(0).lowerNumber());
  }

  /** An uneven pattern read from its other side fits only when mirrored: the answer says so. */
  @Test
  void aPartReadFromItsOtherSideIsSuspected() {
    List<Point> uneven =
        List.of(new Point(0, 0), new Point(30, 2), new Point(22, 18), new Point(3, 11));
    List<Point> mirrored = uneven.stream().map(p -> new Point(-p.xMm(), p.yMm())).toList();
    PatternFit fit = fit(uneven, mirrored, false);
    assertFalse(fit.goes());
    assertTrue(fit.mirroredGoes());
    assertFalse(fit(uneven, with(uneven, 1, 3, 0), false).mirroredGoes());
  }

  /** Out upwards and the lower part to be filed: downwards, 270 and not -90. */
  @Test
  void directionsAreBetweenNothingAndAWholeTurn() {
    double[][] out = {{1, 0, 180}, {-1, 0, 0}, {0, 1, 270}, {0, -1, 90}};
    for (double[] way : out) {
      MeasuredPattern swapped =
          new MeasuredPattern(
              "cover",
              5,
              tapped("cover", ring()),
              plain("body", 5.4, with(ring(), 2, way[0], way[1])),
              false);
      double told =
          new MeasuredFit(swapped).answer().cures().get(0).openings().get(0).fileDegrees();
      assertTrue(told >= 0 && told < 360, "direction " + told);
      assertEquals(1, Math.cos(Math.toRadians(told - way[2])), 0.05, "direction " + told);
      double upper =
          fit(ring(), with(ring(), 2, way[0], way[1]), false)
              .cures()
              .get(0)
              .openings()
              .get(0)
              .fileDegrees();
      assertTrue(upper >= 0 && upper < 360, "direction " + upper);
      assertEquals(-1, Math.cos(Math.toRadians(upper - way[2])), 0.05, "direction " + upper);
    }
  }

  /** A ring that does not go in any position is put where it lacks least, and its holes named. */
  @Test
  void theBestPositionIsTakenWhereNoneGoes() {
    List<Point> odd = with(ring(), 1, 2.5, 1);
    List<Point> lower = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      lower.add(odd.get((i + 4) % 6));
    }
    // Upper hole 4 lies on lower hole 6, which is out by 0.7 mm besides.
    List<Point> worse = with(lower, 5, 0, 0.7);
    PatternFit fit = fit(odd, worse, true);
    assertFalse(fit.goes());
    assertEquals(2, fit.movement().holesOn());
    assertEquals(6, fit.holes().get(3).lowerNumber());
    assertEquals(4, fit.cures().get(0).openings().get(0).number());
    MeasuredPattern swapped =
        new MeasuredPattern("cover", 5, tapped("cover", odd), plain("body", 5.4, worse), true);
    assertEquals(6, new MeasuredFit(swapped).answer().cures().get(0).openings().get(0).number());
  }

  @Test
  void ofPositionsThatAreAlikeTheFirstIsTaken() {
    assertEquals(0, fit(ring(), ring(), true).movement().holesOn());
  }

  /** Those decide that have no more room than the worst, and no others. */
  @Test
  void theHolesThatGovernAreThoseWithTheLeastRoom() {
    PatternFit fit = fit(ring(), with(with(ring(), 2, 1, 0), 4, 0.2, 0.5), false);
    int governing = 0;
    for (PatternFit.HoleFit hole : fit.holes()) {
      assertEquals(hole.roomMm() < fit.roomMm() + FINE, hole.governs(), hole.toString());
      governing += hole.governs() ? 1 : 0;
    }
    assertTrue(governing < 6, "not all of them");
  }

  /** Turned about the middle of the lower part's holes, as is told. */
  @Test
  void theTurnIsAboutTheMiddleOfTheLowerHoles() {
    List<Point> lower = List.of(new Point(10, 5), new Point(40, 5), new Point(40, 32));
    PatternFit fit = fit(lower.stream().map(at -> at.moved(3, 4)).toList(), lower, false);
    assertEquals(30, fit.movement().about().xMm(), FINE);
    assertEquals(14, fit.movement().about().yMm(), FINE);
    assertEquals(3, fit.movement().shiftXMm(), FINE);
    assertEquals(4, fit.movement().shiftYMm(), FINE);
    assertEquals(0, fit.movement().turnDegrees(), FINE);
  }

  @Test
  void movementAndHolesTellTheSame() {
    Random random = new Random(11);
    for (int i = 0; i < 50; i++) {
      List<Point> lower = ring();
      for (int k = 0; k < 6; k++) {
        lower = with(lower, k, 4 + 0.3 * random.nextGaussian(), 0.3 * random.nextGaussian());
      }
      PatternFit fit = fit(ring(), lower, false);
      PatternFit.Movement move = fit.movement();
      double turn = Math.toRadians(move.turnDegrees());
      for (PatternFit.HoleFit hole : fit.holes()) {
        Point low = lower.get(hole.lowerNumber() - 1);
        double x = low.xMm() - move.about().xMm();
        double y = low.yMm() - move.about().yMm();
        Point moved =
            move.about()
                .moved(
                    Math.cos(turn) * x - Math.sin(turn) * y + move.shiftXMm(),
                    Math.sin(turn) * x + Math.cos(turn) * y + move.shiftYMm());
        assertEquals(0, moved.distanceMm(hole.lower()), FINE);
        assertEquals(hole.apartMm(), moved.distanceMm(hole.upper()), FINE);
      }
      assertTrue(fit.holes().stream().filter(PatternFit.HoleFit::governs).count() >= 2);
    }
  }
}
