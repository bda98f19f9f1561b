package org.fettlebench.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DataDirectoryTest {
  @ParameterizedTest
  @CsvSource({
    "Linux,,, /home/ann/.local/share/fettlebench/club",
    "Linux, XDG_DATA_HOME, /var/ann, /var/ann/fettlebench/club",
    // The XDG base directory specification: a relative path is to be ignored.
    "Linux, XDG_DATA_HOME, var/ann, /home/ann/.local/share/fettlebench/club",
    "Mac OS X,,, /home/ann/Library/Application Support/fettlebench/club",
    "Windows 11, APPDATA, /home/ann/roaming, /home/ann/roaming/fettlebench/club",
    "Windows 11,,, /home/ann/AppData/Roaming/fettlebench/club",
  })
  void standsInThePlatformsPlace(String system, String name, String value, String expected) {
    Surroundings here =
        new Surroundings(
            system, Path.of("/home/ann"), name == null ? Map.of() : Map.of(name, value));
    assertEquals(Path.of(expected), DataDirectory.find(Optional.empty(), "club", here).path());
  }

  @Test
  void theAskedDirectoryIsTakenFromWhereThePersonStands() {
    DataDirectory data = DataDirectory.find(Optional.of("x/../y"), "club", Surroundings.here());
    assertEquals(Path.of("y").toAbsolutePath(), data.path());
  }

  @Test
  void onlyTheOwnerCanEnter(@TempDir Path dir) throws IOException {
    DataDirectory data = new DataDirectory(dir.resolve("a/b"));
    data.make();
    for (Path made : new Path[] {data.path(), data.run(), data.log().getParent()}) {
      assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(made)));
    }
  }

  @Test
  void aFileInTheWayIsNamed(@TempDir Path dir) throws IOException {
    Path file = Files.createFile(dir.resolve("file"));
    LaunchException thrown =
        assertThrows(LaunchException.class, new DataDirectory(file.resolve("x"))::make);
    assertTrue(thrown.getMessage().contains(file.toString()), thrown.getMessage());
    assertTrue(thrown.getMessage().contains("--data"), thrown.getMessage());
  }

  @Test
  void aScreenIsKnownByItsVariable() {
    Path home = Path.of("/home/ann");
    assertTrue(new Surroundings("Linux", home, Map.of("WAYLAND_DISPLAY", "w")).hasScreen());
    assertTrue(new Surroundings("Linux", home, Map.of("DISPLAY", ":1")).hasScreen());
    assertEquals(false, new Surroundings("Linux", home, Map.of("DISPLAY", "")).hasScreen());
  }
}
