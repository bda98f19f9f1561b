package org.fettlebench.desktop.seats.internal;

import java.util.function.UnaryOperator;

/**
 * Something a person did, as a thing that can be done and undone.
 *
 * @param words what was done, for people, such as {@code corner 3 moved}
 * @param run changes of one run, such as one drag, are undone together; empty when it stands alone
 * @param deed makes the sketch after it out of the one before
 */
record Change(String words, String run, UnaryOperator<Sketch> deed) {
  static Change of(String words, UnaryOperator<Sketch> deed) {
    return new Change(words, "", deed);
  }
}
