package org.fettlebench.benchmarks;

import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Tables;
import org.fettlebench.threads.ThreadSide;
import org.fettlebench.threads.identify.Candidate;
import org.fettlebench.threads.identify.CrossPair;
import org.fettlebench.threads.identify.CrossingRule;
import org.fettlebench.threads.identify.Measured;
import org.fettlebench.threads.identify.Reading;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.fettlebench.threads.internal.identify.IdentifyService;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Naming a thread out of all series, and all pairs that could be crossed. */
@State(Scope.Benchmark)
public class IdentifyBenchmark {
  private IdentifyService identifier;
  private Measured measured;
  private Measured withHexagon;

  /** Reads the shipped tables. */
  @Setup
  public void read() {
    Tables tables = Shipped.tables();
    ThreadRegistry threads = Shipped.threads(tables);
    identifier = new IdentifyService(threads, threads, tables);
    measured = measured(Optional.empty());
    withHexagon = measured(Optional.of(reading(9.9, 0.1)));
  }

  private static Measured measured(Optional<Reading> hexagon) {
    return new Measured(
        ThreadSide.EXTERNAL,
        Optional.of(reading(5.88, 0.02)),
        Optional.of(reading(1.0, 0.01)),
        hexagon,
        Length.ZERO);
  }

  private static Reading reading(double mm, double uncertaintyMm) {
    return new Reading(Length.ofMillimetres(mm), Length.ofMillimetres(uncertaintyMm));
  }

  /** By diameter and pitch. */
  @Benchmark
  public List<Candidate> identify() {
    return identifier.identify(measured, 5);
  }

  /** By the hexagon too. */
  @Benchmark
  public List<Candidate> identifyByHexagon() {
    return identifier.identify(withHexagon, 5);
  }

  /** All pairs of all series. */
  @Benchmark
  public List<CrossPair> pairs() {
    return identifier.pairs(List.of(), CrossingRule.USUAL);
  }
}
