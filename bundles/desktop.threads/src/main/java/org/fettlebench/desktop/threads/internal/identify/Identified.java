package org.fettlebench.desktop.threads.internal.identify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fettlebench.desktop.threads.internal.compare.CrossingBook;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.identify.Candidate;
import org.fettlebench.threads.identify.CrossPair;
import org.fettlebench.threads.identify.Measured;
import org.fettlebench.threads.identify.Reading;
import org.fettlebench.threads.identify.ThreadIdentifier;

/**
 * The threads that may have been measured.
 *
 * @param measured what was measured
 * @param candidates the likeliest first
 */
record Identified(Measured measured, List<Candidate> candidates) {
  static final int MOST = 8;

  private static final double SURE = 0.9;
  private static final double LEAST_RIVAL = 0.005;

  static Identified by(ThreadIdentifier identifier, Measured measured) {
    return new Identified(measured, identifier.identify(measured, MOST));
  }

  boolean agrees() {
    return candidates.stream().anyMatch(Candidate::agrees);
  }

  /** Returns the answer in one sentence. */
  String answer() {
    if (candidates.isEmpty()) {
      return "No series is enabled that could name it";
    }
    Candidate first = candidates.get(0);
    String name = first.thread().designation();
    if (!agrees()) {
      return "No listed thread agrees; the nearest is " + name;
    }
    String share = percent(first.share());
    return first.share() >= SURE
        ? name + ", " + share + " likely"
        : rival()
            .map(second -> "Likely " + name + " (" + share + "), or " + second)
            .orElse("Likely " + name + ", " + share);
  }

  private Optional<String> rival() {
    return candidates.stream()
        .skip(1)
        .findFirst()
        .filter(second -> second.share() > LEAST_RIVAL)
        .map(second -> second.thread().designation() + " (" + percent(second.share()) + ")");
  }

  static String percent(double share) {
    double percent = 100 * share;
    return percent > 99.5 && percent < 100
        ? "above 99 %"
        : percent > 0 && percent < 0.5 ? "below 1 %" : Figures.show(percent, 0) + " %";
  }

  /** Returns what was understood, each figure with its uncertainty. */
  String understood(Readings typed, LengthUnit unit) {
    List<String> parts = new ArrayList<>();
    measured.diameter().ifPresent(r -> parts.add(said("diameter", r, typed.diameterError(), unit)));
    measured
        .pitch()
        .ifPresent(
            r ->
                parts.add(
                    said("pitch", r, typed.pitchError(), unit)
                        + " ("
                        + Figures.show(25.4 / r.value().millimetres(), 1)
                        + " per inch)"));
    measured.hexagon().ifPresent(r -> parts.add(said("hexagon", r, typed.hexagonError(), unit)));
    parts.add(
        measured.wear().isPositive()
            ? "worn up to " + LengthFormat.show(measured.wear(), unit, decimals(unit))
            : "no wear allowed for");
    return "A " + measured.side().word() + ": " + String.join(", ", parts) + ".";
  }

  private static String said(String name, Reading reading, String typedError, LengthUnit unit) {
    int decimals = decimals(unit);
    return name
        + " "
        + LengthFormat.number(reading.value(), unit, decimals)
        + " \u00b1 "
        + LengthFormat.show(reading.uncertainty(), unit, decimals)
        + (typedError.isBlank() ? " as usual" : "");
  }

  private static int decimals(LengthUnit unit) {
    return unit == LengthUnit.INCH ? 4 : 3;
  }

  /**
   * Returns the thread that a person would cross with one: of those easily taken for it the
   * likeliest by what was measured, else the nearest; else the next candidate.
   */
  Optional<ScrewThread> crossedWith(ScrewThread one, CrossingBook book) {
    List<ScrewThread> easily = book.pairsOf(one).stream().map(CrossPair::second).toList();
    return candidates.stream()
        .map(Candidate::thread)
        .filter(easily::contains)
        .findFirst()
        .or(() -> easily.stream().findFirst())
        .or(
            () ->
                candidates.stream()
                    .sorted(Comparator.comparingDouble(Candidate::share).reversed())
                    .map(Candidate::thread)
                    .filter(other -> !other.equals(one))
                    .findFirst());
  }
}
