package org.fettlebench.command.internal.stock;

import java.util.List;
import java.util.Optional;
import org.fettlebench.club.Goods;
import org.fettlebench.club.Movement;
import org.fettlebench.club.Receipt;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine.Condition;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.kits.StockFiles;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Puts things into stock: one kind of thing, or a whole list, all or nothing. */
@Component(property = Commands.WORDS + "=stock receive")
public final class StockReceive implements Command {
  private static final Usage USAGE =
      Usage.of(
              "stock receive",
              "Puts things into stock: one kind of thing, or a list of many.",
              "stock receive 2 BA hexagon x 1/2 in steel 50 --place \"Cabinet / Drawer 3\"")
          .mayMany(
              "WHAT", "such as 2 BA hexagon x 1/2 in steel, drill 5/32, tap 2 BA taper, sundry oil")
          .may("QUANTITY", "how many, the last word")
          .option("--place", "PLACE", "where they go, such as \"Cabinet / Drawer 3\"")
          .option("--condition", "WORD", "good or worn; good if not said")
          .option("--low", "N", "how many should always be there")
          .option(
              "--file", "LIST.csv", "a stock list instead, all of it or nothing; - for piped in")
          .option("--member", "NAME", "who puts them in")
          .option("--note", "TEXT", "why, or from where");

  private final Stock stock;
  private final StockFiles files;

  /** Made by the framework. */
  @Activate
  public StockReceive(@Reference Stock stock, @Reference StockFiles files) {
    this.stock = stock;
    this.files = files;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    List<Receipt> receipts =
        call.option("--file").isPresent() ? fromFile(call) : List.of(fromWords(call));
    List<Movement> movements =
        stock.receive(
            receipts, call.option("--member").orElse(""), call.option("--note").orElse(""));
    return MovementReply.received(stock, movements);
  }

  private List<Receipt> fromFile(Call call) {
    if (!call.operands("WHAT").isEmpty() || call.operand("QUANTITY").isPresent()) {
      throw new CommandException("say what is received, or --file and a list, not both");
    }
    for (String option : List.of("--place", "--condition", "--low")) {
      if (call.option(option).isPresent()) {
        throw new CommandException(option + " stands in the list for each line; leave it out");
      }
    }
    List<Receipt> receipts =
        files.readStock(call.option("--file").orElseThrow(), call.text("--file"));
    if (receipts.isEmpty()) {
      throw new CommandException(call.option("--file").orElseThrow() + " lists nothing to receive");
    }
    return receipts;
  }

  private Receipt fromWords(Call call) {
    String what = call.operand("WHAT").orElseThrow(() -> missing("WHAT"));
    int quantity = call.whole("QUANTITY", 1, Moving.MOST).orElseThrow(() -> missing("QUANTITY"));
    String place =
        call.option("--place")
            .orElseThrow(
                () -> new CommandException("say where they go: --place \"Cabinet / Drawer 3\""));
    Optional<Integer> low = call.whole("--low", 0, Moving.MOST);
    return new Receipt(goods(what), place, condition(call), quantity, low);
  }

  private static CommandException missing(String operand) {
    return new CommandException(
        "stock receive needs WHAT and QUANTITY, or --file; "
            + operand
            + " is missing. Example: fettlebench "
            + USAGE.example());
  }

  private Goods goods(String what) {
    try {
      return files.readGoods(what);
    } catch (IllegalArgumentException e) {
      throw new CommandException(e.getMessage(), e);
    }
  }

  private static Condition condition(Call call) {
    String typed = call.option("--condition").orElse("good");
    for (Condition condition : Condition.values()) {
      if (StockTexts.word(condition).equals(typed)) {
        return condition;
      }
    }
    throw new CommandException("--condition \"" + typed + "\" is not known; say good or worn");
  }
}
