package org.fettlebench.modules.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import org.fettlebench.modules.Module;

/** Finds jars in the modules folder that became no module, and says why. */
final class StrayJars {
  private final FaultLog faults;

  StrayJars(FaultLog faults) {
    this.faults = faults;
  }

  /**
   * Returns the jars of a folder that are not installed.
   *
   * @param installed files of the installed bundles
   * @param present name and version of the installed bundles, as {@code name version}
   */
  List<Module> find(Path folder, Set<Path> installed, Set<String> present) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    List<Module> strays = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      files
          .filter(file -> file.getFileName().toString().endsWith(".jar"))
          .filter(file -> !installed.contains(file.toAbsolutePath().normalize()))
          .map(file -> look(file, present))
          .forEach(strays::add);
    } catch (IOException unreadable) {
      faults.report(getClass(), "looking into the modules folder " + folder, unreadable);
    }
    return strays;
  }

  private Module look(Path file, Set<String> present) {
    try (JarFile jar = new JarFile(file.toFile())) {
      Attributes headers =
          Optional.ofNullable(jar.getManifest()).orElseGet(Manifest::new).getMainAttributes();
      String name = headers.getValue("Bundle-SymbolicName");
      if (name == null) {
        return stray(file, headers, "is no module: its manifest has no Bundle-SymbolicName line");
      }
      String version = Optional.ofNullable(headers.getValue("Bundle-Version")).orElse("0.0.0");
      return stray(
          file,
          headers,
          present.contains(name.split(";")[0].strip() + " " + version)
              ? "is not let in: a module of this name and version is there already"
              : "is not let in yet");
    } catch (IOException broken) {
      return stray(file, new Attributes(), "is no module: it cannot be read as a jar");
    }
  }

  private Module stray(Path file, Attributes headers, String state) {
    String fileName = file.getFileName().toString();
    String name = value(headers, "Bundle-SymbolicName", fileName).split(";")[0].strip();
    return new Module(
        name,
        value(headers, "Bundle-Name", fileName),
        value(headers, "Bundle-Description", ""),
        value(headers, "Bundle-Version", ""),
        value(headers, "Bundle-Vendor", ""),
        true,
        file.toString(),
        false,
        state,
        changed(file),
        List.of(),
        faults.of(name));
  }

  private static Instant changed(Path file) {
    return Instant.ofEpochMilli(file.toFile().lastModified());
  }

  private static String value(Attributes headers, String key, String otherwise) {
    return Optional.ofNullable(headers.getValue(key)).orElse(otherwise);
  }
}
