package org.fettlebench.benchmarks;

import java.io.PrintStream;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/**
 * Runs the benchmarks whose names hold a regular expression, shortly, and prints one line for each:
 * time of one call with the half width of its 99.9 per cent interval, processor time of one call
 * over all threads, and calls in a second. Properties {@code warm} and {@code measure} set seconds
 * of both in place of 3 and 5.
 */
public final class Run {
  private static final String PACKAGE = Run.class.getPackageName() + ".";

  private Run() {}

  /**
   * Runs them.
   *
   * @param words at most one regular expression; all benchmarks without it
   * @throws RunnerException if none fits, or one fails
   */
  public static void main(String[] words) throws RunnerException {
    ChainedOptionsBuilder options =
        new OptionsBuilder()
            .mode(Mode.AverageTime)
            .timeUnit(TimeUnit.NANOSECONDS)
            .forks(1)
            .warmupIterations(Integer.getInteger("warm", 3))
            .warmupTime(TimeValue.seconds(1))
            .measurementIterations(Integer.getInteger("measure", 5))
            .measurementTime(TimeValue.seconds(1))
            .addProfiler(ProcessorTime.class)
            .jvmArgs("-XX:+UseSerialGC", "-Xmx512m")
            .shouldFailOnError(true)
            .verbosity(VerboseMode.SILENT);
    List.of(words).forEach(options::include);
    print(new Runner(options.build()).run(), System.out);
  }

  private static void print(Collection<RunResult> results, PrintStream out) {
    out.printf(
        Locale.UK,
        "%-58s %14s %9s %14s %14s%n",
        "benchmark",
        "one call, us",
        "+-",
        "processor, us",
        "in a second");
    results.stream()
        .sorted(Comparator.comparing(result -> name(result.getParams())))
        .forEach(result -> out.println(line(result)));
  }

  private static String line(RunResult result) {
    Result<?> time = result.getPrimaryResult();
    return String.format(
        Locale.UK,
        "%-58s %14.3f %9.3f %14.3f %,14.0f",
        name(result.getParams()),
        time.getScore() / 1e3,
        time.getScoreError() / 1e3,
        result.getSecondaryResults().get(ProcessorTime.NAME).getScore() / 1e3,
        1e9 / time.getScore());
  }

  private static String name(BenchmarkParams params) {
    StringBuilder name = new StringBuilder(params.getBenchmark().replace(PACKAGE, ""));
    params.getParamsKeys().forEach(key -> name.append(' ').append(params.getParam(key)));
    return name.toString();
  }
}
