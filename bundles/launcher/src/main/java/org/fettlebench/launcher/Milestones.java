package org.fettlebench.launcher;

import java.io.PrintStream;

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
      ERR.println("milestone " + (System.currentTimeMillis() - STARTED) + " ms " + what);
    }
  }
}
