package org.fettlebench.suite.itest;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/**
 * The assembled suite on one data directory, used as a person uses it: by its script.
 *
 * @param data the data directory
 */
record Suite(Path data) {
  /** What the product's build has put together. */
  static final Path HOME = Path.of("../../product/target/fettlebench").toAbsolutePath().normalize();

  private static final int SECONDS = 60;

  /**
   * What a call left behind.
   *
   * @param status exit status
   * @param out standard output
   * @param err standard error
   */
  record Finished(int status, String out, String err) {
    Map<String, Object> json() {
      try {
        return JSON.std.mapFrom(out);
      } catch (IOException e) {
        throw new AssertionError("no JSON: " + this, e);
      }
    }

    /** Returns a list of records in the answer. */
    @SuppressWarnings("unchecked")
    List<Map<String, Object>> list(String key) {
      return (List<Map<String, Object>>) json().get(key);
    }
  }

  Path modules() {
    return data.resolve("modules");
  }

  ProcessBuilder builder(String... words) {
    List<String> command = new ArrayList<>();
    command.add(HOME.resolve("bin/fettlebench").toString());
    command.addAll(List.of("--data", data.toString()));
    command.addAll(List.of(words));
    return new ProcessBuilder(command).directory(data.getParent().toFile());
  }

  /** Runs one call with no input, on no screen. */
  Finished call(String... words) {
    ProcessBuilder builder = builder(words);
    builder.environment().remove("DISPLAY");
    builder.environment().remove("WAYLAND_DISPLAY");
    return finish(builder);
  }

  static Finished finish(ProcessBuilder builder) {
    try {
      Process process = builder.start();
      process.getOutputStream().close();
      CompletableFuture<String> err =
          CompletableFuture.supplyAsync(() -> text(process.getErrorStream()));
      String out = text(process.getInputStream());
      if (!process.waitFor(SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        throw new AssertionError("still running: " + builder.command());
      }
      return new Finished(process.exitValue(), out, err.join());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError("interrupted", e);
    }
  }

  private static String text(java.io.InputStream stream) {
    try (stream) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Opens the window and returns its process as soon as calls are answered through it. */
  Process openWindow() {
    try {
      Process window =
          builder("desktop")
              .redirectErrorStream(true)
              .redirectOutput(data.getParent().resolve("window.txt").toFile())
              .start();
      eventually(
          () -> "the window takes calls: " + read(data.getParent().resolve("window.txt")),
          () -> Files.exists(data.resolve("run/socket")) || !window.isAlive());
      return window;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      return e.toString();
    }
  }

  /** Waits for something that another process does. */
  static void eventually(java.util.function.Supplier<String> what, BooleanSupplier condition) {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(SECONDS);
    while (!condition.getAsBoolean()) {
      if (System.nanoTime() > end) {
        throw new AssertionError("not within " + SECONDS + " s: " + what.get());
      }
      LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(50));
    }
  }

  /** Returns the jars of the suite's own bundles, the launcher included. */
  static List<Path> ownJars() {
    try (Stream<Path> files = Files.walk(HOME)) {
      return files
          .filter(file -> file.getFileName().toString().matches("org\\.fettlebench\\..*\\.jar"))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Returns the jar of the sample module as its own build has made it. */
  static Path sampleJar() {
    Path target = Path.of("../sample.club/target");
    try (Stream<Path> files = Files.list(target)) {
      return files
          .filter(
              file ->
                  file.getFileName()
                      .toString()
                      .matches(".*sample\\.club-[0-9.]+(-SNAPSHOT)?\\.jar"))
          .findFirst()
          .orElseThrow(() -> new AssertionError("no jar of the sample module in " + target));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
