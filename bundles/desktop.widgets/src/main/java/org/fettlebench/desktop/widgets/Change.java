package org.fettlebench.desktop.widgets;

import java.util.function.UnaryOperator;

/**
 * Something a person did, as a thing that can be done and undone.
 *
 * @param <T> what is worked on; immutable
 * @param words what was done, for people, such as {@code corner 3 moved}
 * @param run changes of one run, such as one drag, are undone together; empty when it stands alone
 * @param deed makes the work after it out of the one before
 */
public record Change<T>(String words, String run, UnaryOperator<T> deed) {
  /** Returns a change that stands alone. */
  public static <T> Change<T> of(String words, UnaryOperator<T> deed) {
    return new Change<>(words, "", deed);
  }
}
