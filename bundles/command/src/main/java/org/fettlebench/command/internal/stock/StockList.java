package org.fettlebench.command.internal.stock;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fettlebench.club.Goods;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Lists what is in stock. */
@Component(property = Commands.WORDS + "=stock list")
public final class StockList implements Command {
  private static final Usage USAGE =
      Usage.of("stock list", "Lists what is in stock.", "stock list 2 BA hexagon")
          .mayMany("WORDS", "only lines that have words beginning so, in any order")
          .option("--kind", "KIND", "only fastener, drill, tap or sundry")
          .flag("--low", "only lines below their low mark; exit status 1 when there are any")
          .flag("--all", "also lines that are used up");

  private final Stock stock;

  /** Made by the framework. */
  @Activate
  public StockList(@Reference Stock stock) {
    this.stock = stock;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    Optional<Goods.Kind> kind = call.option("--kind").map(StockList::kind);
    List<StockLine> lines =
        stock.lines().stream()
            .filter(line -> kind.isEmpty() || line.goods().kind() == kind.get())
            .filter(line -> !call.on("--low") || StockTexts.low(line))
            .filter(line -> line.quantity() > 0 || call.on("--all") || StockTexts.low(line))
            .filter(line -> StockWords.fits(line, call.operands("WORDS")))
            .toList();
    return Reply.of(
        call.on("--low") && !lines.isEmpty(),
        text(lines),
        Data.of("lines", lines.stream().map(StockTexts::data).toList()));
  }

  private static Goods.Kind kind(String typed) {
    return Arrays.stream(Goods.Kind.values())
        .filter(kind -> StockTexts.word(kind).equals(typed.toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(
            () ->
                new CommandException(
                    "--kind \"" + typed + "\" is not known; say fastener, drill, tap or sundry"));
  }

  private static String text(List<StockLine> lines) {
    if (lines.isEmpty()) {
      return "no stock line fits; \"stock receive --help\" says how to put things in";
    }
    Columns columns = new Columns().right(0, 2).row("line", "what", "there", "place", "");
    for (StockLine line : lines) {
      columns.row(line.id(), StockTexts.what(line), line.present(), line.place(), remark(line));
    }
    return columns.text() + "\n" + Figures.count(lines.size(), "line");
  }

  private static String remark(StockLine line) {
    String low = StockTexts.low(line) ? "low, should be " + line.lowMark().orElseThrow() : "";
    String out = line.lent() > 0 ? line.lent() + " out: " + line.holder() : "";
    return low.isEmpty() || out.isEmpty() ? low + out : low + "; " + out;
  }
}
