package org.fettlebench.threads.internal.identify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Tables;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadClasses;
import org.fettlebench.threads.ThreadSeries;
import org.fettlebench.threads.Threads;
import org.fettlebench.threads.identify.Candidate;
import org.fettlebench.threads.identify.CrossPair;
import org.fettlebench.threads.identify.CrossingRule;
import org.fettlebench.threads.identify.Measured;
import org.fettlebench.threads.identify.ThreadIdentifier;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Goes through all threads of all series. */
@Component
public final class IdentifyService implements ThreadIdentifier {
  /** Pitches this near to one another let a screw go all the way. */
  private static final double GOES_ON = 0.01;

  /** Sizes of one thread under two names differ by rounding only. */
  private static final Length SAME = Length.ofNanometres(2000);

  private final Threads threads;
  private final ThreadClasses classes;
  private final Tables tables;

  /** What was read of the tables at a revision; empty until a hexagon was measured. */
  private record Known(long revision, Hexagons hexagons) {}

  private Optional<Known> known = Optional.empty();

  /** Takes the threads, their limits and the tables of heads. */
  @Activate
  public IdentifyService(
      @Reference Threads threads, @Reference ThreadClasses classes, @Reference Tables tables) {
    this.threads = threads;
    this.classes = classes;
    this.tables = tables;
  }

  @Override
  public List<Candidate> identify(Measured measured, int most) {
    if (!(most >= 1)) {
      throw new IllegalArgumentException(most + " candidates is below 1");
    }
    Judge judge = new Judge(measured, classes, this::hexagons);
    List<Judge.Verdict> verdicts =
        all(List.of()).stream()
            .map(judge::judge)
            .sorted(Comparator.comparingDouble(Judge.Verdict::logLikelihood).reversed())
            .toList();
    double best = verdicts.isEmpty() ? 0 : verdicts.get(0).logLikelihood();
    double sum = verdicts.stream().mapToDouble(one -> Math.exp(one.logLikelihood() - best)).sum();
    return verdicts.stream()
        .limit(most)
        .map(one -> candidate(one, Math.exp(one.logLikelihood() - best) / sum))
        .toList();
  }

  private synchronized List<Length> hexagons(ScrewThread thread) {
    long revision = tables.revision();
    if (known.filter(read -> read.revision() == revision).isEmpty()) {
      known = Optional.of(new Known(revision, new Hexagons(tables)));
    }
    return known.orElseThrow().hexagons().of(thread);
  }

  private static Candidate candidate(Judge.Verdict verdict, double share) {
    return new Candidate(
        verdict.thread(),
        share,
        mm(verdict.diameterOff()),
        mm(verdict.pitchOff()),
        mm(verdict.hexagonOff()),
        verdict.agrees());
  }

  private static Optional<Length> mm(Optional<Double> off) {
    return off.map(Length::ofMillimetres);
  }

  private List<ScrewThread> all(List<String> series) {
    return threads.series().stream()
        .filter(one -> series.isEmpty() || series.contains(one.id()))
        .map(ThreadSeries::threads)
        .flatMap(List::stream)
        .toList();
  }

  @Override
  public List<CrossPair> pairs(List<String> series, CrossingRule rule) {
    List<ScrewThread> all = all(series);
    List<CrossPair> pairs = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        pair(all.get(i), all.get(j), rule).ifPresent(pairs::add);
      }
    }
    return List.copyOf(pairs);
  }

  @Override
  public List<CrossPair> pairsOf(ScrewThread thread, CrossingRule rule) {
    return all(List.of()).stream()
        .filter(
            other ->
                !(other.series().equals(thread.series()) && other.size().equals(thread.size())))
        .map(other -> pair(thread, other, rule))
        .flatMap(Optional::stream)
        .sorted(Comparator.comparingDouble(IdentifyService::distance))
        .toList();
  }

  private static Optional<CrossPair> pair(
      ScrewThread first, ScrewThread second, CrossingRule rule) {
    Length diameter = second.major().minus(first.major());
    Length pitch = second.pitch().minus(first.pitch());
    double finer = Math.min(first.pitch().millimetres(), second.pitch().millimetres());
    boolean near =
        Math.abs(diameter.millimetres()) <= rule.diameterShare() * finer
            && Math.abs(pitch.millimetres()) <= rule.pitchShare() * finer;
    return near
        ? Optional.of(
            new CrossPair(
                first, second, diameter, pitch, kind(first, second, diameter, pitch, finer)))
        : Optional.empty();
  }

  private static CrossPair.Kind kind(
      ScrewThread first, ScrewThread second, Length diameter, Length pitch, double finer) {
    boolean alike =
        first.form().includedAngleDegrees() == second.form().includedAngleDegrees()
            && diameter.abs().compareTo(SAME) <= 0
            && pitch.abs().compareTo(SAME) <= 0;
    if (alike) {
      return CrossPair.Kind.SAME;
    }
    return Math.abs(pitch.millimetres()) <= GOES_ON * finer
        ? CrossPair.Kind.GOES_ON
        : CrossPair.Kind.BINDS;
  }

  /** Differences over the finer pitch; a pitch error grows with every turn and weighs ten times. */
  private static double distance(CrossPair pair) {
    double finer =
        Math.min(pair.first().pitch().millimetres(), pair.second().pitch().millimetres());
    return (Math.abs(pair.diameterDifference().millimetres())
            + 10 * Math.abs(pair.pitchDifference().millimetres()))
        / finer;
  }
}
