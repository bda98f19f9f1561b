package org.fettlebench.command.internal.thread;

import java.util.List;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.threads.ThreadCall;

/** Figures that belong together: some columns of a batch's answer. */
interface BatchFigure {
  /** Returns the word by which it is asked for. */
  String word();

  /** Returns the columns' names for lengths in a unit. */
  List<String> columns(LengthUnit unit);

  /** Returns the columns that it reads besides the designation, without their units. */
  default List<String> reads() {
    return List.of();
  }

  /**
   * Adds a cell for each column.
   *
   * @throws RuntimeException one that is made for people, if the row does not allow it
   */
  void write(ThreadCall called, BatchRow row, BatchLine line);
}
