package org.fettlebench.kits.internal;

import org.fettlebench.club.StockLine;
import org.fettlebench.kits.JointReport.Fetch.State;

/** How a stock line's things can be had. */
final class Held {
  private Held() {}

  /** Returns the state of a line; worn things are worn wherever they are. */
  static State state(StockLine line) {
    if (line.quantity() <= 0) {
      return State.NOT_HELD;
    }
    if (line.condition() == StockLine.Condition.WORN) {
      return State.WORN;
    }
    return line.present() > 0 ? State.IN : State.OUT;
  }

  /** Returns where to go for a line's things. */
  static String from(StockLine line) {
    return switch (state(line)) {
      case OUT -> line.holder().isBlank() ? "on loan" : "with " + line.holder();
      case WORN -> "only a worn one, in " + line.place();
      default -> line.place();
    };
  }
}
