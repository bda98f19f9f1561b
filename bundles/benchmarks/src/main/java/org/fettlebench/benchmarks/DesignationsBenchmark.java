package org.fettlebench.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.threads.ThreadSeries;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Reading designations one after the other that were never asked before. */
@State(Scope.Benchmark)
public class DesignationsBenchmark {
  private ThreadRegistry threads;
  private List<String> designations;
  private int next;

  /** Reads the shipped tables; writes every thread in ten ways. */
  @Setup
  public void read() {
    threads = Shipped.threads(FixedTables.carriedBy(ThreadRegistry.class));
    designations = new ArrayList<>();
    for (int spaces = 1; spaces <= 10; spaces++) {
      for (ThreadSeries series : threads.series()) {
        for (ScrewThread thread : series.threads()) {
          designations.add(" ".repeat(spaces) + thread.designation());
        }
      }
    }
  }

  /** The thread alone. */
  @Benchmark
  public Optional<ScrewThread> find() {
    next = (next + 1) % designations.size();
    return threads.find(designations.get(next));
  }

  /** The thread and its class. */
  @Benchmark
  public Optional<ThreadCall> call() {
    next = (next + 1) % designations.size();
    return threads.read(designations.get(next));
  }
}
