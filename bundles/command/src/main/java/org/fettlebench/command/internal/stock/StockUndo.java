package org.fettlebench.command.internal.stock;

import org.fettlebench.club.Stock;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Undoes a movement of stock by a counter-entry. */
@Component(property = Commands.WORDS + "=stock undo")
public final class StockUndo implements Command {
  private static final Usage USAGE =
      Usage.of("stock undo", "Undoes a movement by a counter-entry.", "stock undo 17 --member Ann")
          .needs("MOVEMENT", "number of the movement, as told when it was made")
          .option("--member", "NAME", "who does it");

  private final Stock stock;

  /** Made by the framework. */
  @Activate
  public StockUndo(@Reference Stock stock) {
    this.stock = stock;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    String typed = call.operand("MOVEMENT").orElseThrow();
    if (!typed.matches("[0-9]{1,18}")) {
      throw new CommandException(
          "\"" + typed + "\" is no number of a movement; \"stock history\" shows them");
    }
    return MovementReply.of(
        stock, stock.undo(Long.parseLong(typed), call.option("--member").orElse("")));
  }
}
