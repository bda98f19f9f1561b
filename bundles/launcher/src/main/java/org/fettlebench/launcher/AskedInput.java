package org.fettlebench.launcher;

import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;

/**
 * The caller's standard input, fetched only when it is read: a call that reads nothing must leave
 * the input of the shell loop around it alone.
 */
final class AskedInput extends InputStream {
  private static final int MOST_BYTES = 1 << 16;

  private final Frames frames;
  private byte[] held = new byte[0];
  private int at;
  private boolean ended;

  AskedInput(Frames frames) {
    this.frames = frames;
  }

  @Override
  public int read() throws IOException {
    return fill() ? held[at++] & 0xff : -1;
  }

  @Override
  public int read(byte[] bytes, int from, int count) throws IOException {
    Objects.checkFromIndexSize(from, count, bytes.length);
    if (count == 0) {
      return 0;
    }
    if (!fill()) {
      return -1;
    }
    int given = Math.min(count, held.length - at);
    System.arraycopy(held, at, bytes, from, given);
    at += given;
    return given;
  }

  private boolean fill() throws IOException {
    while (!ended && at == held.length) {
      frames.send(Frames.Kind.WANT, MOST_BYTES);
      Frames.Frame frame = frames.next();
      ended = frame.kind() != Frames.Kind.INPUT;
      held = ended ? new byte[0] : frame.bytes();
      at = 0;
    }
    return !ended;
  }
}
