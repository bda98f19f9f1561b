package org.fettlebench.command.internal.stock;

import org.fettlebench.club.Movement;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;

/** A command that changes how many things a stock line holds. */
abstract class Moving implements Command {
  /** No drawer holds more; a slip of the finger is more likely. */
  static final int MOST = 1_000_000;

  /** The stock. */
  protected final Stock stock;

  private final Usage usage;
  private final int least;

  Moving(Stock stock, Usage usage, int least) {
    this.stock = stock;
    this.usage =
        usage
            .needsMany("WHAT", "number of the stock line, or words that only it has")
            .needs("QUANTITY", "how many, the last word")
            .option("--member", "NAME", "who does it")
            .option("--note", "TEXT", "why");
    this.least = least;
  }

  @Override
  public final Usage usage() {
    return usage;
  }

  @Override
  public final Reply run(Call call) {
    int quantity = call.whole("QUANTITY", least, MOST).orElseThrow();
    StockLine line = StockWords.one(stock, call.operands("WHAT"));
    String member = call.option("--member").orElse("");
    return MovementReply.of(
        stock, move(line.id(), quantity, member, call.option("--note").orElse("")));
  }

  /** Writes the movement. */
  protected abstract Movement move(long lineId, int quantity, String member, String note);
}
