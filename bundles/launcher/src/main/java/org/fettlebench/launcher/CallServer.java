package org.fettlebench.launcher;

import java.io.IOException;
import java.io.PrintStream;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.ClosedChannelException;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Answers calls on the command line while this suite holds the data directory. */
final class CallServer implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(CallServer.class);
  private static final int SECONDS_TO_FINISH = 5;

  private final SocketPlace place;
  private final Path path;
  private final ServerSocketChannel server;
  private final SuiteCalls suite;
  private final ExecutorService threads =
      Executors.newCachedThreadPool(
          work -> {
            Thread thread = new Thread(work, "call");
            thread.setDaemon(true);
            return thread;
          });

  private CallServer(SocketPlace place, SuiteCalls suite) throws IOException {
    this.place = place;
    this.suite = suite;
    this.path = place.make();
    this.server = ServerSocketChannel.open(StandardProtocolFamily.UNIX);
    server.bind(UnixDomainSocketAddress.of(path));
  }

  /** Begins to answer. */
  static CallServer open(SocketPlace place, SuiteCalls suite) {
    try {
      CallServer server = new CallServer(place, suite);
      server.threads.execute(server::accept);
      return server;
    } catch (IOException e) {
      throw new LaunchException("The suite's socket cannot be opened: " + e, e);
    }
  }

  private void accept() {
    try {
      while (server.isOpen()) {
        SocketChannel caller = server.accept();
        threads.execute(() -> answer(caller));
      }
    } catch (ClosedChannelException e) {
      LOG.debug("No more calls are taken");
    } catch (IOException e) {
      LOG.error("Calls from the command line can no longer be taken", e);
    }
  }

  private void answer(SocketChannel caller) {
    try (Frames frames = new Frames(caller)) {
      converse(frames);
    } catch (IOException e) {
      LOG.info("A call from the command line broke off: {}", e.toString());
    }
  }

  private void converse(Frames frames) throws IOException {
    Frames.Frame hello = frames.next();
    if (hello.kind() != Frames.Kind.HELLO || !hello.text().equals(Frames.PROTOCOL)) {
      refuse(
          frames,
          "The running suite speaks \"%s\", this program \"%s\". Close the suite, then try again."
              .formatted(Frames.PROTOCOL, hello.text()));
      return;
    }
    String directory = "";
    List<String> words = new ArrayList<>();
    while (true) {
      Frames.Frame frame = frames.next();
      switch (frame.kind()) {
        case DIRECTORY -> directory = frame.text();
        case WORD -> words.add(frame.text());
        case FRONT -> {
          front(frames);
          return;
        }
        case RUN -> {
          run(frames, words, directory);
          return;
        }
        default -> throw new IOException("Frame " + frame.kind() + " before the call");
      }
    }
  }

  private void run(Frames frames, List<String> words, String directory) throws IOException {
    PrintStream out = print(frames, Frames.Kind.OUT);
    PrintStream err = print(frames, Frames.Kind.ERROR);
    int status;
    try {
      status = suite.run(new SuiteCalls.Call(words, directory, new AskedInput(frames), out, err));
    } catch (RuntimeException e) {
      LOG.error("The call {} failed", words, e);
      err.println(e instanceof LaunchException ? e.getMessage() : "The call failed: " + e);
      status = Main.CANNOT_RUN;
    }
    out.flush();
    err.flush();
    frames.send(Frames.Kind.STATUS, status);
  }

  private void front(Frames frames) throws IOException {
    try {
      suite.front();
      frames.send(Frames.Kind.STATUS, 0);
    } catch (RuntimeException e) {
      LOG.warn("The window could not be brought to the front", e);
      refuse(frames, String.valueOf(e.getMessage()));
    }
  }

  private static void refuse(Frames frames, String sentence) throws IOException {
    frames.send(Frames.Kind.ERROR, sentence + "\n");
    frames.send(Frames.Kind.STATUS, Main.CANNOT_RUN);
  }

  private static PrintStream print(Frames frames, Frames.Kind kind) {
    return new PrintStream(
        new java.io.BufferedOutputStream(frames.stream(kind), 1 << 13),
        false,
        StandardCharsets.UTF_8);
  }

  /** Takes no more calls and gives those that run a few seconds to finish. */
  @Override
  public void close() {
    try {
      server.close();
      place.remove(path);
      threads.shutdown();
      if (!threads.awaitTermination(SECONDS_TO_FINISH, TimeUnit.SECONDS)) {
        LOG.warn("A call from the command line was still running at the end");
      }
    } catch (IOException e) {
      LOG.warn("The suite's socket was not closed cleanly", e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
