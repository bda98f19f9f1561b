package org.fettlebench.launcher;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.startlevel.BundleStartLevel;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Brings the framework in step with the modules folder once, before a call on the command line. A
 * running window watches the folder with Felix File Install instead; both name a bundle's place in
 * the same way, so that each finds what the other has installed.
 */
final class DroppedModules {
  private static final Logger LOG = LoggerFactory.getLogger(DroppedModules.class);

  private final Path folder;
  private final List<String> troubles = new ArrayList<>();

  DroppedModules(Path folder) {
    this.folder = folder;
  }

  /** Returns what could not be let in, one sentence each. */
  List<String> troubles() {
    return List.copyOf(troubles);
  }

  /** Removes what has gone, lets in what has come, renews what has changed. */
  void bringInStep(BundleContext framework) {
    Map<String, Path> jars = jars();
    for (Bundle bundle : framework.getBundles()) {
      if (bundle.getLocation().startsWith(folder.toUri().toString())) {
        Path jar = jars.remove(bundle.getLocation());
        attempt(bundle.getLocation(), () -> renew(bundle, jar));
      }
    }
    jars.forEach((location, jar) -> attempt(location, () -> install(framework, location, jar)));
  }

  private Map<String, Path> jars() {
    Map<String, Path> jars = new HashMap<>();
    try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, "*.jar")) {
      found.forEach(jar -> jars.put(jar.toUri().toString(), jar));
    } catch (IOException e) {
      troubles.add("The modules folder " + folder + " cannot be read: " + e);
    }
    return jars;
  }

  private static void renew(Bundle bundle, Path jar) throws BundleException, IOException {
    if (jar == null) {
      bundle.uninstall();
    } else if (Files.getLastModifiedTime(jar).toMillis() > bundle.getLastModified()) {
      try (InputStream content = Files.newInputStream(jar)) {
        bundle.update(content);
      }
    }
  }

  private static void install(BundleContext framework, String location, Path jar)
      throws BundleException, IOException {
    try (InputStream content = Files.newInputStream(jar)) {
      Bundle bundle = framework.installBundle(location, content);
      bundle.adapt(BundleStartLevel.class).setStartLevel(StartLevels.MODULES);
      if (bundle.getHeaders("").get("Fragment-Host") == null) {
        bundle.start(Bundle.START_ACTIVATION_POLICY);
      }
    }
  }

  private void attempt(String location, Step step) {
    try {
      step.take();
    } catch (BundleException | IOException | RuntimeException e) {
      LOG.warn("The module {} cannot be let in", location, e);
      troubles.add(doesNotWork(location.substring(location.lastIndexOf('/') + 1)));
    }
  }

  /** Says that a module does not work and where the reason is told. */
  static String doesNotWork(String module) {
    return "The module " + module + " does not work; \"module list\" says why.";
  }

  /** A step that may fail. */
  private interface Step {
    void take() throws BundleException, IOException;
  }
}
