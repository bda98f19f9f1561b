package org.fettlebench.command.internal.stock;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Lends things to a member. */
@Component(property = Commands.WORDS + "=tool lend")
public final class ToolLend implements Command {
  private static final Usage USAGE =
      Usage.of(
              "tool lend",
              "Lends something to a member.",
              "tool lend tap 2 BA taper --to Ann --due 2027-03-31")
          .needsMany("WHAT", "number of the stock line, or words that only it has")
          .option("--to", "NAME", "the member (must be said)")
          .option("--due", "DATE", "when it is to be back, as 2027-03-31")
          .option("--count", "N", "how many; one if not said");

  private final Stock stock;

  /** Made by the framework. */
  @Activate
  public ToolLend(@Reference Stock stock) {
    this.stock = stock;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    String member =
        call.option("--to").orElseThrow(() -> new CommandException("say to whom: --to NAME"));
    int count = call.whole("--count", 1, Moving.MOST).orElse(1);
    Optional<LocalDate> due = call.option("--due").map(ToolLend::date);
    StockLine line = StockWords.one(stock, call.operands("WHAT"));
    stock.lend(line.id(), count, member, due);
    return LoanReply.of(stock, line, count + " lent to " + member);
  }

  private static LocalDate date(String typed) {
    try {
      LocalDate due = LocalDate.parse(typed);
      if (due.isBefore(LocalDate.now())) {
        throw new CommandException(
            "--due " + typed + " has passed; give the day by which it is to be back");
      }
      return due;
    } catch (DateTimeParseException e) {
      throw new CommandException(
          "--due \"" + typed + "\" is no date; write year, month and day as 2027-03-31", e);
    }
  }
}
