package org.fettlebench.launcher;

import java.io.EOFException;
import java.io.IOException;
import java.io.OutputStream;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.SocketChannel;
import java.util.Arrays;
import java.util.Optional;

/** Hands a call to the suite that holds the data directory. */
final class CallClient implements AutoCloseable {
  private final Frames frames;

  private CallClient(Frames frames) {
    this.frames = frames;
  }

  /** Connects; empty when nobody listens (not yet, or no more). */
  static Optional<CallClient> connect(SocketPlace place) {
    try {
      SocketChannel channel = SocketChannel.open(StandardProtocolFamily.UNIX);
      try {
        channel.connect(UnixDomainSocketAddress.of(place.find()));
        return Optional.of(new CallClient(new Frames(channel)));
      } catch (IOException e) {
        channel.close();
        return Optional.empty();
      }
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Runs a call in the other suite, its streams joined to those given; returns its status. */
  int run(SuiteCalls.Call call) {
    return converse(
        call,
        () -> {
          frames.send(Frames.Kind.DIRECTORY, call.directory());
          for (String word : call.words()) {
            frames.send(Frames.Kind.WORD, word);
          }
          frames.send(Frames.Kind.RUN, "");
        });
  }

  /** Brings the other suite's window to the front; a status that is not 0 means it could not. */
  int front(SuiteCalls.Call call) {
    return converse(call, () -> frames.send(Frames.Kind.FRONT, ""));
  }

  private int converse(SuiteCalls.Call call, Opening opening) {
    try {
      frames.send(Frames.Kind.HELLO, Frames.PROTOCOL);
      opening.send();
      return listen(call);
    } catch (EOFException e) {
      throw new LaunchException(
          "The running suite went away before it had answered; what was asked may be half known."
              + " Look at its log, then ask again.",
          e);
    } catch (IOException e) {
      throw new LaunchException("The running suite could not be asked: " + e, e);
    }
  }

  private int listen(SuiteCalls.Call call) throws IOException {
    while (true) {
      Frames.Frame frame = frames.next();
      switch (frame.kind()) {
        case OUT -> write(call.out(), frame);
        case ERROR -> write(call.err(), frame);
        case WANT -> sendInput(call, frame.number());
        case STATUS -> {
          return frame.number();
        }
        default -> throw new IOException("Frame " + frame.kind() + " from the suite");
      }
    }
  }

  private static void write(OutputStream stream, Frames.Frame frame) throws IOException {
    stream.write(frame.bytes());
    stream.flush();
  }

  private void sendInput(SuiteCalls.Call call, int most) throws IOException {
    byte[] bytes = new byte[most];
    int read = call.in().read(bytes);
    if (read < 0) {
      frames.send(Frames.Kind.INPUT_END, "");
    } else {
      frames.send(Frames.Kind.INPUT, Arrays.copyOf(bytes, read));
    }
  }

  @Override
  public void close() {
    try {
      frames.close();
    } catch (IOException e) {
      throw new LaunchException("The connection to the suite was not closed: " + e, e);
    }
  }

  /** What opens a conversation. */
  private interface Opening {
    void send() throws IOException;
  }
}
