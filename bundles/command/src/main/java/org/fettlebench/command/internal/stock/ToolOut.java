package org.fettlebench.command.internal.stock;

import java.util.List;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Lists what is out on loan. */
@Component(property = Commands.WORDS + "=tool out")
public final class ToolOut implements Command {
  private static final Usage USAGE =
      Usage.of("tool out", "Lists what is out on loan, and with whom.", "tool out")
          .mayMany("WORDS", "only lines that have words beginning so");

  private final Stock stock;

  /** Made by the framework. */
  @Activate
  public ToolOut(@Reference Stock stock) {
    this.stock = stock;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    List<StockLine> out =
        stock.lines().stream()
            .filter(line -> line.lent() > 0)
            .filter(line -> StockWords.fits(line, call.operands("WORDS")))
            .toList();
    Columns columns = new Columns().right(0, 2).row("line", "what", "out", "with");
    out.forEach(l -> columns.row(l.id(), StockTexts.what(l), l.lent(), l.holder()));
    return Reply.done(
        out.isEmpty() ? "nothing is out on loan" : columns.text(),
        Data.of("lines", out.stream().map(StockTexts::data).toList()));
  }
}
