package org.fettlebench.desktop.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MemoryTest {
  @TempDir Path folder;

  @Test
  void whatIsPutIsThereAtTheNextStart() {
    Path file = folder.resolve("new/desktop.properties");
    Memory memory = new Memory(file);
    memory.put("club", "Verein für Modellbau = 7 ½ Zoll");
    memory.put("window.x", "-20");
    memory.save();
    Memory again = new Memory(file);
    assertEquals("Verein für Modellbau = 7 ½ Zoll", again.get("club", ""));
    assertEquals(-20, again.number("window.x", 5));
    assertEquals(5, again.number("window.y", 5));
  }

  @Test
  void nothingIsWrittenWhenNothingChanged() throws IOException {
    Path file = folder.resolve("desktop.properties");
    Memory memory = new Memory(file);
    memory.put("unit", "in");
    memory.save();
    Files.delete(file);
    memory.put("unit", "in");
    memory.save();
    assertFalse(Files.exists(file));
  }

  @Test
  void noHalfWrittenFileIsLeft() throws IOException {
    Memory memory = new Memory(folder.resolve("desktop.properties"));
    memory.put("unit", "in");
    memory.save();
    try (var files = Files.list(folder)) {
      assertEquals(
          List.of("desktop.properties"), files.map(f -> f.getFileName().toString()).toList());
    }
  }

  @Test
  void anUnreadableFileIsPutAside() throws IOException {
    Path file = folder.resolve("desktop.properties");
    Files.writeString(file, "unit=\\u00zz\n");
    Memory memory = new Memory(file);
    assertEquals("mm", memory.get("unit", "mm"));
    assertTrue(Files.exists(folder.resolve("desktop.properties.unreadable")));
  }
}
