package org.fettlebench.modules;

import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;

/** Tells the suite's own bundles from libraries and from what a club dropped in. */
public final class ModuleOrigin {
  /** Framework property: the data directory, absolute. */
  public static final String DATA_PROPERTY = "fettlebench.data";

  /** Framework property: the modules folder; without it {@code modules} in the data directory. */
  public static final String FOLDER_PROPERTY = "fettlebench.modules";

  private static final String SUITE = "org.fettlebench.";

  private ModuleOrigin() {}

  /**
   * Returns the data directory of the running suite.
   *
   * @throws IllegalStateException if the framework was started without one
   */
  public static Path dataDirectory(BundleContext context) {
    return Optional.ofNullable(context.getProperty(DATA_PROPERTY))
        .map(Path::of)
        .orElseThrow(
            () -> new IllegalStateException("the framework needs the property " + DATA_PROPERTY));
  }

  /**
   * Returns the folder into which a club drops modules.
   *
   * @throws IllegalStateException if the framework names neither it nor a data directory
   */
  public static Path folder(BundleContext context) {
    String folder = context.getProperty(FOLDER_PROPERTY);
    return folder == null ? dataDirectory(context).resolve("modules") : Path.of(folder);
  }

  /** Returns the file a bundle was installed from; empty if it came from elsewhere. */
  public static Optional<Path> file(Bundle bundle) {
    String location = bundle.getLocation();
    String plain = location.startsWith("reference:") ? location.substring(10) : location;
    if (!plain.startsWith("file:")) {
      return Optional.empty();
    }
    try {
      return Optional.of(Path.of(URI.create(plain)));
    } catch (IllegalArgumentException | FileSystemNotFoundException notOfThisMachine) {
      return Optional.empty();
    }
  }

  /** Returns whether a bundle lies in the modules folder of its framework. */
  public static boolean dropped(Bundle bundle, BundleContext context) {
    boolean known =
        context.getProperty(FOLDER_PROPERTY) != null || context.getProperty(DATA_PROPERTY) != null;
    return known && file(bundle).filter(file -> liesIn(file, folder(context))).isPresent();
  }

  /** Returns whether a bundle came with the suite and is neither library nor dropped in. */
  public static boolean suite(Bundle bundle, BundleContext context) {
    String name = bundle.getSymbolicName();
    return name != null && name.startsWith(SUITE) && !dropped(bundle, context);
  }

  private static boolean liesIn(Path file, Path folder) {
    Path parent = file.toAbsolutePath().normalize().getParent();
    if (parent == null || parent.equals(folder.toAbsolutePath().normalize())) {
      return parent != null;
    }
    try {
      // The folder may be reached by a link.
      return Files.exists(parent) && Files.exists(folder) && Files.isSameFile(parent, folder);
    } catch (IOException unreadable) {
      return false;
    }
  }
}
