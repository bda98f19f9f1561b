package org.fettlebench.launcher;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;

/** Waits for what another process does. */
final class Eventually {
  private static final long MOST_NANOS = TimeUnit.SECONDS.toNanos(20);

  private Eventually() {}

  static void exists(Path file) {
    isTrue(file + " appears", () -> Files.exists(file));
  }

  static void isTrue(String what, BooleanSupplier condition) {
    long end = System.nanoTime() + MOST_NANOS;
    while (!condition.getAsBoolean() && System.nanoTime() < end) {
      LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(20));
    }
    assertTrue(condition.getAsBoolean(), what);
  }
}
