package org.fettlebench.desktop.seats.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.fettlebench.desktop.seats.internal.Practice.Entry;
import org.fettlebench.desktop.seats.internal.Practice.Margins;
import org.fettlebench.desktop.seats.internal.Practice.Readings;
import org.fettlebench.holes.correct.MeasuredHole;
import org.fettlebench.holes.internal.correct.HoleFitter;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;

/**
 * A hole measured on a square of 12 mm with a pin of 3 mm: what is read is place and half a pin.
 */
class GaugingTest {
  private static final HoleFitter FITTER = new HoleFitter();

  private static Optional<Length> mm(double mm) {
    return Optional.of(Length.ofMillimetres(mm));
  }

  private static Sketch read(Entry... entries) {
    Sketch sketch = Sketches.byCorners(Sketches.square(12));
    Readings readings = new Readings(0, mm(3), mm(0.05), List.of(entries));
    SeatFile.Drilled guess = new SeatFile.Drilled(new Point(6, 6), 3.1, 0.5);
    return sketch.with(sketch.hole().found(Optional.of(guess)).with(Practice.USUAL.with(readings)));
  }

  @Test
  void twoReadingsPlaceTheHoleAndCheckNothing() {
    Sketch sketch = read(new Entry("edge 1 to 2", mm(7.5)), new Entry("edge 4 to 1", mm(6.7)));
    Sketch placed = Gauging.placed(sketch, FITTER);
    assertEquals(
        0, placed.hole().found().orElseThrow().centre().distanceMm(new Point(5.2, 6)), 1e-9);
    MeasuredHole hole = Gauging.measure(sketch, FITTER).hole().orElseThrow();
    assertTrue(
        Gauging.told(hole, LengthUnit.MILLIMETRE).contains("Two readings check nothing"),
        Gauging.told(hole, LengthUnit.MILLIMETRE));
  }

  /** Opposite edges read 0.06 mm too much in all: least squares leave 0.03 mm to each, by hand. */
  @Test
  void aThirdReadingIsWeighedAndWhatIsLeftOverIsTold() {
    Sketch sketch =
        read(
            new Entry("edge 1 to 2", mm(7.5)),
            new Entry("edge 4 to 1", mm(6.73)),
            new Entry("edge 2 to 3", mm(8.33)),
            Entry.BLANK);
    MeasuredHole hole = Gauging.measure(sketch, FITTER).hole().orElseThrow();
    assertEquals(0, hole.centre().distanceMm(new Point(5.2, 6)), 1e-9);
    String told = Gauging.told(hole, LengthUnit.MILLIMETRE);
    assertTrue(told.contains("edge 4 to 1 +0.030 mm, edge 2 to 3 +0.030 mm"), told);
  }

  @Test
  void readingsThatContradictAreTold() {
    Sketch sketch =
        read(
            new Entry("edge 1 to 2", mm(7.5)),
            new Entry("edge 4 to 1", mm(6.7)),
            new Entry("edge 2 to 3", mm(9.3)));
    MeasuredHole hole = Gauging.measure(sketch, FITTER).hole().orElseThrow();
    assertTrue(Gauging.told(hole, LengthUnit.MILLIMETRE).contains("do not agree"));
  }

  @Test
  void nothingIsGuessedWhereSomethingIsMissing() {
    Sketch one = read(new Entry("edge 1 to 2", mm(7.5)), Entry.BLANK);
    assertEquals(new Gauging.Gauged(Optional.empty(), ""), Gauging.measure(one, FITTER));
    assertEquals(one, Gauging.placed(one, FITTER));
    Sketch two = read(new Entry("edge 1 to 2", mm(7.5)), new Entry("edge 4 to 1", mm(6.7)));
    Practice practice = two.hole().practice();
    Sketch noPin =
        two.with(two.hole().with(practice.with(practice.readings().over(Optional.empty()))));
    assertEquals("Measure the pin and type its size.", Gauging.measure(noPin, FITTER).trouble());
    Sketch parallel = read(new Entry("edge 1 to 2", mm(7.5)), new Entry("edge 3 to 4", mm(7.5)));
    assertTrue(Gauging.measure(parallel, FITTER).trouble().contains("parallel"));
  }

  @Test
  void theDraftKeepsWhatWasReadAndWhatIsKept() {
    Sketch sketch = read(new Entry("edge 1 to 2", mm(7.5)), new Entry("edge 4 to 1", mm(6.7)));
    Practice practice = sketch.hole().practice().with(new Margins(0.15, 0.08, 1.2));
    Sketch whole = sketch.with(sketch.hole().with(practice));
    assertEquals(whole, Draft.read(Draft.write(whole)));
    assertEquals(Sketch.EMPTY, Draft.read(Draft.write(Sketch.EMPTY)));
  }
}
