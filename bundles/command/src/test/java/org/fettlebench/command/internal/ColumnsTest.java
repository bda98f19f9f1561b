package org.fettlebench.command.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ColumnsTest {
  @Test
  void setsFiguresToTheRightAndLeavesNoBlanksBehind() {
    String text =
        new Columns().indent(1).right(1).row("a", "10.5", "½").row("bcd", 2, "").row("e").text();
    assertEquals(" a    10.5  ½\n bcd     2\n e", text);
  }

  @Test
  void ofNothingIsNothing() {
    assertEquals("", new Columns().text());
  }
}
