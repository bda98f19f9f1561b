package org.fettlebench.benchmarks;

import java.util.OptionalDouble;
import java.util.concurrent.ForkJoinPool;
import org.fettlebench.holes.chance.Chance;
import org.fettlebench.holes.internal.patterns.PatternsService;
import org.fettlebench.holes.patterns.HolePattern;
import org.fettlebench.holes.patterns.PatternPart;
import org.fettlebench.holes.patterns.PatternQuestion;
import org.fettlebench.holes.patterns.PlacingLaw;
import org.fettlebench.holes.patterns.PlayNeeded;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/** Chance of a pattern of 12 holes to half a per cent at worst: 10 000 simulated pairs of parts. */
@State(Scope.Benchmark)
public class PatternsBenchmark {
  private final PatternsService patterns = new PatternsService();
  private final ForkJoinPool single = new ForkJoinPool(1);
  private final PatternQuestion twelve = question();

  private static PatternQuestion question() {
    Source source = new Source("benchmark", Standing.RULE);
    PlacingLaw law = PlacingLaw.normal(0.08, "benchmark", source);
    return new PatternQuestion(
        HolePattern.circle("ring", 60, 12, 15),
        5,
        new PatternPart("cover", OptionalDouble.of(5.6), law),
        new PatternPart("body", OptionalDouble.empty(), law),
        10_000,
        1);
  }

  /** Stops the pool of one thread. */
  @TearDown
  public void stop() {
    single.shutdownNow();
  }

  /** On all cores. */
  @Benchmark
  public Chance chance() {
    return patterns.chance(twelve);
  }

  /** The same trials one after the other, to compare with. */
  @Benchmark
  public Chance chanceOneThread() {
    return single.submit(() -> patterns.chance(twelve)).join();
  }

  /** The least play of every trial, from which a drill is chosen. */
  @Benchmark
  public PlayNeeded needed() {
    return patterns.needed(twelve);
  }
}
