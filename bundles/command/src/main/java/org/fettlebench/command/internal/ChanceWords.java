package org.fettlebench.command.internal;

import java.math.BigDecimal;
import java.util.Optional;
import org.fettlebench.command.Call;
import org.fettlebench.command.CommandException;

/** Reads an option that is a chance: 95%, 95 % or 0.95. */
public final class ChanceWords {
  private ChanceWords() {}

  /**
   * Returns the chance that an option says, above 0 and below 1.
   *
   * @throws CommandException if it is none
   */
  public static Optional<Double> read(Call call, String option) {
    return call.option(option).map(typed -> chance(option, typed));
  }

  private static double chance(String option, String typed) {
    String text = typed.strip();
    boolean percent = text.endsWith("%");
    String digits = percent ? text.substring(0, text.length() - 1).strip() : text;
    if (!digits.matches("[0-9]{0,3}(\\.[0-9]{1,12})?") || digits.isEmpty()) {
      throw wrong(option, typed);
    }
    double chance = new BigDecimal(digits).movePointLeft(percent ? 2 : 0).doubleValue();
    if (!(chance > 0 && chance < 1)) {
      throw wrong(option, typed);
    }
    return chance;
  }

  private static CommandException wrong(String option, String typed) {
    return new CommandException(
        option + " \"" + typed + "\" is no chance between 0 and 1; write 95% or 0.95");
  }
}
