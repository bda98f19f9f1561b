package org.fettlebench.launcher;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** The suite behind a window, as calls from outside see it; it may still be starting. */
final class RunningSuite implements SuiteCalls, AutoCloseable {
  private static final int SECONDS_TO_START = 30;
  private static final int SECONDS_FOR_SERVICE = 10;

  private final CompletableFuture<Host> boot;

  RunningSuite(CompletableFuture<Host> boot) {
    this.boot = boot;
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
      return boot.get(SECONDS_TO_START, TimeUnit.SECONDS);
    } catch (ExecutionException e) {
      throw new LaunchException("The suite could not start: " + e.getCause().getMessage(), e);
    } catch (TimeoutException e) {
      throw new LaunchException("The suite has not started within " + SECONDS_TO_START + " s", e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new LaunchException("Waiting for the suite was interrupted", e);
    }
  }

  /** Stops the framework if it has started. */
  @Override
  public void close() {
    boot.handle(
        (host, failure) -> {
          if (host != null) {
            host.close();
          }
          return failure;
        });
  }
}
