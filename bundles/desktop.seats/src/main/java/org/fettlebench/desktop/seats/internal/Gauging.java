package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.fettlebench.desktop.seats.internal.Practice.Entry;
import org.fettlebench.desktop.seats.internal.Practice.Readings;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.holes.correct.HoleMeasuring;
import org.fettlebench.holes.correct.MeasuredHole;
import org.fettlebench.holes.correct.MeasuringQuestion;
import org.fettlebench.holes.correct.Reading;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;

/** Works a hole's place out of what was read at it; knows no window. */
final class Gauging {
  private Gauging() {}

  /**
   * What came of it; the trouble says why there is no place, or is empty while too little is read.
   */
  record Gauged(Optional<MeasuredHole> hole, String trouble) {}

  /** Returns where the readings of a sketch put its hole. */
  static Gauged measure(Sketch sketch, HoleMeasuring measuring) {
    Readings said = sketch.hole().practice().readings();
    long read = said.entries().stream().filter(entry -> entry.read().isPresent()).count();
    Recipes.Way way = Recipes.WAYS.get(said.way());
    if (read < 2 || said.doubt().isEmpty() || sketch.hole().found().isEmpty()) {
      return new Gauged(Optional.empty(), "");
    }
    if (way.pin() && said.pin().isEmpty()) {
      return new Gauged(Optional.empty(), "Measure the pin and type its size.");
    }
    try {
      return new Gauged(Optional.of(measuring.measure(question(sketch, way))), "");
    } catch (IllegalArgumentException refused) {
      return new Gauged(Optional.empty(), SeatWords.upper(refused.getMessage()) + ".");
    }
  }

  private static MeasuringQuestion question(Sketch sketch, Recipes.Way way) {
    Readings said = sketch.hole().practice().readings();
    double doubtMm = said.doubt().orElseThrow().millimetres();
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < said.entries().size(); i++) {
      Optional<Length> figure = said.entries().get(i).read();
      if (figure.isPresent()) {
        readings.add(
            new Reading(reference(sketch, i), way.to(), figure.get().millimetres(), doubtMm));
      }
    }
    OptionalDouble pinMm =
        way.pin()
            ? OptionalDouble.of(said.pin().orElseThrow().millimetres())
            : OptionalDouble.empty();
    return new MeasuringQuestion(
        readings,
        sketch.hole().found().orElseThrow().diameterMm(),
        pinMm,
        sketch.centre().orElseThrow());
  }

  /** Returns what a reading starts from: as chosen, else what fits the reading before it best. */
  static Reading.Reference reference(Sketch sketch, int entry) {
    List<Reading.Reference> all = Recipes.references(sketch);
    Entry said = sketch.hole().practice().readings().entries().get(entry);
    return all.stream()
        .filter(each -> each.name().equals(said.from()))
        .findFirst()
        .orElseGet(
            () -> entry == 0 ? all.get(0) : across(all, reference(sketch, entry - 1), entry));
  }

  /**
   * Returns a long edge that crosses another squarely; the next in the list where there is none.
   */
  private static Reading.Reference across(
      List<Reading.Reference> all, Reading.Reference before, int entry) {
    Reading.Reference found = all.get(entry % all.size());
    double most = 0;
    for (Reading.Reference each : all) {
      if (before instanceof Reading.Edge one && each instanceof Reading.Edge other) {
        double worth = crossingMm(one, other);
        if (worth > most) {
          most = worth;
          found = each;
        }
      }
    }
    return found;
  }

  /** Returns how long an edge is across another. */
  private static double crossingMm(Reading.Edge one, Reading.Edge other) {
    double dx = one.end().xMm() - one.start().xMm();
    double dy = one.end().yMm() - one.start().yMm();
    double ex = other.end().xMm() - other.start().xMm();
    double ey = other.end().yMm() - other.start().yMm();
    return Math.abs(dx * ey - dy * ex) / Math.hypot(dx, dy);
  }

  /** Returns the sketch with its hole where its readings put it; as it is where they do not. */
  static Sketch placed(Sketch sketch, HoleMeasuring measuring) {
    return measure(sketch, measuring)
        .hole()
        .map(
            hole ->
                sketch.with(
                    sketch
                        .hole()
                        .found(
                            sketch
                                .hole()
                                .found()
                                .map(
                                    old ->
                                        new SeatFile.Drilled(
                                            hole.centre(), old.diameterMm(), hole.withinMm())))))
        .orElse(sketch);
  }

  /** Says where the hole is, how the readings fit and what to mind. */
  static String told(MeasuredHole hole, LengthUnit unit) {
    String fit =
        switch (hole.agreement()) {
          case UNCHECKED -> "Two readings check nothing: one more would.";
          case AGREE -> "The readings agree; left over: " + misfits(hole, unit) + ".";
          case CONTRADICT -> "The readings do not agree; left over: " + misfits(hole, unit) + ".";
        };
    String cautions =
        hole.cautions().stream()
            .map(each -> " " + SeatWords.upper(LengthFormat.turned(each, unit)) + ".")
            .collect(Collectors.joining());
    return "The hole is at "
        + SeatWords.place(hole.centre(), unit)
        + ", known within "
        + SeatWords.both(hole.withinMm(), unit)
        + ". "
        + fit
        + cautions;
  }

  /** What was read less what should have been read at the place found, reading by reading. */
  private static String misfits(MeasuredHole hole, LengthUnit unit) {
    return hole.misfits().stream()
        .map(
            each ->
                each.reading().from().name()
                    + (Math.abs(each.misfitMm()) < 5e-4
                        ? " "
                        : each.misfitMm() < 0 ? " \u2212" : " +")
                    + LengthFormat.allowance(Length.ofMillimetres(Math.abs(each.misfitMm())), unit))
        .collect(Collectors.joining(", "));
  }
}
