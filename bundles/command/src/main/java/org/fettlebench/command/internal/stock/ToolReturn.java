package org.fettlebench.command.internal.stock;

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

/** Takes things back that a member had on loan. */
@Component(property = Commands.WORDS + "=tool return")
public final class ToolReturn implements Command {
  private static final Usage USAGE =
      Usage.of(
              "tool return",
              "Takes back something that a member had on loan.",
              "tool return tap 2 BA taper --from Ann")
          .needsMany("WHAT", "number of the stock line, or words that only it has")
          .option("--from", "NAME", "the member (must be said)")
          .option("--count", "N", "how many; one if not said");

  private final Stock stock;

  /** Made by the framework. */
  @Activate
  public ToolReturn(@Reference Stock stock) {
    this.stock = stock;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    String member =
        call.option("--from").orElseThrow(() -> new CommandException("say from whom: --from NAME"));
    int count = call.whole("--count", 1, Moving.MOST).orElse(1);
    StockLine line = StockWords.one(stock, call.operands("WHAT"));
    stock.giveBack(line.id(), count, member);
    return LoanReply.of(stock, line, count + " back from " + member);
  }
}
