package org.fettlebench.command.internal.stock;

import java.util.List;
import org.fettlebench.club.Movement;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.When;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Shows what happened to a stock line. */
@Component(property = Commands.WORDS + "=stock history")
public final class StockHistory implements Command {
  private static final Usage USAGE =
      Usage.of("stock history", "Shows a stock line's movements, newest first.", "stock history 12")
          .needsMany("WHAT", "number of the stock line, or words that only it has");

  private final Stock stock;

  /** Made by the framework. */
  @Activate
  public StockHistory(@Reference Stock stock) {
    this.stock = stock;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    StockLine line = StockWords.one(stock, call.operands("WHAT"));
    List<Movement> movements = stock.movements(line.id());
    Columns columns =
        new Columns().right(0, 3).row("movement", "when", "what", "change", "member", "note");
    for (Movement movement : movements) {
      columns.row(
          movement.id(),
          When.said(movement.at()),
          StockTexts.word(movement.kind()),
          MovementReply.signed(movement.quantity()),
          movement.member(),
          movement.note());
    }
    String head =
        "line "
            + line.id()
            + ": "
            + StockTexts.what(line)
            + ", "
            + line.place()
            + ", "
            + line.present()
            + " there now\n";
    return Reply.done(
        head + columns.text(),
        Data.of(
            "line", StockTexts.data(line),
            "movements", movements.stream().map(StockTexts::data).toList()));
  }
}
