package org.fettlebench.testkit;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;

/** A small bundle made by a test: a manifest, files, and classes of the test's class path. */
public final class BundleJar {
  private final Manifest manifest = new Manifest();
  private final Map<String, byte[]> entries = new LinkedHashMap<>();

  private BundleJar(String symbolicName) {
    manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
    header("Bundle-ManifestVersion", "2");
    header("Bundle-SymbolicName", symbolicName);
    header("Bundle-Version", "1.0.0");
  }

  /** Begins a bundle of version 1.0.0. */
  public static BundleJar named(String symbolicName) {
    return new BundleJar(symbolicName);
  }

  /** Sets a line of the manifest. */
  public BundleJar header(String key, String value) {
    manifest.getMainAttributes().putValue(key, value);
    return this;
  }

  /** Adds a text file. */
  public BundleJar file(String path, String text) {
    entries.put(path, text.getBytes(StandardCharsets.UTF_8));
    return this;
  }

  /** Adds a class of the test's class path. */
  public BundleJar type(Class<?> type) {
    String path = type.getName().replace('.', '/') + ".class";
    try (InputStream bytes = type.getClassLoader().getResourceAsStream(path)) {
      if (bytes == null) {
        throw new IllegalArgumentException(type + " is not on the class path");
      }
      entries.put(path, bytes.readAllBytes());
      return this;
    } catch (IOException unreadable) {
      throw new UncheckedIOException(path, unreadable);
    }
  }

  /** Writes the jar whole before it gets its name, so that a watched folder never sees half. */
  public Path write(Path jar) {
    Path partial = jar.resolveSibling(jar.getFileName() + ".part");
    try (OutputStream out = Files.newOutputStream(partial);
        JarOutputStream zip = new JarOutputStream(out, manifest)) {
      for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
        zip.putNextEntry(new JarEntry(entry.getKey()));
        zip.write(entry.getValue());
        zip.closeEntry();
      }
    } catch (IOException unwritable) {
      throw new UncheckedIOException(partial.toString(), unwritable);
    }
    try {
      return Files.move(partial, jar);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(jar.toString(), unwritable);
    }
  }
}
