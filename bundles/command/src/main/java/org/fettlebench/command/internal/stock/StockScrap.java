package org.fettlebench.command.internal.stock;

import org.fettlebench.club.Movement;
import org.fettlebench.club.Stock;
import org.fettlebench.command.Command;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Throws things away. */
@Component(service = Command.class, property = Commands.WORDS + "=stock scrap")
public final class StockScrap extends Moving {
  private static final Usage USAGE =
      Usage.of("stock scrap", "Throws things away.", "stock scrap 12 1 --note \"head split\"");

  /** Made by the framework. */
  @Activate
  public StockScrap(@Reference Stock stock) {
    super(stock, USAGE, 1);
  }

  @Override
  protected Movement move(long lineId, int quantity, String member, String note) {
    return stock.scrap(lineId, quantity, member, note);
  }
}
