package org.fettlebench.launcher;

import java.io.IOException;
import java.io.Reader;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;

/**
 * The installed suite: {@code lib/} (class path), {@code bundles/}, {@code features/*.list} and
 * {@code conf/}.
 *
 * @param home its directory
 */
record Distribution(Path home) {
  /** Names the directory when the launcher's jar does not lie in its {@code lib/}. */
  static final String HOME = "fettlebench.home";

  /**
   * A bundle of the suite.
   *
   * @param file its jar
   * @param startLevel when it starts
   */
  record Entry(Path file, int startLevel) {}

  /** Finds the suite that this class belongs to. */
  static Distribution here() {
    String told = System.getProperty(HOME);
    if (told != null) {
      return new Distribution(Path.of(told).toAbsolutePath());
    }
    try {
      Path jar =
          Path.of(Distribution.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      return new Distribution(jar.getParent().getParent());
    } catch (URISyntaxException e) {
      throw new LaunchException("The suite's own directory cannot be found: " + e, e);
    }
  }

  /** Reads which bundles make up the suite, from all feature lists in the order of their names. */
  List<Entry> bundles() {
    List<Entry> entries = new ArrayList<>();
    try (DirectoryStream<Path> lists =
        Files.newDirectoryStream(home.resolve("features"), "*.list")) {
      List<Path> sorted = new ArrayList<>();
      lists.forEach(sorted::add);
      sorted.sort(null);
      for (Path list : sorted) {
        for (String line : Files.readAllLines(list, StandardCharsets.UTF_8)) {
          entries.add(entry(list, line));
        }
      }
    } catch (IOException e) {
      throw incomplete(e.toString(), e);
    }
    return entries;
  }

  private Entry entry(Path list, String line) {
    String[] parts = line.split(" ", 2);
    Path file = home.resolve("bundles").resolve(parts[parts.length - 1]);
    if (parts.length != 2 || !parts[0].matches("\\d{1,3}") || !Files.isRegularFile(file)) {
      throw incomplete(list + " says \"" + line + "\"", null);
    }
    return new Entry(file, Integer.parseInt(parts[0]));
  }

  /** Reads the framework's properties that were made with the distribution. */
  Map<String, String> frameworkProperties() {
    Properties properties = new Properties();
    try (Reader reader = Files.newBufferedReader(home.resolve("conf/framework.properties"))) {
      properties.load(reader);
    } catch (IOException e) {
      throw incomplete(e.toString(), e);
    }
    Map<String, String> map = new HashMap<>();
    properties.stringPropertyNames().forEach(name -> map.put(name, properties.getProperty(name)));
    return map;
  }

  private LaunchException incomplete(String what, Exception cause) {
    return new LaunchException(
        "The suite in %s is not complete: %s. Build it or unpack it again.".formatted(home, what),
        cause);
  }
}
