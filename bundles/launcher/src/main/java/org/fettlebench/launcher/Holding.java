package org.fettlebench.launcher;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/** Gets hold of a data directory, or of the suite that holds it. */
final class Holding {
  private static final long PAUSE_NANOS = TimeUnit.MILLISECONDS.toNanos(40);

  private final DataDirectory data;
  private final Duration patience;

  Holding(DataDirectory data, Duration patience) {
    this.data = data;
    this.patience = patience;
  }

  /**
   * What was got: one of the two.
   *
   * @param lock the data directory itself
   * @param suite a connection to the suite that holds it
   */
  record Got(Optional<SuiteLock> lock, Optional<CallClient> suite) {}

  /**
   * Takes the lock, or connects to a window that holds it; another call on the command line is
   * waited for.
   *
   * @param what the name under which the lock is taken
   * @throws LaunchException when neither succeeds in time, naming who holds the data
   */
  Got get(String what) {
    long end = System.nanoTime() + patience.toNanos();
    do {
      Optional<SuiteLock> lock = SuiteLock.take(data.lock(), what);
      Optional<CallClient> suite = lock.isPresent() ? Optional.empty() : window();
      if (lock.isPresent() || suite.isPresent()) {
        return new Got(lock, suite);
      }
      LockSupport.parkNanos(PAUSE_NANOS);
    } while (System.nanoTime() < end);
    throw new LaunchException(heldBy());
  }

  private Optional<CallClient> window() {
    return SuiteLock.holder(data.lock()).filter(SuiteLock.Holder::desktop).isPresent()
        ? CallClient.connect(new SocketPlace(data))
        : Optional.empty();
  }

  private String heldBy() {
    String who =
        SuiteLock.holder(data.lock())
            .map(
                holder ->
                    holder.desktop()
                        ? "a suite's window (process %d) that does not answer"
                            .formatted(holder.process())
                        : "another call on the command line (process %d)"
                            .formatted(holder.process()))
            .orElse("another suite");
    return "The data in %s are held by %s. Wait until it has finished, or close it, then try again; or give another directory with --data DIR."
        .formatted(data.path(), who);
  }
}
