package org.fettlebench.club.store.internal;

import java.sql.SQLException;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.fettlebench.club.ClubException;
import org.fettlebench.club.Movement;
import org.fettlebench.club.Receipt;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The stock over SQL. Each change locks the keys, then its line, then checks and writes. */
@Component(service = Stock.class)
public final class SqlStock implements Stock {
  private static final int LONGEST_NOTE = 500;

  /** Who did it and why, as they are kept. */
  private record Remark(String member, String note) {
    static Remark of(String member, String note) {
      return new Remark(Names.memberName(member), Names.oneLine("the note", note, LONGEST_NOTE));
    }
  }

  /** What is done to one locked line. */
  @FunctionalInterface
  private interface Change {
    int of(Transaction transaction, HeldLine line) throws SQLException;
  }

  /** What is done while nobody else changes the stock. */
  @FunctionalInterface
  private interface KeyedWork<T> {
    T in(Transaction transaction, LastKeys keys) throws SQLException;
  }

  private final ClubDatabase database;
  private final InstantSource clock;
  private final AtomicLong revision = new AtomicLong();

  /** Keeps the stock in {@code database}. */
  @Activate
  public SqlStock(@Reference ClubDatabase database) {
    this(database, InstantSource.system());
  }

  SqlStock(ClubDatabase database, InstantSource clock) {
    this.database = database;
    this.clock = clock;
  }

  @Override
  public List<StockLine> lines() {
    return database.inTransaction(Lines::all);
  }

  @Override
  public Optional<StockLine> line(long id) {
    return database.inTransaction(transaction -> Lines.find(transaction, id));
  }

  @Override
  public List<Movement> movements(long lineId) {
    return database.inTransaction(transaction -> Ledger.ofLine(transaction, lineId));
  }

  @Override
  public List<Movement> movementsAfter(long movementId, int most) {
    return database.inTransaction(transaction -> Ledger.after(transaction, movementId, most));
  }

  @Override
  public List<Movement> receive(List<Receipt> receipts, String member, String note) {
    Remark remark = Remark.of(member, note);
    List<Receipt> all = List.copyOf(receipts);
    return changing(
        (transaction, keys) ->
            new Receiving(transaction, keys, now()).enter(all, remark.member(), remark.note()));
  }

  @Override
  public Movement take(long lineId, int quantity, String member, String note) {
    Refusals.aboveNothing("the quantity to take", quantity);
    return remove(lineId, quantity, Movement.Kind.TAKEN, Remark.of(member, note));
  }

  @Override
  public Movement scrap(long lineId, int quantity, String member, String note) {
    Refusals.aboveNothing("the quantity to scrap", quantity);
    return remove(lineId, quantity, Movement.Kind.SCRAPPED, Remark.of(member, note));
  }

  private Movement remove(long lineId, int quantity, Movement.Kind kind, Remark remark) {
    String verb = kind == Movement.Kind.TAKEN ? "take" : "scrap";
    return move(
        lineId,
        kind,
        remark,
        (transaction, line) -> {
          requirePresent(transaction, line, quantity, verb);
          return -quantity;
        });
  }

  private static void requirePresent(
      Transaction transaction, HeldLine line, int quantity, String verb) throws SQLException {
    if (!(quantity <= line.present())) {
      throw Refusals.tooFew(transaction, line, quantity, verb);
    }
  }

  @Override
  public Movement putBack(long lineId, int quantity, String member, String note) {
    Refusals.aboveNothing("the quantity to put back", quantity);
    return move(
        lineId, Movement.Kind.RETURNED, Remark.of(member, note), (transaction, line) -> quantity);
  }

  @Override
  public Movement count(long lineId, int counted, String member, String note) {
    if (!(counted >= 0)) {
      throw new ClubException("%d cannot be counted; give 0 or more".formatted(counted));
    }
    return move(
        lineId,
        Movement.Kind.COUNTED,
        Remark.of(member, note),
        (transaction, line) -> counted - line.present());
  }

  private Movement move(long lineId, Movement.Kind kind, Remark remark, Change change) {
    return changing(
        (transaction, keys) -> {
          HeldLine line = HeldLine.lock(transaction, lineId);
          int quantity = change.of(transaction, line);
          line.changeQuantity(transaction, quantity);
          Movement movement =
              new Movement(
                  keys.nextMovement(),
                  lineId,
                  kind,
                  quantity,
                  now(),
                  remark.member(),
                  remark.note());
          enter(transaction, keys, movement, Optional.empty());
          return movement;
        });
  }

  private static void enter(
      Transaction transaction, LastKeys keys, Movement movement, Optional<Long> undoes)
      throws SQLException {
    Optional<Long> member = new Names(transaction, keys).member(movement.member());
    Ledger.add(transaction, movement, member, undoes);
    Ledger.enterAll(transaction);
  }

  @Override
  public Movement undo(long movementId, String member) {
    String name = Names.memberName(member);
    return changing((transaction, keys) -> undo(transaction, keys, movementId, name));
  }

  @Override
  public List<Movement> undoAll(List<Long> movementIds, String member) {
    String name = Names.memberName(member);
    List<Long> all = List.copyOf(movementIds);
    return changing(
        (transaction, keys) -> {
          List<Movement> undone = new ArrayList<>();
          for (long movementId : all) {
            undone.add(undo(transaction, keys, movementId, name));
          }
          return undone;
        });
  }

  private Movement undo(Transaction transaction, LastKeys keys, long movementId, String member)
      throws SQLException {
    Movement done =
        Ledger.find(transaction, movementId).orElseThrow(() -> Refusals.noMovement(movementId));
    if (Ledger.isUndone(transaction, movementId)) {
      throw Refusals.undoneAlready(movementId);
    }
    if (done.quantity() == 0) {
      throw Refusals.nothingToUndo(movementId);
    }
    HeldLine line = HeldLine.lock(transaction, done.lineId());
    if (!(line.present() - (long) done.quantity() >= 0)) {
      throw Refusals.tooFewToUndo(transaction, line, done.quantity());
    }
    line.changeQuantity(transaction, -done.quantity());
    String note = "undoes movement " + movementId;
    Movement movement =
        new Movement(
            keys.nextMovement(),
            line.id(),
            Movement.Kind.UNDONE,
            -done.quantity(),
            now(),
            member,
            note);
    enter(transaction, keys, movement, Optional.of(movementId));
    return movement;
  }

  @Override
  public void lend(long lineId, int quantity, String member, Optional<LocalDate> due) {
    Refusals.aboveNothing("the quantity to lend", quantity);
    String name = Names.memberName(member);
    changing(
        (transaction, keys) -> {
          long memberId =
              new Names(transaction, keys)
                  .member(name)
                  .orElseThrow(() -> new ClubException("nobody is named to lend to; name who"));
          HeldLine line = HeldLine.lock(transaction, lineId);
          requirePresent(transaction, line, quantity, "lend");
          line.changeLent(transaction, quantity);
          Loans.OpenLoan loan =
              new Loans.OpenLoan(
                  keys.nextLoan(), lineId, name, quantity, now().toEpochMilli(), due);
          Loans.begin(transaction, loan, memberId);
          return loan;
        });
  }

  @Override
  public void giveBack(long lineId, int quantity, String member) {
    Refusals.aboveNothing("the quantity to give back", quantity);
    String name = Names.memberName(member);
    changing(
        (transaction, keys) -> {
          HeldLine line = HeldLine.lock(transaction, lineId);
          List<Loans.OpenLoan> loans = Loans.of(transaction, lineId, name);
          int onLoan = loans.stream().mapToInt(Loans.OpenLoan::quantity).sum();
          if (!(quantity <= onLoan)) {
            throw Refusals.notOnLoan(line, name, onLoan, quantity);
          }
          endLoans(transaction, keys, loans, quantity);
          line.changeLent(transaction, -quantity);
          return line;
        });
  }

  private void endLoans(
      Transaction transaction, LastKeys keys, List<Loans.OpenLoan> loans, int quantity)
      throws SQLException {
    int left = quantity;
    for (Loans.OpenLoan loan : loans) {
      int back = Math.min(left, loan.quantity());
      if (back > 0) {
        Loans.end(transaction, keys, loan, back, now());
        left -= back;
      }
    }
  }

  @Override
  public List<String> members() {
    return database.inTransaction(Names::members);
  }

  @Override
  public List<String> places() {
    return database.inTransaction(Names::places);
  }

  @Override
  public long revision() {
    return revision.get();
  }

  private <T> T changing(KeyedWork<T> work) {
    T result =
        database.inTransaction(
            transaction -> {
              LastKeys keys = LastKeys.lock(transaction);
              T done = work.in(transaction, keys);
              keys.save();
              return done;
            });
    revision.incrementAndGet();
    return result;
  }

  private Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MILLIS);
  }
}
