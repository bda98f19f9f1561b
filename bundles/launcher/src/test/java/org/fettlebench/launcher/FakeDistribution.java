package org.fettlebench.launcher;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import org.fettlebench.launcher.fake.FakeSuite;

/** Makes a distribution with {@link FakeSuite} as its only bundle, and starts processes on it. */
record FakeDistribution(Path home) {
  static FakeDistribution make(Path home) throws IOException {
    FakeDistribution made = new FakeDistribution(home);
    Files.createDirectories(home.resolve("features"));
    Files.createDirectories(home.resolve("bundles"));
    Files.createDirectories(home.resolve("conf"));
    Files.writeString(
        home.resolve("conf/framework.properties"),
        "org.osgi.framework.system.packages.extra=org.slf4j;version=\"2.0.17\"\n");
    made.list("10 fake.jar");
    jar(home.resolve("bundles/fake.jar"), "fake.suite", FakeSuite.class.getName());
    return made;
  }

  void list(String... lines) throws IOException {
    Files.write(home.resolve("features/core.list"), List.of(lines));
  }

  /** Writes a bundle with the fake's class in it, and an activator of a name that may be wrong. */
  static void jar(Path file, String name, String activator) throws IOException {
    Manifest manifest = new Manifest();
    Map.of(
            "Bundle-ManifestVersion",
            "2",
            "Bundle-SymbolicName",
            name,
            "Bundle-Activator",
            activator,
            "Import-Package",
            "org.osgi.framework")
        .forEach((key, value) -> manifest.getMainAttributes().putValue(key, value));
    manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
    String entry = FakeSuite.class.getName().replace('.', '/') + ".class";
    try (OutputStream out = Files.newOutputStream(file);
        JarOutputStream jar = new JarOutputStream(out, manifest);
        InputStream content = FakeSuite.class.getResourceAsStream("/" + entry)) {
      jar.putNextEntry(new JarEntry(entry));
      content.transferTo(jar);
      jar.closeEntry();
    }
  }

  /** Returns the launcher on this distribution, ready to be started. */
  ProcessBuilder launcher(Path data, String... words) {
    String[] all = new String[words.length + 2];
    all[0] = "--data";
    all[1] = data.toString();
    System.arraycopy(words, 0, all, 2, words.length);
    return Processes.builder(List.of("-Dfettlebench.home=" + home), Main.class, all);
  }
}
