package org.fettlebench.command.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearnessTest {
  @ParameterizedTest
  @CsvSource({
    "kit check, kit check, 0",
    "kit chek, kit check, 1",
    "kti check, kit check, 1",
    "stok lists, stock list, 2",
    "'', abc, 3",
    "abc, '', 3",
    "tool, loot, 2"
  })
  void countsSlips(String from, String to, int distance) {
    assertEquals(distance, Nearness.distance(from, to));
    assertEquals(distance, Nearness.distance(to, from));
  }
}
