package org.fettlebench.launcher;

/** Ends cleanly when the process is asked to end (SIGTERM, SIGINT, log-off). */
final class Shutdown {
  private Shutdown() {}

  /** Runs the action when the process ends; it must bear being run after a clean end, too. */
  static void onSignal(Runnable action) {
    Runtime.getRuntime().addShutdownHook(new Thread(action, "shutdown"));
  }
}
