package org.fettlebench.product;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/**
 * The packages of a jar on the class path that the framework offers to the bundles, as the jar's
 * own manifest exports them.
 */
final class SystemPackages {
  // A comma outside quotation marks.
  private static final String CLAUSES = ",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)";

  private SystemPackages() {}

  /** Returns clauses such as {@code org.slf4j;version="2.0.17"}; internal packages stay out. */
  static List<String> of(Path jar) throws IOException {
    try (JarFile file = new JarFile(jar.toFile(), false)) {
      Attributes manifest = file.getManifest().getMainAttributes();
      String exports = manifest.getValue("Export-Package");
      String version = manifest.getValue("Bundle-Version");
      return exports == null
          ? List.of()
          : Arrays.stream(exports.split(CLAUSES))
              .filter(clause -> !clause.contains("x-internal") && !clause.contains("x-friends"))
              .flatMap(SystemPackages::names)
              .map(name -> "%s;version=\"%s\"".formatted(name, version))
              .toList();
    }
  }

  private static Stream<String> names(String clause) {
    return Arrays.stream(clause.split(";")).map(String::strip).filter(part -> !part.contains("="));
  }
}
