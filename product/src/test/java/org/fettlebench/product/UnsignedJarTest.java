package org.fettlebench.product;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UnsignedJarTest {
  @TempDir Path dir;

  private Path signedJar() throws IOException {
    Manifest manifest = new Manifest();
    manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
    manifest.getMainAttributes().putValue("Bundle-Version", "3.127.0");
    manifest
        .getMainAttributes()
        .putValue(
            "Export-Package",
            "org.a;version=\"1.0\";uses:=\"org.b,org.c\",org.b,org.i;x-internal:=true,"
                + "org.f;x-friends:=\"g,h\"");
    Attributes digest = new Attributes();
    digest.putValue("SHA-256-Digest", "AAAA");
    manifest.getEntries().put("org/a/A.class", digest);
    Path jar = dir.resolve("signed.jar");
    try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar), manifest)) {
      for (String name :
          List.of("META-INF/X.SF", "META-INF/X.RSA", "META-INF/services/x.SF", "org/a/A.class")) {
        out.putNextEntry(new JarEntry(name));
        out.write(name.getBytes(StandardCharsets.UTF_8));
        out.closeEntry();
      }
    }
    return jar;
  }

  @Test
  void onlyTheSignatureGoes() throws IOException {
    Path copy = dir.resolve("copy.jar");
    UnsignedJar.copy(signedJar(), copy);
    try (JarFile jar = new JarFile(copy.toFile())) {
      assertEquals(
          List.of("META-INF/MANIFEST.MF", "META-INF/services/x.SF", "org/a/A.class"),
          jar.stream().map(JarEntry::getName).toList());
      assertTrue(jar.getManifest().getEntries().isEmpty());
      assertEquals("3.127.0", jar.getManifest().getMainAttributes().getValue("Bundle-Version"));
      assertEquals(
          "org/a/A.class",
          new String(
              jar.getInputStream(jar.getEntry("org/a/A.class")).readAllBytes(),
              StandardCharsets.UTF_8));
    }
  }

  @Test
  void publicPackagesGetTheVersionOfTheJar() throws IOException {
    assertEquals(
        List.of("org.a;version=\"3.127.0\"", "org.b;version=\"3.127.0\""),
        SystemPackages.of(signedJar()));
  }
}
