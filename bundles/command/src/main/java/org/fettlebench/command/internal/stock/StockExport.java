package org.fettlebench.command.internal.stock;

import java.util.List;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.kits.StockFiles;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Writes the whole stock as a list that can be received again. */
@Component(property = Commands.WORDS + "=stock export")
public final class StockExport implements Command {
  private static final Usage USAGE =
      Usage.of(
          "stock export",
          "Writes the stock as a list (CSV) that stock receive --file reads.",
          "stock export > stock.csv");

  private final Stock stock;
  private final StockFiles files;

  /** Made by the framework. */
  @Activate
  public StockExport(@Reference Stock stock, @Reference StockFiles files) {
    this.stock = stock;
    this.files = files;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    List<StockLine> lines = stock.lines();
    return Reply.done(
        files.write(lines).stripTrailing(),
        Data.of(
            "lines", lines.stream().filter(l -> l.quantity() > 0).map(StockTexts::data).toList()));
  }
}
