package org.fettlebench.launcher;

import java.io.File;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Starts Java processes on the tests' own class path. */
final class Processes {
  private Processes() {}

  static Process java(Class<?> main, String... args) throws IOException {
    return builder(List.of(), main, args).start();
  }

  static ProcessBuilder builder(List<String> options, Class<?> main, String... args) {
    List<String> command = new ArrayList<>();
    command.add(System.getProperty("java.home") + File.separator + "bin" + File.separator + "java");
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    command.addAll(options);
    command.addAll(List.of("-cp", classPath(), main.getName()));
    command.addAll(List.of(args));
    return new ProcessBuilder(command);
  }

  /** The tests' class path without their silent log, which stands in the way of the real one. */
  private static String classPath() {
    return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
        .filter(entry -> !entry.contains("slf4j-nop"))
        .collect(Collectors.joining(File.pathSeparator));
  }
}
