package org.fettlebench.command.internal;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.fettlebench.command.Command;
import org.fettlebench.modules.Faults;
import org.mockito.Mockito;
import org.osgi.framework.BundleContext;

/** A command line to type at, with whatever commands a test gives it. */
public final class Session {
  private final List<String> reported = new ArrayList<>();
  private final Runner runner;
  private String folder = System.getProperty("java.io.tmpdir");
  private String piped = "";

  /** Starts a session with commands. */
  public Session(Command... commands) {
    Faults faults = (from, doing, cause) -> reported.add(doing + ": " + cause);
    Commands known = new Commands(Mockito.mock(BundleContext.class), faults);
    List.of(commands).forEach(known::add);
    runner = new Runner(known, faults, "/club/log/fettlebench.log");
  }

  /** What a call answered. */
  public record Answer(int status, String out, String err) {}

  /** Sets where the person stands. */
  public Session in(String path) {
    folder = path;
    return this;
  }

  /** Sets what is piped in. */
  public Session piped(String text) {
    piped = text;
    return this;
  }

  /** Types words. */
  public Answer type(String... words) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int status =
        runner.applyAsInt(
            Map.of(
                "args", List.of(words),
                "cwd", folder,
                "in", new ByteArrayInputStream(piped.getBytes(StandardCharsets.UTF_8)),
                // The runner must write UTF-8 whatever the stream thinks it is.
                "out", new PrintStream(out, false, StandardCharsets.US_ASCII),
                "err", new PrintStream(err, false, StandardCharsets.US_ASCII)));
    return new Answer(
        status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  /** Returns what was reported as a fault of a module. */
  public List<String> reported() {
    return List.copyOf(reported);
  }
}
