package org.fettlebench.testkit;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.jar.Attributes;
import java.util.jar.Manifest;

/**
 * A bundle that lies on the test's class path, as a jar or, for the bundle under test, as a folder
 * of classes with its manifest.
 *
 * @param name symbolic name
 * @param path jar or folder
 * @param exports its Export-Package header without {@code uses}, empty if it exports nothing
 */
public record ClassPathBundle(String name, Path path, String exports) {

  /** Returns all bundles of the class path by symbolic name; of two the first stands. */
  static Map<String, ClassPathBundle> all(ClassLoader loader) {
    Map<String, ClassPathBundle> found = new HashMap<>();
    try {
      for (URL manifest : Collections.list(loader.getResources("META-INF/MANIFEST.MF"))) {
        read(manifest).ifPresent(bundle -> found.putIfAbsent(bundle.name(), bundle));
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException("the class path cannot be read", unreadable);
    }
    return found;
  }

  /** Returns the location under which the framework installs it. */
  String location() {
    return (path.toFile().isDirectory() ? "reference:" : "") + path.toUri();
  }

  private static Optional<ClassPathBundle> read(URL manifest) throws IOException {
    try (InputStream bytes = manifest.openStream()) {
      Attributes headers = new Manifest(bytes).getMainAttributes();
      String name = headers.getValue("Bundle-SymbolicName");
      if (name == null) {
        return Optional.empty();
      }
      String exports = Optional.ofNullable(headers.getValue("Export-Package")).orElse("");
      return Optional.of(
          new ClassPathBundle(
              name.split(";")[0].strip(),
              root(manifest),
              exports.replaceAll(";\\s*uses:=\"[^\"]*\"", "")));
    }
  }

  private static Path root(URL manifest) throws IOException {
    try {
      if (manifest.openConnection() instanceof JarURLConnection jar) {
        return Path.of(jar.getJarFileURL().toURI());
      }
      return new File(new URI(manifest.toString())).toPath().getParent().getParent();
    } catch (URISyntaxException malformed) {
      throw new IOException(manifest + " is no place on this machine", malformed);
    }
  }
}
