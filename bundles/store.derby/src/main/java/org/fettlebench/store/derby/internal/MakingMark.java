package org.fettlebench.store.derby.internal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.fettlebench.store.StoreException;

/**
 * A file that is there, and locked, while a new store is being made. Found without its lock, it
 * says that the making was broken off and that what lies there holds nothing anybody was promised.
 */
final class MakingMark implements AutoCloseable {
  private final Path file;
  private final FileChannel channel;

  private MakingMark(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /**
   * Sets the mark, or takes over one that was left behind.
   *
   * @throws StoreException if another program is making the store now
   */
  static MakingMark set(Path file) throws IOException {
    FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    if (!isOurs(channel)) {
      channel.close();
      throw new StoreException(
          "the store beside "
              + file
              + " is being made by another program; close the suite that has it open, "
              + "or choose another data directory");
    }
    return new MakingMark(file, channel);
  }

  private static boolean isOurs(FileChannel channel) throws IOException {
    try {
      return channel.tryLock() != null;
    } catch (OverlappingFileLockException heldInThisProgram) {
      return false;
    }
  }

  /** Takes the mark away: the store is whole. */
  void remove() throws IOException {
    channel.close();
    Files.delete(file);
  }

  /** Leaves the mark, if it was not removed, but not its lock. */
  @Override
  public void close() throws IOException {
    channel.close();
  }
}
