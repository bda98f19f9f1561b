package org.fettlebench.desktop.internal;

import java.time.Duration;
import java.time.Instant;

/** Tells how long ago the program was started. */
final class Milestone {
  private Milestone() {}

  static long millisecondsSinceStart() {
    return ProcessHandle.current()
        .info()
        .startInstant()
        .map(start -> Duration.between(start, Instant.now()).toMillis())
        .orElse(-1L);
  }
}
