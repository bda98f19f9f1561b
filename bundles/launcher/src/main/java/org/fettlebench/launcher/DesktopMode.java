package org.fettlebench.launcher;

import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Opens the window, or brings the one to the front that holds the data already. */
final class DesktopMode {
  private static final Duration PATIENCE = Duration.ofSeconds(10);
  private static final int SECONDS_FOR_SERVICE = 20;

  private final DataDirectory data;
  private final Distribution suite;

  DesktopMode(DataDirectory data, Distribution suite) {
    this.data = data;
    this.suite = suite;
  }

  /** Must be called on the program's first thread: some platforms have windows only there. */
  int run(SuiteCalls.Call call) {
    Holding.Got got = new Holding(data, PATIENCE).get(SuiteLock.DESKTOP);
    if (got.suite().isPresent()) {
      return front(got.suite().get(), call);
    }
    return got.lock().orElseThrow().during(() -> open(call));
  }

  private int front(CallClient client, SuiteCalls.Call call) {
    try (client) {
      int status = client.front(call);
      call.out()
          .println(
              status == 0
                  ? "The suite is open already; its window has been brought to the front."
                  : "The suite is open already (data in %s).".formatted(data.path()));
      return status;
    }
  }

  private int open(SuiteCalls.Call call) {
    if (!Surroundings.here().hasScreen()) {
      throw new LaunchException(
          "There is no screen here (neither DISPLAY nor WAYLAND_DISPLAY is set)."
              + " The command line works without one: fettlebench --help");
    }
    CompletableFuture<Host> boot = new CompletableFuture<>();
    new Thread(() -> boot(boot), "boot").start();
    RunningSuite running = new RunningSuite(boot);
    CallServer server = CallServer.open(new SocketPlace(data), running);
    Shutdown.onSignal(running::close);
    try {
      return show(boot, call);
    } finally {
      server.close();
      running.close();
    }
  }

  private void boot(CompletableFuture<Host> boot) {
    try {
      LogFile.open(data.log());
      StrayOutput.divert();
      boot.complete(Host.start(data, suite, StartLevels.DESKTOP));
    } catch (RuntimeException | Error e) {
      boot.completeExceptionally(e);
    }
  }

  private int show(CompletableFuture<Host> boot, SuiteCalls.Call call) {
    Screen screen = Screen.open();
    try {
      if (Milestones.wanted()) {
        screen.measure();
      }
      Host host = boot.get();
      @SuppressWarnings("unchecked")
      Callable<Integer> desktop = host.service(Callable.class, "desktop", SECONDS_FOR_SERVICE);
      return desktop.call();
    } catch (Exception | LinkageError e) {
      String said = said(e);
      call.err().println(said);
      screen.complain(said);
      return Main.CANNOT_RUN;
    } finally {
      screen.close();
    }
  }

  private String said(Throwable thrown) {
    Throwable cause = thrown instanceof ExecutionException ? thrown.getCause() : thrown;
    Logger log = LoggerFactory.getLogger(DesktopMode.class);
    log.error("The window could not be shown", cause);
    String what = cause instanceof LaunchException ? cause.getMessage() : cause.toString();
    return what + "\nMore stands in the log: " + data.log();
  }
}
