package org.fettlebench.command.internal.stock;

import org.fettlebench.club.Movement;
import org.fettlebench.club.Stock;
import org.fettlebench.command.Command;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Sets what is there to what was counted. */
@Component(service = Command.class, property = Commands.WORDS + "=stock count")
public final class StockCount extends Moving {
  private static final Usage USAGE =
      Usage.of(
          "stock count",
          "Sets what is there to what was counted in its place.",
          "stock count 12 38");

  /** Made by the framework. */
  @Activate
  public StockCount(@Reference Stock stock) {
    super(stock, USAGE, 0);
  }

  @Override
  protected Movement move(long lineId, int quantity, String member, String note) {
    return stock.count(lineId, quantity, member, note);
  }
}
