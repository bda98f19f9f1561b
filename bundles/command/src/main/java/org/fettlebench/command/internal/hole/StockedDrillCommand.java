package org.fettlebench.command.internal.hole;

import org.fettlebench.club.Stock;
import org.fettlebench.command.Command;
import org.fettlebench.command.Usage;
import org.fettlebench.tooling.Drills;

/** The frame of a command that looks drills up in the systems and in the stock. */
abstract class StockedDrillCommand implements Command {
  final Drills drills;
  final Stock stock;
  private final Usage usage;

  StockedDrillCommand(Usage usage, Drills drills, Stock stock) {
    this.usage = usage;
    this.drills = drills;
    this.stock = stock;
  }

  @Override
  public final Usage usage() {
    return usage;
  }
}
