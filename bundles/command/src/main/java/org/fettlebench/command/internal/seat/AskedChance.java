package org.fettlebench.command.internal.seat;

import java.math.BigDecimal;
import java.util.Optional;
import org.fettlebench.command.Call;
import org.fettlebench.command.CommandException;

/** Reads {@code --chance}: 95%, 95 % or 0.95. */
final class AskedChance {
  private AskedChance() {}

  static Optional<Double> of(Call call) {
    return call.option("--chance").map(AskedChance::read);
  }

  private static double read(String typed) {
    String text = typed.strip();
    boolean percent = text.endsWith("%");
    String digits = percent ? text.substring(0, text.length() - 1).strip() : text;
    if (!digits.matches("[0-9]{0,3}(\\.[0-9]{1,12})?") || digits.isEmpty()) {
      throw wrong(typed);
    }
    double chance = new BigDecimal(digits).movePointLeft(percent ? 2 : 0).doubleValue();
    if (!(chance > 0 && chance < 1)) {
      throw wrong(typed);
    }
    return chance;
  }

  private static CommandException wrong(String typed) {
    return new CommandException(
        "--chance \"" + typed + "\" is no chance between 0 and 1; write 95% or 0.95");
  }
}
