package org.fettlebench.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WordsTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "--data|d|kit|check|f",
        "kit|--data|d|check|f",
        "kit|check|f|--data|d",
        "kit|check|--data=d|f"
      })
  void dataMayStandAnywhere(String words) {
    Words read = Words.read(List.of(words.split("\\|")));
    assertEquals(new Words(Optional.of("d"), List.of("kit", "check", "f")), read);
  }

  @Test
  void afterALoneDoubleDashNothingIsTaken() {
    List<String> words = List.of("stock", "count", "--", "--data", "d");
    assertEquals(new Words(Optional.empty(), words), Words.read(words));
  }

  @Test
  void dataWithoutADirectoryIsRefused() {
    LaunchException thrown =
        assertThrows(LaunchException.class, () -> Words.read(List.of("kit", "--data")));
    assertTrue(thrown.getMessage().contains("--data wants a directory"), thrown.getMessage());
    assertThrows(LaunchException.class, () -> Words.read(List.of("--data=")));
    assertThrows(LaunchException.class, () -> Words.read(List.of("--data", "--", "x")));
  }

  @Test
  void dataTwiceIsRefusedWithBothValues() {
    LaunchException thrown =
        assertThrows(
            LaunchException.class, () -> Words.read(List.of("--data", "one", "--data=two")));
    assertTrue(thrown.getMessage().contains("one and two"), thrown.getMessage());
  }

  @Test
  void onlyTheFirstWordAsksForTheWindow() {
    assertTrue(Words.read(List.of("--data", "d", "desktop")).desktop());
    assertFalse(Words.read(List.of("stock", "desktop")).desktop());
    assertFalse(Words.read(List.of()).desktop());
  }

  @Test
  void theWindowTakesNoFurtherWords() {
    LaunchException thrown =
        assertThrows(LaunchException.class, () -> Words.read(List.of("desktop", "fast")));
    assertTrue(thrown.getMessage().contains("fast"), thrown.getMessage());
    assertEquals(List.of("--help"), Words.read(List.of("desktop", "--help")).rest());
  }
}
