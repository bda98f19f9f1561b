package org.fettlebench.modules.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LeftOutTest {
  @TempDir Path data;

  @Test
  void remembersAcrossStarts() throws Exception {
    LeftOut leftOut = new LeftOut(data.resolve("new"));
    leftOut.set("club.b", true);
    leftOut.set("club.a", true);
    assertTrue(new LeftOut(data.resolve("new")).contains("club.a"));
    leftOut.set("club.a", false);
    assertFalse(new LeftOut(data.resolve("new")).contains("club.a"));
    assertEquals(List.of("club.b"), Files.readAllLines(data.resolve("new").resolve(LeftOut.FILE)));
  }

  @Test
  void changesNothingWhenItCannotBeWritten() throws Exception {
    Path file = Files.createFile(data.resolve("in the way"));
    LeftOut leftOut = new LeftOut(file);
    assertThrows(UncheckedIOException.class, () -> leftOut.set("club.a", true));
    assertFalse(leftOut.contains("club.a"));
  }
}
