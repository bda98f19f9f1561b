package org.fettlebench.launcher;

import java.nio.file.Path;
import java.util.Map;

/**
 * What the platform tells about itself; a value, so that other platforms can be tried in tests.
 *
 * @param system name of the operating system as Java tells it
 * @param home the person's home directory
 * @param variables environment variables
 */
record Surroundings(String system, Path home, Map<String, String> variables) {
  Surroundings {
    variables = Map.copyOf(variables);
  }

  static Surroundings here() {
    return new Surroundings(
        System.getProperty("os.name"), Path.of(System.getProperty("user.home")), System.getenv());
  }

  boolean windows() {
    return system.startsWith("Windows");
  }

  boolean mac() {
    return system.startsWith("Mac");
  }

  /** Returns whether a window can be tried at all; X11 and Wayland name their screen. */
  boolean hasScreen() {
    return windows()
        || mac()
        || !variable("DISPLAY").isEmpty()
        || !variable("WAYLAND_DISPLAY").isEmpty();
  }

  /** Returns a variable, empty when it is not set. */
  String variable(String name) {
    return variables.getOrDefault(name, "");
  }
}
