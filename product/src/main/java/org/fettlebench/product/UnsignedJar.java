package org.fettlebench.product;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;

/**
 * Copies a jar without its signature. Java checks a signature class by class while a window opens,
 * and does not put signed classes into its class data archive.
 */
final class UnsignedJar {
  private UnsignedJar() {}

  static void copy(Path from, Path to) throws IOException {
    try (JarFile jar = new JarFile(from.toFile(), false)) {
      Manifest manifest = new Manifest(jar.getManifest());
      manifest.getEntries().clear(); // the digests of the signed entries
      try (OutputStream file = Files.newOutputStream(to);
          JarOutputStream out = new JarOutputStream(file, manifest);
          Stream<JarEntry> entries = jar.stream()) {
        for (JarEntry entry : entries.filter(UnsignedJar::kept).toList()) {
          copy(jar, entry, out);
        }
      }
    }
  }

  private static boolean kept(JarEntry entry) {
    String name = entry.getName();
    return !name.equals(JarFile.MANIFEST_NAME)
        && !name.equals("META-INF/")
        && !name.matches("META-INF/[^/]*\\.(SF|RSA|DSA|EC)");
  }

  private static void copy(JarFile jar, JarEntry entry, JarOutputStream out) throws IOException {
    JarEntry copy = new JarEntry(entry.getName());
    copy.setTime(entry.getTime());
    out.putNextEntry(copy);
    try (InputStream in = jar.getInputStream(entry)) {
      in.transferTo(out);
    }
    out.closeEntry();
  }
}
