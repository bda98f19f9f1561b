package org.fettlebench.launcher;

import java.io.PrintStream;
import java.time.Duration;

/**
 * Tells how long after the start of the process things were reached, when the system property
 * {@code fettlebench.bench} is set; product/bench/start-up reads the lines.
 */
final class Milestones {
  private static final boolean WANTED = System.getProperty("fettlebench.bench") != null;
  private static final long STARTED = Long.getLong("fettlebench.bench", 0);
  private static final PrintStream ERR = System.err;

  private Milestones() {}

  static boolean wanted() {
    return WANTED;
  }

  static void reached(String what) {
    if (WANTED) {
      ERR.println(
          "milestone "
              + (System.currentTimeMillis() - STARTED)
              + " ms, processor "
              + processorMs()
              + " ms "
              + what);
    }
  }

  /** Returns what the process has used of all processors, which a busy machine hardly changes. */
  private static long processorMs() {
    return ProcessHandle.current().info().totalCpuDuration().map(Duration::toMillis).orElse(-1L);
  }
}
