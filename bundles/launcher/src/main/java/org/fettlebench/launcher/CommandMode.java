package org.fettlebench.launcher;

import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.function.ToIntFunction;
import org.slf4j.LoggerFactory;

/** Answers one call on the command line, here or through the window that holds the data. */
final class CommandMode {
  private static final Duration PATIENCE = Duration.ofSeconds(10);
  private static final int SECONDS_FOR_SERVICE = 2;

  private final DataDirectory data;
  private final Distribution suite;

  CommandMode(DataDirectory data, Distribution suite) {
    this.data = data;
    this.suite = suite;
  }

  int run(SuiteCalls.Call call) {
    Holding.Got got = new Holding(data, PATIENCE).get(SuiteLock.COMMAND);
    if (got.suite().isPresent()) {
      try (CallClient client = got.suite().get()) {
        return client.run(call);
      }
    }
    return got.lock().orElseThrow().during(() -> runHere(call));
  }

  private int runHere(SuiteCalls.Call call) {
    LogFile.open(data.log());
    StrayOutput.divert();
    try (Host host = Host.start(data, suite, StartLevels.COMMAND)) {
      Shutdown.onSignal(host::close);
      host.troubles().forEach(call.err()::println);
      int status = run(host, call, SECONDS_FOR_SERVICE);
      call.out().flush();
      Milestones.reached("answered");
      return status;
    } catch (LaunchException e) {
      LoggerFactory.getLogger(CommandMode.class).error("The call could not be answered", e);
      throw new LaunchException(e.getMessage() + "\nMore stands in the log: " + data.log(), e);
    }
  }

  /** Calls the command service of a started suite. */
  static int run(Host host, SuiteCalls.Call call, int secondsToWait) {
    @SuppressWarnings("unchecked")
    ToIntFunction<Map<String, Object>> command =
        host.service(ToIntFunction.class, "command", secondsToWait);
    Map<String, Object> words = new HashMap<>();
    words.put("args", call.words());
    words.put("cwd", call.directory());
    words.put("in", call.in());
    words.put("out", call.out());
    words.put("err", call.err());
    return command.applyAsInt(words);
  }
}
