package org.fettlebench.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.profile.InternalProfiler;
import org.openjdk.jmh.results.AggregationPolicy;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.ScalarResult;

/**
 * Counts the time that processors were at work for the measured process, over all its threads and
 * the compiler's: what can be compared on a machine that others use too.
 */
public final class ProcessorTime implements InternalProfiler {
  /** Name of the result: nanoseconds of processor time for one call. */
  static final String NAME = "processor";

  private final OperatingSystemMXBean system =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
  private long before;

  @Override
  public String getDescription() {
    return "processor time of one call";
  }

  @Override
  public void beforeIteration(BenchmarkParams benchmark, IterationParams iteration) {
    before = system.getProcessCpuTime();
  }

  @Override
  public Collection<? extends Result<?>> afterIteration(
      BenchmarkParams benchmark, IterationParams iteration, IterationResult result) {
    double spent = system.getProcessCpuTime() - before;
    double calls = Math.max(1, result.getMetadata().getAllOps());
    return List.of(new ScalarResult(NAME, spent / calls, "ns", AggregationPolicy.AVG));
  }
}
