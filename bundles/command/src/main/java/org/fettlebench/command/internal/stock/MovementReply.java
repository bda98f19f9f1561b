package org.fettlebench.command.internal.stock;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fettlebench.club.Movement;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.command.Reply;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;

/** The answer of commands that write into the stock ledger. */
final class MovementReply {
  private MovementReply() {}

  /** Answers with one movement and what is there now. */
  static Reply of(Stock stock, Movement movement) {
    StockLine line = stock.line(movement.lineId()).orElseThrow();
    Map<String, Object> data =
        Data.of("movement", StockTexts.data(movement), "line", StockTexts.data(line));
    return Reply.done(text(movement, line) + undo(movement), data);
  }

  /** Answers with what was received. */
  static Reply received(Stock stock, List<Movement> movements) {
    if (movements.size() == 1) {
      return of(stock, movements.get(0));
    }
    Columns columns = new Columns().right(0, 1).row("movement", "received", "what", "place");
    // All lines at once: a delivery may be thousands of them.
    Map<Long, StockLine> lines =
        stock.lines().stream().collect(Collectors.toMap(StockLine::id, Function.identity()));
    for (Movement movement : movements) {
      StockLine line = lines.get(movement.lineId());
      columns.row(movement.id(), movement.quantity(), StockTexts.what(line), line.place());
    }
    return Reply.done(
        columns.text() + "\n" + Figures.count(movements.size(), "line") + " received",
        Data.of("movements", movements.stream().map(StockTexts::data).toList()));
  }

  private static String text(Movement movement, StockLine line) {
    return did(movement)
        + " "
        + StockTexts.what(line)
        + ", "
        + line.place()
        + " (line "
        + line.id()
        + "): "
        + line.present()
        + " there now"
        + (StockTexts.low(line) ? ", low: should be " + line.lowMark().orElseThrow() : "");
  }

  private static String did(Movement movement) {
    int count = Math.abs(movement.quantity());
    return switch (movement.kind()) {
      case RECEIVED -> count + " received,";
      case TAKEN -> count + " taken,";
      case RETURNED -> count + " put back,";
      case SCRAPPED -> count + " scrapped,";
      case UNDONE -> movement.quantity() + " to undo an earlier movement,";
      case COUNTED ->
          movement.quantity() == 0
              ? "counted as expected,"
              : "counted, " + signed(movement.quantity()) + " against the books,";
    };
  }

  /** Returns a change with its sign. */
  static String signed(int quantity) {
    return (quantity > 0 ? "+" : "") + quantity;
  }

  private static String undo(Movement movement) {
    return movement.quantity() == 0 ? "" : "\nTo undo: fettlebench stock undo " + movement.id();
  }
}
