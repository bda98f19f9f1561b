package org.fettlebench.launcher;

import java.io.BufferedInputStream;
import java.io.Closeable;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;

/**
 * One connection between a call on the command line and the running suite, as frames: one byte for
 * the kind, four for the length (big-endian), then the bytes. README.md tells the conversation.
 */
final class Frames implements Closeable {
  /** Says which conversation this is; another number is refused. */
  static final String PROTOCOL = "fettlebench 1";

  private static final int MOST_BYTES = 1 << 20;

  private final SocketChannel channel;
  private final DataInputStream in;
  private final DataOutputStream out;

  Frames(SocketChannel channel) {
    this.channel = channel;
    this.in = new DataInputStream(new BufferedInputStream(Channels.newInputStream(channel)));
    this.out = new DataOutputStream(Channels.newOutputStream(channel));
  }

  /** Kinds of frame. */
  enum Kind {
    /** Client: the protocol's name. */
    HELLO('H'),
    /** Client: the directory in which the person stands. */
    DIRECTORY('D'),
    /** Client: one word of the call. */
    WORD('A'),
    /** Client: run the call that was told. */
    RUN('R'),
    /** Client: bring the window to the front. */
    FRONT('F'),
    /** Client: bytes of the standard input. */
    INPUT('I'),
    /** Client: there is no more input. */
    INPUT_END('E'),
    /** Suite: send input, at most so many bytes. */
    WANT('W'),
    /** Suite: bytes for the standard output. */
    OUT('O'),
    /** Suite: bytes for the standard error. */
    ERROR('X'),
    /** Suite: the exit status, four bytes; the last frame. */
    STATUS('S');

    private final byte code;

    Kind(char code) {
      this.code = (byte) code;
    }

    private static Kind of(byte code) throws IOException {
      for (Kind kind : values()) {
        if (kind.code == code) {
          return kind;
        }
      }
      throw new IOException("Frame kind " + code + " is not known");
    }
  }

  /**
   * A frame.
   *
   * @param kind what it is
   * @param bytes what it carries
   */
  record Frame(Kind kind, byte[] bytes) {
    String text() {
      return new String(bytes, StandardCharsets.UTF_8);
    }

    int number() throws IOException {
      if (bytes.length != Integer.BYTES) {
        throw new IOException("A number of " + bytes.length + " bytes instead of 4");
      }
      return ByteBuffer.wrap(bytes).getInt();
    }
  }

  /** Waits for the next frame; throws {@link EOFException} when the other side has gone. */
  Frame next() throws IOException {
    Kind kind = Kind.of(in.readByte());
    int length = in.readInt();
    if (!(length >= 0 && length <= MOST_BYTES)) {
      throw new IOException("A frame of " + length + " bytes is outside 0 to " + MOST_BYTES);
    }
    byte[] bytes = in.readNBytes(length);
    if (bytes.length < length) {
      throw new EOFException("A frame was cut short");
    }
    return new Frame(kind, bytes);
  }

  void send(Kind kind, String text) throws IOException {
    send(kind, text.getBytes(StandardCharsets.UTF_8));
  }

  void send(Kind kind, int number) throws IOException {
    send(kind, ByteBuffer.allocate(Integer.BYTES).putInt(number).array());
  }

  void send(Kind kind, byte[] bytes) throws IOException {
    send(kind, bytes, 0, bytes.length);
  }

  /** Sends bytes in as many frames as they need; several threads may send. */
  synchronized void send(Kind kind, byte[] bytes, int from, int count) throws IOException {
    int sent = 0;
    do {
      int part = Math.min(count - sent, MOST_BYTES);
      out.writeByte(kind.code);
      out.writeInt(part);
      out.write(bytes, from + sent, part);
      sent += part;
    } while (sent < count);
    out.flush();
  }

  /** Returns a stream that sends what is written as frames of a kind. */
  OutputStream stream(Kind kind) {
    return new OutputStream() {
      @Override
      public void write(int oneByte) throws IOException {
        send(kind, new byte[] {(byte) oneByte});
      }

      @Override
      public void write(byte[] bytes, int from, int count) throws IOException {
        if (count > 0) {
          send(kind, bytes, from, count);
        }
      }
    };
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
