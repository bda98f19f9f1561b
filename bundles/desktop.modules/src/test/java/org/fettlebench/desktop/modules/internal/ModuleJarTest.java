package org.fettlebench.desktop.modules.internal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.fettlebench.testkit.BundleJar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ModuleJarTest {
  @TempDir Path folder;

  private Path club() {
    return BundleJar.named("club.rules;singleton:=true")
        .header("Bundle-Name", "Club rules")
        .header("Bundle-Vendor", "An invented club")
        .write(folder.resolve("club-rules.jar"));
  }

  @Test
  void whatAJarSaysOfItselfIsReadAndToldWithWhatItMayDo() throws IOException {
    ModuleJar jar = ModuleJar.read(club());
    assertEquals("club.rules", jar.symbolicName());
    assertTrue(jar.warning().startsWith("Club rules, version 1.0.0, made by An invented club"));
    assertTrue(jar.warning().contains("all your rights"), jar.warning());
  }

  @Test
  void aMakerThatIsNotNamedIsSaidSo() throws IOException {
    Path file = BundleJar.named("nameless").write(folder.resolve("nameless.jar"));
    assertTrue(ModuleJar.read(file).warning().contains("somebody it does not name"));
  }

  @Test
  void itIsCopiedWholeAndReplacesAnOlderOne() throws IOException {
    Path modules = folder.resolve("data/modules");
    ModuleJar jar = ModuleJar.read(club());
    Path copy = jar.copyInto(modules);
    assertArrayEquals(Files.readAllBytes(jar.file()), Files.readAllBytes(copy));
    jar.copyInto(modules);
    try (var files = Files.list(modules)) {
      assertEquals(List.of("club-rules.jar"), files.map(f -> f.getFileName().toString()).toList());
    }
  }

  @Test
  void addingWhatLiesThereAlreadyHarmsNothing() throws IOException {
    ModuleJar jar = ModuleJar.read(club());
    byte[] before = Files.readAllBytes(jar.file());
    assertEquals(jar.file(), jar.copyInto(folder));
    assertArrayEquals(before, Files.readAllBytes(jar.file()));
  }

  @Test
  void whatIsNoModuleIsRefusedWithFileAndReason() throws IOException {
    Path text = Files.writeString(folder.resolve("notes.jar"), "not a jar");
    IOException broken = assertThrows(IOException.class, () -> ModuleJar.read(text));
    assertTrue(broken.getMessage().contains("notes.jar"), broken.getMessage());
    Path plain = folder.resolve("plain.jar");
    try (var zip = new java.util.zip.ZipOutputStream(Files.newOutputStream(plain))) {
      zip.putNextEntry(new java.util.zip.ZipEntry("a.txt"));
    }
    IOException none = assertThrows(IOException.class, () -> ModuleJar.read(plain));
    assertTrue(none.getMessage().contains("Bundle-SymbolicName"), none.getMessage());
  }
}
