package org.fettlebench.launcher;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.function.IntSupplier;

/**
 * Holds a data directory for one suite. The operating system lets go of it when the process ends,
 * however it ends; what stands in the file is only there to tell others who holds it.
 */
final class SuiteLock implements AutoCloseable {
  /** What a desktop calls itself. */
  static final String DESKTOP = "desktop";

  /** What a call on the command line calls itself. */
  static final String COMMAND = "command line";

  // Beyond the text, so that others can read the text even where locks are mandatory.
  private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

  private final FileChannel channel;

  private SuiteLock(FileChannel channel) {
    this.channel = channel;
  }

  /**
   * Who holds a data directory.
   *
   * @param process its process id
   * @param what {@link #DESKTOP} or {@link #COMMAND}
   */
  record Holder(long process, String what) {
    boolean desktop() {
      return what.equals(DESKTOP);
    }
  }

  /** Takes the lock if it is free. */
  static Optional<SuiteLock> take(Path file, String what) {
    try {
      FileChannel channel =
          FileChannel.open(
              file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
      if (!locked(channel)) {
        channel.close();
        return Optional.empty();
      }
      SuiteLock lock = new SuiteLock(channel);
      lock.write(ProcessHandle.current().pid() + "\n" + what + "\n");
      return Optional.of(lock);
    } catch (IOException e) {
      throw new LaunchException("The lock " + file + " cannot be used: " + e, e);
    }
  }

  private static boolean locked(FileChannel channel) throws IOException {
    try {
      FileLock lock = channel.tryLock(LOCKED_BYTE, 1, false);
      return lock != null;
    } catch (OverlappingFileLockException e) {
      return false; // held by this very process
    }
  }

  /** Reads who holds the lock; empty while it is being taken, or when nobody does. */
  static Optional<Holder> holder(Path file) {
    try {
      List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
      return lines.size() < 2
          ? Optional.empty()
          : Optional.of(new Holder(Long.parseLong(lines.get(0)), lines.get(1)));
    } catch (IOException | NumberFormatException e) {
      return Optional.empty();
    }
  }

  /** Does work while the lock is held, and gives it back. */
  int during(IntSupplier work) {
    try {
      return work.getAsInt();
    } finally {
      close();
    }
  }

  private void write(String text) throws IOException {
    channel.truncate(0);
    channel.write(ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8)), 0);
  }

  @Override
  public void close() {
    try (channel) {
      channel.truncate(0);
    } catch (IOException e) {
      throw new LaunchException("The lock could not be given back: " + e, e);
    }
  }
}
