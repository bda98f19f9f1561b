package org.fettlebench.suite.itest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.Reader;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Properties;
import java.util.stream.Collectors;
import org.fettlebench.testkit.FelixHarness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;

/** Every bundle of every feature, as shipped, in a real framework. */
class ShippedBundlesTest {
  // The test shares these with the framework instead of installing them.
  private static final List<String> SHARED =
      List.of("osgi.service.component", "osgi.util", "felix.scr");

  @TempDir Path data;

  /**
   * A line of a feature list.
   *
   * @param startLevel when it starts
   * @param file its jar
   */
  private record Line(int startLevel, String file) {
    static Line of(String text) {
      String[] parts = text.split(" ", 2);
      return new Line(Integer.parseInt(parts[0]), parts[1]);
    }
  }

  @Test
  void allStartAndEveryPartIsSatisfied() throws Exception {
    try (FelixHarness felix =
        FelixHarness.sharing()
            .packages(screenPackages())
            .property("fettlebench.data", data.toString())
            .property("fettlebench.modules", data.resolve("modules").toString())
            .property("felix.fileinstall.dir", data.resolve("modules").toString())
            .property("felix.fileinstall.tmpdir", data.resolve("incoming").toString())
            .start()) {
      List<Bundle> bundles = new ArrayList<>();
      for (Line line : lines()) {
        bundles.add(felix.install(Suite.HOME.resolve("bundles").resolve(line.file())));
      }
      bundles.forEach(felix::start);
      assertEquals("nothing is unsatisfied", felix.doctor());
      assertEquals(
          List.of(), bundles.stream().filter(one -> one.getState() != Bundle.ACTIVE).toList());
    }
  }

  @Test
  void allJarsAreInTheLists() throws Exception {
    List<String> jars = new ArrayList<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(Suite.HOME.resolve("bundles"))) {
      files.forEach(file -> jars.add(file.getFileName().toString()));
    }
    List<String> listed = allLines().stream().map(Line::file).sorted().toList();
    assertEquals(jars.stream().sorted().toList(), listed);
    assertTrue(listed.size() > 30, listed.toString());
  }

  private static List<Line> lines() throws Exception {
    return allLines().stream()
        .filter(line -> SHARED.stream().noneMatch(line.file()::contains))
        .sorted(Comparator.comparing(Line::startLevel))
        .toList();
  }

  private static List<Line> allLines() throws Exception {
    List<Line> lines = new ArrayList<>();
    try (DirectoryStream<Path> lists =
        Files.newDirectoryStream(Suite.HOME.resolve("features"), "*.list")) {
      for (Path list : lists) {
        Files.readAllLines(list).stream().map(Line::of).forEach(lines::add);
      }
    }
    return lines;
  }

  private static String screenPackages() throws Exception {
    Properties properties = new Properties();
    try (Reader reader = Files.newBufferedReader(Suite.HOME.resolve("conf/framework.properties"))) {
      properties.load(reader);
    }
    String all = properties.getProperty("org.osgi.framework.system.packages.extra");
    return Arrays.stream(all.split(","))
        .filter(clause -> clause.startsWith("org.eclipse.swt"))
        .collect(Collectors.joining(","));
  }
}
