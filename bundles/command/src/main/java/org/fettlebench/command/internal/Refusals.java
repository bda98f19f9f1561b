package org.fettlebench.command.internal;

import java.util.function.Supplier;
import org.fettlebench.command.CommandException;

/** Turns what the suite's records refuse into words for the person who typed. */
public final class Refusals {
  private Refusals() {}

  /**
   * Returns what is asked for.
   *
   * @throws CommandException with the message of what refused a figure
   */
  public static <T> T ask(Supplier<T> asked) {
    try {
      return asked.get();
    } catch (IllegalArgumentException refused) {
      throw new CommandException(refused.getMessage(), refused);
    }
  }
}
