package org.fettlebench.desktop.stock.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.fettlebench.club.ClubException;
import org.fettlebench.club.Loan;
import org.fettlebench.club.Movement;
import org.fettlebench.club.Receipt;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.desktop.stock.internal.Outcome.Done;
import org.fettlebench.desktop.stock.internal.Outcome.Field;
import org.fettlebench.desktop.stock.internal.Outcome.Refused;
import org.fettlebench.desktop.widgets.Figures;

/**
 * Does what is asked of the stock, says what happened, and knows how to undo it. For any thread.
 */
final class StockDeeds {
  private final Stock stock;
  private final Supplier<LocalDate> today;

  StockDeeds(Stock stock, Supplier<LocalDate> today) {
    this.stock = stock;
    this.today = today;
  }

  /** Does what is asked, or says which field to mend; then nothing has changed. */
  Outcome perform(Order order) {
    int quantity;
    Optional<LocalDate> due;
    try {
      quantity = Whole.read("How many", order.quantity(), order.deed() == Deed.COUNT ? 0 : 1);
    } catch (IllegalArgumentException refused) {
      return new Refused(Field.QUANTITY, refused.getMessage());
    }
    try {
      due = DueDate.read(order.due(), today.get());
    } catch (IllegalArgumentException refused) {
      return new Refused(Field.DUE, refused.getMessage());
    }
    if (order.deed().concernsBorrower() && order.member().isBlank()) {
      return new Refused(Field.MEMBER, "Who has it is missing; type the member's name");
    }
    try {
      return done(order, quantity, due);
    } catch (ClubException refused) {
      return new Refused(Field.QUANTITY, refused.getMessage());
    }
  }

  private Done done(Order order, int quantity, Optional<LocalDate> due) {
    long id = order.line().id();
    String member = order.member();
    String note = order.note();
    return switch (order.deed()) {
      case TAKE -> moved(order, "Took " + quantity, stock.take(id, quantity, member, note));
      case PUT_BACK ->
          moved(order, "Put back " + quantity, stock.putBack(id, quantity, member, note));
      case SCRAP -> moved(order, "Scrapped " + quantity, stock.scrap(id, quantity, member, note));
      case COUNT -> moved(order, "Counted " + quantity, stock.count(id, quantity, member, note));
      case LEND -> lent(order.line(), quantity, member, due);
      case GIVE_BACK -> givenBack(order.line(), quantity, member);
    };
  }

  private Done moved(Order order, String begin, Movement movement) {
    String difference =
        order.deed() != Deed.COUNT
            ? ""
            : movement.quantity() == 0
                ? ", as expected"
                : ", "
                    + Math.abs(movement.quantity())
                    + (movement.quantity() < 0 ? " fewer" : " more")
                    + " than in the book";
    String sentence =
        begin + " of " + order.line().goods().name() + difference + ". " + now(order.line().id());
    Optional<Callable<Done>> undo =
        movement.quantity() == 0
            ? Optional.empty()
            : Optional.of(() -> undone(order.line(), movement, order.member()));
    return new Done(sentence, undo, List.of(order.line().id()));
  }

  private Done undone(StockLine line, Movement movement, String member) {
    stock.undo(movement.id(), member);
    return new Done(
        "Undone: " + line.goods().name() + ". " + now(line.id()),
        Optional.empty(),
        List.of(line.id()));
  }

  /** Returns how many are there now, and whether that is low. */
  private String now(long id) {
    return stock
        .line(id)
        .map(
            line ->
                line.present()
                    + (line.present() == 1 ? " is in " : " are in ")
                    + line.place()
                    + " now"
                    + (line.lowMark().filter(mark -> line.present() < mark).isPresent()
                        ? ", which is low."
                        : "."))
        .orElse("");
  }

  private Done lent(StockLine line, int quantity, String member, Optional<LocalDate> due) {
    stock.lend(line.id(), quantity, member, due);
    String until = due.map(day -> " until " + Days.show(day)).orElse("");
    return new Done(
        "Lent " + quantity + " of " + line.goods().name() + " to " + member.strip() + until + ".",
        Optional.of(() -> undoneBy(line, () -> stock.giveBack(line.id(), quantity, member))),
        List.of(line.id()));
  }

  private Done givenBack(StockLine line, int quantity, String member) {
    Optional<LocalDate> due =
        line.loans().stream()
            .filter(loan -> loan.member().equals(member.strip()))
            .findFirst()
            .flatMap(Loan::due);
    stock.giveBack(line.id(), quantity, member);
    return new Done(
        "Back from "
            + member.strip()
            + ": "
            + quantity
            + " of "
            + line.goods().name()
            + ". "
            + now(line.id()),
        Optional.of(() -> undoneBy(line, () -> stock.lend(line.id(), quantity, member, due))),
        List.of(line.id()));
  }

  private static Done undoneBy(StockLine line, Runnable counter) {
    counter.run();
    return new Done("Undone: " + line.goods().name() + ".", Optional.empty(), List.of(line.id()));
  }

  /** Receives all or none. */
  Outcome receive(List<Receipt> receipts, String member, String note) {
    try {
      List<Movement> movements = stock.receive(receipts, member, note);
      return new Done(
          received(receipts),
          Optional.of(() -> undoneAll(movements, member)),
          movements.size() == 1 ? List.of(movements.get(0).lineId()) : List.of());
    } catch (ClubException refused) {
      return new Refused(Field.ALL, refused.getMessage());
    }
  }

  private static String received(List<Receipt> receipts) {
    if (receipts.size() == 1) {
      Receipt one = receipts.get(0);
      return "Received "
          + one.quantity()
          + " of "
          + one.goods().name()
          + " into "
          + one.place()
          + ".";
    }
    long things = receipts.stream().mapToLong(Receipt::quantity).sum();
    return "Received "
        + Figures.count(things, "thing", "things")
        + " on "
        + Figures.count(receipts.size(), "line", "lines")
        + ".";
  }

  private Done undoneAll(List<Movement> movements, String member) {
    List<Long> backwards = new ArrayList<>(movements.stream().map(Movement::id).toList());
    Collections.reverse(backwards);
    stock.undoAll(backwards, member);
    return new Done(
        "Undone: what was received on " + Figures.count(movements.size(), "line", "lines") + ".",
        Optional.empty(),
        List.of());
  }
}
