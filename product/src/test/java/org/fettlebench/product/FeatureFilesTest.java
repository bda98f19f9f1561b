package org.fettlebench.product;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FeatureFilesTest {
  @TempDir Path dir;

  private List<Part> read(String keys) throws IOException {
    Files.writeString(
        dir.resolve("core.json"),
        """
        {
          "feature-resource-version": "1.0",
          "id": "g:core:1",
          "bundles": [ {"id": "g:a:1.2"%s} ]
        }
        """
            .formatted(keys));
    return FeatureFiles.read(dir);
  }

  @Test
  void theTwoKeysAreUnderstood() throws IOException {
    assertEquals(
        List.of(new Part("core", "g", "a", "1.2", OptionalInt.of(10))),
        read(", \"startLevel\": 10"));
    assertEquals(
        List.of(new Part("core", "g", "a", "1.2", OptionalInt.empty())),
        read(", \"place\": \"class-path\""));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        ", \"startLevel\": 0",
        ", \"startLevel\": 41",
        ", \"startLevel\": \"ten\"",
        ", \"place\": \"somewhere\"",
        ", \"startLevel\": 4, \"place\": \"class-path\""
      })
  void anythingElseIsRefusedWithFileAndBundle(String keys) {
    String said = assertThrows(AssemblyException.class, () -> read(keys)).getMessage();
    assertTrue(said.contains("features/core.json") && said.contains("g:a:1.2"), said);
  }
}
