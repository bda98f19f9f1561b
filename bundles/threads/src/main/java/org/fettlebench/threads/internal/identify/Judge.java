package org.fettlebench.threads.internal.identify;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.fettlebench.measure.Length;
import org.fettlebench.threads.DiameterRange;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadClasses;
import org.fettlebench.threads.ThreadSide;
import org.fettlebench.threads.identify.Measured;
import org.fettlebench.threads.identify.Reading;

/** Judges one thread against what was measured; millimetres throughout. */
final class Judge {
  /** Hexagons are made up to 3 per cent below the listed size. Common practice, no source. */
  private static final double HEXAGON_BELOW = 0.03;

  /** A hexagon that is no listed one is as likely anywhere over 30 mm, and one in ten. */
  private static final double UNLISTED = 0.1;

  private static final double UNLISTED_OVER_MM = 30;

  private static final double WITHIN = 3;

  private final Measured measured;
  private final ThreadClasses classes;
  private final Function<ScrewThread, List<Length>> hexagons;

  Judge(Measured measured, ThreadClasses classes, Function<ScrewThread, List<Length>> hexagons) {
    this.measured = measured;
    this.classes = classes;
    this.hexagons = hexagons;
  }

  /** How a thread fares. */
  record Verdict(
      ScrewThread thread,
      double logLikelihood,
      Optional<Double> diameterOff,
      Optional<Double> pitchOff,
      Optional<Double> hexagonOff,
      boolean agrees) {}

  private record Range(double least, double most) {
    double off(double reading) {
      return reading < least ? reading - least : Math.max(0, reading - most);
    }
  }

  Verdict judge(ScrewThread thread) {
    double log = 0;
    boolean agrees = true;
    Optional<Double> diameterOff = Optional.empty();
    if (measured.diameter().isPresent()) {
      Reading reading = measured.diameter().get();
      Range range = diameters(thread);
      double value = reading.value().millimetres();
      double uncertainty = reading.uncertainty().millimetres();
      log += Likelihood.ofRange(value, range.least(), range.most(), uncertainty);
      diameterOff = Optional.of(range.off(value));
      agrees = Math.abs(range.off(value)) <= WITHIN * uncertainty;
    }
    Optional<Double> pitchOff =
        measured.pitch().map(reading -> reading.value().minus(thread.pitch()).millimetres());
    if (pitchOff.isPresent()) {
      double uncertainty = measured.pitch().get().uncertainty().millimetres();
      log += Likelihood.ofPoint(pitchOff.get(), 0, uncertainty);
      agrees &= Math.abs(pitchOff.get()) <= WITHIN * uncertainty;
    }
    Optional<Double> hexagonOff = Optional.empty();
    if (measured.hexagon().isPresent()) {
      List<Length> listed = hexagons.apply(thread);
      log += hexagon(listed, measured.hexagon().get());
      hexagonOff = hexagonOff(listed, measured.hexagon().get());
    }
    return new Verdict(thread, log, diameterOff, pitchOff, hexagonOff, agrees);
  }

  private Range diameters(ScrewThread thread) {
    boolean screw = measured.side() == ThreadSide.EXTERNAL;
    double wear = measured.wear().millimetres();
    Optional<DiameterRange> limits =
        classes.classes(thread).stream()
            .findFirst()
            .flatMap(
                usual ->
                    classes.limits(thread, usual).stream()
                        .filter(one -> one.side() == measured.side())
                        .findFirst())
            .map(one -> screw ? one.major() : one.minor());
    double basic = (screw ? thread.major() : thread.minorInternal()).millimetres();
    double least = limits.flatMap(DiameterRange::least).map(Length::millimetres).orElse(basic);
    double most = limits.flatMap(DiameterRange::most).map(Length::millimetres).orElse(basic);
    return screw ? new Range(least - wear, most) : new Range(least, most + wear);
  }

  private static double hexagon(List<Length> listed, Reading reading) {
    double value = reading.value().millimetres();
    double density = (listed.isEmpty() ? 1 : UNLISTED) / UNLISTED_OVER_MM;
    for (Length flats : listed) {
      double most = flats.millimetres();
      density +=
          (1 - UNLISTED)
              / listed.size()
              * Math.exp(
                  Likelihood.ofRange(
                      value,
                      most * (1 - HEXAGON_BELOW),
                      most,
                      reading.uncertainty().millimetres()));
    }
    return Math.log(density);
  }

  private static Optional<Double> hexagonOff(List<Length> listed, Reading reading) {
    double value = reading.value().millimetres();
    return listed.stream()
        .map(
            flats ->
                new Range(flats.millimetres() * (1 - HEXAGON_BELOW), flats.millimetres())
                    .off(value))
        .min(Comparator.comparing(Math::abs));
  }
}
