package org.fettlebench.holes.internal.correct;

import static org.fettlebench.holes.internal.correct.Readings.FAR;
import static org.fettlebench.holes.internal.correct.Readings.LEFT;
import static org.fettlebench.holes.internal.correct.Readings.NEAR;
import static org.fettlebench.holes.internal.correct.Readings.ask;
import static org.fettlebench.holes.internal.correct.Readings.read;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.fettlebench.holes.correct.HoleException;
import org.fettlebench.holes.correct.MeasuringQuestion;
import org.fettlebench.holes.correct.Reading;
import org.fettlebench.holes.correct.Reading.Edge;
import org.fettlebench.holes.correct.Reading.Spot;
import org.fettlebench.holes.correct.Reading.To;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Readings that fix no place are refused with what to do about it. */
class HoleRefusedTest {
  private static final double EXACT = 1e-9;
  private final HoleFitter fitter = new HoleFitter();

  private void refused(String words, MeasuringQuestion question) {
    HoleException wrong = assertThrows(HoleException.class, () -> fitter.measure(question));
    assertTrue(wrong.getMessage().contains(words), wrong.getMessage());
  }

  @Test
  void refusesReadingsThatFixNoPlace() {
    Point near = new Point(11, 8);
    refused(
        "near edge, far edge: parallel within 1 degree",
        ask(4, 4, near, read(NEAR, To.CENTRE, 7), read(FAR, To.CENTRE, 13)));
    refused("at least 2 readings, 1 given", ask(4, 4, near, read(NEAR, To.CENTRE, 7)));
    Spot one = new Spot("hole 1", new Point(0, 0), 0);
    Spot two = new Spot("hole 2", new Point(10, 0), 0);
    refused(
        "meet only in passing, or not at all",
        ask(4, 4, new Point(4, 2), read(one, To.CENTRE, 4), read(two, To.CENTRE, 5)));
    refused(
        "two places fit",
        ask(4, 4, new Point(4, 0), read(one, To.CENTRE, 6), read(two, To.CENTRE, 6)));
    refused(
        "on which side",
        ask(4, 4, new Point(4, 0), read(NEAR, To.CENTRE, 6), read(LEFT, To.CENTRE, 6)));
    refused(
        "less than half the diameters",
        ask(4, 4, near, read(NEAR, To.OVER_PIN, 1.5), read(LEFT, To.CENTRE, 6)));
    refused(
        "has no length",
        ask(
            4,
            4,
            near,
            read(new Edge("stub", near, near), To.CENTRE, 6),
            read(LEFT, To.CENTRE, 6)));
  }

  @ParameterizedTest
  @EnumSource(names = {"OVER_PIN", "TO_PIN"})
  void aPinMustBeThereAndGoIn(To to) {
    List<Reading> readings = List.of(read(NEAR, to, 6), read(LEFT, To.CENTRE, 6));
    Point near = new Point(5, 5);
    assertThrows(
        HoleException.class,
        () -> new MeasuringQuestion(readings, 4, OptionalDouble.empty(), near));
    assertThrows(
        HoleException.class,
        () -> new MeasuringQuestion(readings, 4, OptionalDouble.of(4.1), near));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.1, Double.NaN})
  void noReadingIsExact(double bad) {
    assertThrows(HoleException.class, () -> new Reading(NEAR, To.CENTRE, 5, bad));
  }

  /** Two places 8 mm apart: the nearer is taken when it is nearer by more than 0.16 mm. */
  @Test
  void twoPlacesAreToldApartOnlyByAClearDifference() {
    Spot one = new Spot("hole 1", new Point(0, 0), 0);
    Spot two = new Spot("hole 2", new Point(6, 0), 0);
    Reading[] readings = {read(one, To.CENTRE, 5), read(two, To.CENTRE, 5)};
    refused(
        "x 3.00 mm (0.118 in), y 4.00 mm (0.157 in) and x 3.00 mm (0.118 in), y -4.00 mm",
        ask(4, 4, new Point(3, 0.07), readings));
    assertEquals(4, fitter.measure(ask(4, 4, new Point(3, 0.09), readings)).centre().yMm(), EXACT);
    assertEquals(
        -4, fitter.measure(ask(4, 4, new Point(3, -0.09), readings)).centre().yMm(), EXACT);
  }

  @Test
  void edgesMustCrossByADegree() {
    assertEquals(
        6, fitter.measure(ask(4, 4, new Point(100, 6), crossing(1.05))).centre().yMm(), EXACT);
    refused("parallel within 1 degree", ask(4, 4, new Point(100, 6), crossing(0.95)));
  }

  private static Reading[] crossing(double degrees) {
    double turn = Math.toRadians(degrees);
    Edge other =
        new Edge("other", new Point(0, 0), new Point(90 * Math.cos(turn), 90 * Math.sin(turn)));
    return new Reading[] {read(NEAR, To.CENTRE, 6), read(other, To.CENTRE, 4)};
  }
}
