package org.fettlebench.launcher;

import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** The suite behind a window, as its window and calls from outside see it; it may be starting. */
final class RunningSuite implements SuiteCalls, AutoCloseable {
  private static final int SECONDS_TO_START = 60;
  private static final int SECONDS_FOR_SERVICE = 10;

  private final CompletableFuture<CallServer> server = new CompletableFuture<>();
  private final CompletableFuture<Host> host = new CompletableFuture<>();

  /** Opens the log, takes calls, starts the framework; to be run on a thread of its own. */
  void start(DataDirectory data, Distribution suite) {
    try {
      LogFile.open(data.log());
      StrayOutput.divert();
      server.complete(CallServer.open(new SocketPlace(data), this));
      host.complete(Host.start(data, suite, StartLevels.DESKTOP));
    } catch (RuntimeException | Error e) {
      server.completeExceptionally(e); // no effect when it is the host that failed
      host.completeExceptionally(e);
    }
  }

  /** Waits until the start has ended, well or not. */
  void awaitStart() {
    host.handle((started, failure) -> started).join();
  }

  /** Waits for the bundles to offer the window. */
  @SuppressWarnings("unchecked")
  Callable<Integer> desktop() {
    return host().service(Callable.class, "desktop", SECONDS_FOR_SERVICE);
  }

  @Override
  public int run(Call call) {
    return CommandMode.run(host(), call, SECONDS_FOR_SERVICE);
  }

  @Override
  public void front() {
    host().service(Runnable.class, "front", SECONDS_FOR_SERVICE).run();
  }

  private Host host() {
    try {
      return host.get(SECONDS_TO_START, TimeUnit.SECONDS);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof LaunchException known) {
        throw known;
      }
      throw new LaunchException("The suite could not start: " + e.getCause(), e);
    } catch (TimeoutException e) {
      throw new LaunchException("The suite has not started within " + SECONDS_TO_START + " s", e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new LaunchException("Waiting for the suite was interrupted", e);
    }
  }

  /** Takes no more calls and stops the framework, if they have started. */
  @Override
  public void close() {
    server.thenAccept(CallServer::close);
    host.thenAccept(Host::close);
  }
}
