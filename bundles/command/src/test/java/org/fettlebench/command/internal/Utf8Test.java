package org.fettlebench.command.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import org.fettlebench.kits.FaultyFileException;
import org.junit.jupiter.api.Test;

class Utf8Test {
  private static final String LIST = "kind,name,place,quantity\nsundry,Café,Shelf,1\n";

  @Test
  void textIsRead() {
    assertEquals(LIST, Utf8.read("list.csv", LIST.getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void whatIsNoTextIsRefusedWithItsPlace() {
    byte[] other = LIST.getBytes(StandardCharsets.ISO_8859_1);
    FaultyFileException refused =
        assertThrows(FaultyFileException.class, () -> Utf8.read("list.csv", other));
    assertEquals(
        "list.csv:2:11: \"byte E9\" is not UTF-8 text. Save it as UTF-8", refused.getMessage());
  }
}
