package org.fettlebench.benchmarks;

import java.util.List;
import java.util.Optional;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Reading a designation, and the limits of one thread: screw and nut. */
@State(Scope.Benchmark)
public class ThreadsBenchmark {
  /** One of each standard, with the class that is asked. */
  @Param({"2 BA normal", "1/4 BSW medium", "M6x0.75-6H/6g", "1/4-20 UNC-2B/2A", "G1/8 A"})
  String call;

  private ThreadRegistry threads;
  private ScrewThread thread;
  private String threadClass;

  /** Reads the shipped tables. */
  @Setup
  public void read() {
    threads = Shipped.threads(FixedTables.carriedBy(ThreadRegistry.class));
    var read = threads.read(call).orElseThrow();
    thread = read.thread();
    threadClass = read.threadClass().orElseThrow();
  }

  /** From text to thread. */
  @Benchmark
  public Optional<ScrewThread> designation() {
    return threads.find(call);
  }

  /** From thread to limits. */
  @Benchmark
  public List<LimitsOfThread> limits() {
    return threads.limits(thread, threadClass);
  }
}
