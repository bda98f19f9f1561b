package org.fettlebench.desktop.stock.internal;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

/** What came of something asked. */
sealed interface Outcome {
  /** Where a thing was typed that cannot be used. */
  enum Field {
    /** What it is. */
    WHAT,
    /** How many. */
    QUANTITY,
    /** Where. */
    PLACE,
    /** How many should always be there. */
    LOW_MARK,
    /** Who. */
    MEMBER,
    /** Until when. */
    DUE,
    /** Several of them, or none. */
    ALL
  }

  /**
   * It is done and on disk.
   *
   * @param sentence what happened
   * @param undo undoes it and says so; absent where there is nothing to undo
   * @param lines keys of the lines it changed; empty when they are many
   */
  record Done(String sentence, Optional<Callable<Done>> undo, List<Long> lines)
      implements Outcome {}

  /**
   * It cannot be done; nothing has changed.
   *
   * @param field where to mend it
   * @param why with the remedy
   */
  record Refused(Field field, String why) implements Outcome {}
}
