package org.fettlebench.launcher;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.startlevel.BundleStartLevel;

/**
 * The framework's memory of what is installed, kept between starts because reading it is quicker
 * than installing, and thrown away whenever a bundle of the suite, or Java, is another one.
 */
final class BundleCache {
  private final Path directory;
  private final Path stampFile;
  private final List<Distribution.Entry> entries;
  private final String stamp;

  BundleCache(Path directory, List<Distribution.Entry> entries) {
    this.directory = directory;
    this.stampFile = directory.resolve("suite.stamp");
    this.entries = entries;
    this.stamp = stamp(entries);
  }

  private static String stamp(List<Distribution.Entry> entries) {
    return Stream.concat(
            Stream.of(System.getProperty("java.vm.version")),
            entries.stream().map(BundleCache::stamp))
        .collect(Collectors.joining("\n"));
  }

  private static String stamp(Distribution.Entry entry) {
    try {
      BasicFileAttributes file = Files.readAttributes(entry.file(), BasicFileAttributes.class);
      return "%d %s %d %d"
          .formatted(
              entry.startLevel(), entry.file(), file.size(), file.lastModifiedTime().toMillis());
    } catch (IOException e) {
      throw new LaunchException("The bundle " + entry.file() + " cannot be read: " + e, e);
    }
  }

  /** Returns whether the cache is that of this very suite; if not, removes it. */
  boolean ready() {
    try {
      if (Files.exists(stampFile) && Files.readString(stampFile).equals(stamp)) {
        return true;
      }
      remove();
      return false;
    } catch (IOException e) {
      throw new LaunchException("The cache " + directory + " cannot be renewed: " + e, e);
    }
  }

  private void remove() throws IOException {
    if (Files.exists(directory)) {
      try (Stream<Path> files = Files.walk(directory)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }

  /** Installs the suite's bundles; each is marked to start at its level. */
  void install(BundleContext framework) throws BundleException, IOException {
    for (Distribution.Entry entry : entries) {
      Bundle bundle = framework.installBundle("reference:" + entry.file().toUri());
      bundle.adapt(BundleStartLevel.class).setStartLevel(entry.startLevel());
      if (bundle.getHeaders("").get("Fragment-Host") == null) {
        bundle.start(Bundle.START_ACTIVATION_POLICY);
      }
    }
    Files.writeString(stampFile, stamp, StandardCharsets.UTF_8);
  }
}
