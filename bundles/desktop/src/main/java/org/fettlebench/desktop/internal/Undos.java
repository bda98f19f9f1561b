package org.fettlebench.desktop.internal;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** What was done and can be undone, newest first. */
final class Undos {
  private static final int KEPT = 100;

  private final Deque<Step> steps = new ArrayDeque<>();

  /**
   * Something done.
   *
   * @param sentence what happened
   * @param undo takes it back
   * @param owner page that did it
   */
  record Step(String sentence, Runnable undo, PageSlot owner) {}

  void add(Step step) {
    steps.push(step);
    if (steps.size() > KEPT) {
      steps.removeLast();
    }
  }

  /** Takes the newest step from the pile. */
  Optional<Step> take() {
    return Optional.ofNullable(steps.poll());
  }

  Optional<Step> newest() {
    return Optional.ofNullable(steps.peek());
  }

  /** Forgets what a page that has gone could have undone. */
  void forget(PageSlot owner) {
    steps.removeIf(step -> step.owner() == owner);
  }
}
