package org.fettlebench.desktop.widgets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class HistoryTest {
  private final History<String> history = new History<>("");

  private boolean add(String letter, String run) {
    return history.apply(new Change<>("typed " + letter, run, now -> now + letter));
  }

  @Test
  void everythingIsUndoneAndDoneAgainInOrder() {
    for (int i = 0; i < 500; i++) {
      assertTrue(add("x", ""));
    }
    int undone = 0;
    while (history.canUndo()) {
      assertEquals(Optional.of("typed x"), history.undo());
      undone++;
    }
    assertEquals(500, undone);
    assertEquals("", history.now());
    assertEquals(Optional.empty(), history.undo());
    while (history.canRedo()) {
      history.redo();
    }
    assertEquals(500, history.now().length());
    assertEquals(Optional.empty(), history.redo());
  }

  @Test
  void aRunIsUndoneTogetherUnlessSomethingStandsBetween() {
    add("a", "one");
    add("b", "one");
    add("c", "other");
    add("d", "one");
    history.undo();
    assertEquals("abc", history.now());
    history.undo();
    assertEquals("ab", history.now());
    // What follows an Undo is a step of its own, though it belongs to the same run.
    add("e", "one");
    assertFalse(history.canRedo());
    history.undo();
    assertEquals("ab", history.now());
    history.undo();
    assertEquals("", history.now());
  }

  @Test
  void whatChangesNothingIsNoStep() {
    assertFalse(history.apply(Change.of("nothing", now -> now)));
    assertFalse(history.canUndo());
    history.begin("kept");
    assertEquals("kept", history.now());
    assertEquals(Optional.empty(), history.newest());
  }
}
