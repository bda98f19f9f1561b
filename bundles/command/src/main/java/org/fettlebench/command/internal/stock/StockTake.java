package org.fettlebench.command.internal.stock;

import org.fettlebench.club.Movement;
import org.fettlebench.club.Stock;
import org.fettlebench.command.Command;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Takes things out of stock. */
@Component(service = Command.class, property = Commands.WORDS + "=stock take")
public final class StockTake extends Moving {
  private static final Usage USAGE =
      Usage.of("stock take", "Takes things out of stock.", "stock take 12 4 --member Ann");

  /** Made by the framework. */
  @Activate
  public StockTake(@Reference Stock stock) {
    super(stock, USAGE, 1);
  }

  @Override
  protected Movement move(long lineId, int quantity, String member, String note) {
    return stock.take(lineId, quantity, member, note);
  }
}
