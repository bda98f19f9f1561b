package org.fettlebench.launcher;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Both ends of the socket in one process. */
@Timeout(30)
class CallTest {
  @TempDir Path dir;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private CallServer server;

  @AfterEach
  void close() {
    if (server != null) {
      server.close();
    }
  }

  private SocketPlace serve(Path data, Work work) {
    SocketPlace place = new SocketPlace(new DataDirectory(data));
    server = CallServer.open(place, new Suite(work));
    return place;
  }

  private SuiteCalls.Call call(InputStream in, String... words) {
    return new SuiteCalls.Call(
        List.of(words), "/where/i am", in, new PrintStream(out, true), new PrintStream(err, true));
  }

  private static int run(SocketPlace place, SuiteCalls.Call call) {
    try (CallClient client = CallClient.connect(place).orElseThrow()) {
      return client.run(call);
    }
  }

  @Test
  void wordsDirectoryStreamsAndStatusPassThrough() {
    SocketPlace place =
        serve(
            dir,
            call -> {
              call.out().print(String.join("|", call.words()) + "@" + call.directory());
              call.err().print("café");
              return 1;
            });
    int status = run(place, call(InputStream.nullInputStream(), "kit", "", "a b", "½ in", "\n"));
    assertEquals(1, status);
    assertEquals("kit||a b|½ in|\n@/where/i am", out.toString(StandardCharsets.UTF_8));
    assertEquals("café", err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void inputPassesWhole() {
    byte[] sent = new byte[3_000_001];
    new Random(20250101).nextBytes(sent);
    SocketPlace place =
        serve(
            dir,
            call -> {
              call.in().transferTo(call.out());
              return 0;
            });
    assertEquals(0, run(place, call(new ByteArrayInputStream(sent))));
    assertArrayEquals(sent, out.toByteArray());
  }

  @Test
  void inputThatIsNotAskedForIsLeftAlone() {
    AtomicInteger reads = new AtomicInteger();
    InputStream watched =
        new InputStream() {
          @Override
          public int read() {
            return reads.incrementAndGet();
          }
        };
    assertEquals(0, run(serve(dir, call -> 0), call(watched)));
    assertEquals(0, reads.get());
  }

  @Test
  void aCallThatFailsSaysSoAndTheNextOneWorks() {
    SocketPlace place =
        serve(
            dir,
            call -> {
              if (call.words().contains("bad")) {
                throw new IllegalStateException("the drawer jams");
              }
              return 0;
            });
    assertEquals(Main.CANNOT_RUN, run(place, call(InputStream.nullInputStream(), "bad")));
    assertTrue(err.toString(StandardCharsets.UTF_8).contains("the drawer jams"), err.toString());
    assertEquals(0, run(place, call(InputStream.nullInputStream(), "good")));
  }

  @Test
  void severalCallsRunAtOnce() throws Exception {
    CyclicBarrier allThere = new CyclicBarrier(4);
    SocketPlace place =
        serve(
            dir,
            call -> {
              await(allThere);
              return Integer.parseInt(call.words().get(0));
            });
    ExecutorService callers = Executors.newFixedThreadPool(4);
    List<Callable<Integer>> calls = new ArrayList<>();
    for (int at = 0; at < 4; at++) {
      String word = String.valueOf(at);
      calls.add(() -> run(place, call(InputStream.nullInputStream(), word)));
    }
    int sum = 0;
    for (Future<Integer> status : callers.invokeAll(calls)) {
      sum += status.get();
    }
    callers.shutdown();
    assertEquals(0 + 1 + 2 + 3, sum);
  }

  @Test
  void theWindowIsBroughtToTheFrontOrTheReasonIsTold() {
    SocketPlace place = serve(dir, call -> 0);
    try (CallClient client = CallClient.connect(place).orElseThrow()) {
      assertEquals(Main.CANNOT_RUN, client.front(call(InputStream.nullInputStream())));
    }
    assertTrue(err.toString(StandardCharsets.UTF_8).contains("no window yet"), err.toString());
  }

  @Test
  void anotherProtocolIsRefusedInWords() throws IOException {
    SocketPlace place = serve(dir, call -> 0);
    try (SocketChannel channel = SocketChannel.open(StandardProtocolFamily.UNIX)) {
      channel.connect(UnixDomainSocketAddress.of(place.find()));
      Frames frames = new Frames(channel);
      frames.send(Frames.Kind.HELLO, "fettlebench 99");
      Frames.Frame said = frames.next();
      assertEquals(Frames.Kind.ERROR, said.kind());
      assertTrue(said.text().contains("fettlebench 99"), said.text());
      assertEquals(Main.CANNOT_RUN, frames.next().number());
    }
  }

  @Test
  void aSuiteThatGoesAwayIsNotTakenForAnAnswer() throws IOException {
    SocketPlace place = new SocketPlace(new DataDirectory(dir));
    try (ServerSocketChannel listening = ServerSocketChannel.open(StandardProtocolFamily.UNIX)) {
      listening.bind(UnixDomainSocketAddress.of(place.make()));
      Thread suite = new Thread(() -> hangUp(listening));
      suite.start();
      LaunchException thrown =
          assertThrows(
              LaunchException.class, () -> run(place, call(InputStream.nullInputStream(), "x")));
      assertTrue(thrown.getMessage().contains("running suite"), thrown.getMessage());
    }
  }

  @Test
  void nobodyListeningIsNoConnection() throws IOException {
    SocketPlace place = new SocketPlace(new DataDirectory(dir));
    assertTrue(CallClient.connect(place).isEmpty());
    Files.createFile(place.make()); // left behind by a suite that was killed
    assertTrue(CallClient.connect(place).isEmpty());
  }

  @Test
  void aPathTooLongForASocketIsGivenAShortOne() throws IOException {
    Path far = dir.resolve("x".repeat(90)).resolve("y".repeat(90));
    SocketPlace place = serve(Files.createDirectories(far), call -> 7);
    Path socket = place.find();
    assertTrue(socket.toString().length() <= 100, socket.toString());
    assertEquals(
        "rwx------",
        PosixFilePermissions.toString(Files.getPosixFilePermissions(socket.getParent())));
    assertEquals(7, run(place, call(InputStream.nullInputStream())));
    server.close();
    server = null;
    assertTrue(Files.notExists(socket.getParent()));
    assertEquals("socket", place.find().getFileName().toString());
  }

  private static void hangUp(ServerSocketChannel listening) {
    try (SocketChannel caller = listening.accept()) {
      new Frames(caller).next();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void await(CyclicBarrier barrier) {
    try {
      barrier.await(10, TimeUnit.SECONDS);
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  private interface Work {
    int run(SuiteCalls.Call call) throws IOException;
  }

  private record Suite(Work work) implements SuiteCalls {
    @Override
    public int run(Call call) {
      try {
        return work.run(call);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    @Override
    public void front() {
      throw new LaunchException("There is no window yet");
    }
  }
}
