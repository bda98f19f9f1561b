package org.fettlebench.command.internal.stock;

import org.fettlebench.club.Movement;
import org.fettlebench.club.Stock;
import org.fettlebench.command.Command;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Puts things back that were taken and not used. */
@Component(service = Command.class, property = Commands.WORDS + "=stock put-back")
public final class StockPutBack extends Moving {
  private static final Usage USAGE =
      Usage.of(
          "stock put-back",
          "Puts things back that were taken and not used.",
          "stock put-back 12 1");

  /** Made by the framework. */
  @Activate
  public StockPutBack(@Reference Stock stock) {
    super(stock, USAGE, 1);
  }

  @Override
  protected Movement move(long lineId, int quantity, String member, String note) {
    return stock.putBack(lineId, quantity, member, note);
  }
}
