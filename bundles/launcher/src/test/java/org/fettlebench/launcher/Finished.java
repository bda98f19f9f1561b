package org.fettlebench.launcher;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;

/**
 * What a process left behind.
 *
 * @param status its exit status
 * @param out its standard output
 * @param err its standard error
 */
record Finished(int status, String out, String err) {
  /** Starts a process, gives it input and waits for its end. */
  static Finished of(ProcessBuilder builder, String input) throws IOException {
    Process process = builder.start();
    CompletableFuture<String> err =
        CompletableFuture.supplyAsync(
            () -> process.errorReader().lines().reduce("", (a, b) -> a + b + "\n"));
    try (var in = process.getOutputStream()) {
      in.write(input.getBytes(StandardCharsets.UTF_8));
    }
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    try {
      if (!process.waitFor(30, TimeUnit.SECONDS)) {
        throw new IOException("Still running: " + builder.command());
      }
      return new Finished(process.exitValue(), out, err.get());
    } catch (InterruptedException | ExecutionException e) {
      throw new IOException(e);
    } finally {
      process.destroyForcibly();
    }
  }
}
