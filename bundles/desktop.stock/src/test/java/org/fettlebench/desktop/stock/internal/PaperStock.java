package org.fettlebench.desktop.stock.internal;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.fettlebench.club.ClubException;
import org.fettlebench.club.Loan;
import org.fettlebench.club.Movement;
import org.fettlebench.club.Receipt;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;

/** A ledger in memory, with the rules of the real one that the page meets. */
final class PaperStock implements Stock {
  private final Map<Long, StockLine> lines = new LinkedHashMap<>();
  private final Map<Long, List<Loan>> loans = new LinkedHashMap<>();
  private final List<Movement> movements = new ArrayList<>();
  private long revision;
  int readings;

  @Override
  public List<StockLine> lines() {
    readings++;
    return List.copyOf(lines.values());
  }

  @Override
  public Optional<StockLine> line(long id) {
    return Optional.ofNullable(lines.get(id));
  }

  @Override
  public List<Movement> movements(long lineId) {
    List<Movement> own =
        new ArrayList<>(movements.stream().filter(m -> m.lineId() == lineId).toList());
    Collections.reverse(own);
    return own;
  }

  @Override
  public List<Movement> movementsAfter(long movementId, int most) {
    return movements.stream().filter(m -> m.id() > movementId).limit(most).toList();
  }

  @Override
  public List<Movement> receive(List<Receipt> receipts, String member, String note) {
    revision++;
    return receipts.stream().map(r -> receive(r, member, note)).toList();
  }

  /** Puts lines in that are known to be different, without looking for equal ones. */
  void receiveMany(List<Receipt> receipts) {
    revision++;
    for (Receipt receipt : receipts) {
      long id = lines.size() + 1;
      lines.put(
          id,
          new StockLine(
              id,
              receipt.goods(),
              receipt.place(),
              receipt.condition(),
              receipt.quantity(),
              List.of(),
              receipt.lowMark()));
    }
  }

  private Movement receive(Receipt receipt, String member, String note) {
    StockLine line =
        lines.values().stream()
            .filter(l -> l.goods().equals(receipt.goods()) && l.place().equals(receipt.place()))
            .filter(l -> l.condition() == receipt.condition())
            .findFirst()
            .orElseGet(
                () ->
                    new StockLine(
                        lines.size() + 1,
                        receipt.goods(),
                        receipt.place(),
                        receipt.condition(),
                        0,
                        List.of(),
                        Optional.empty()));
    Optional<Integer> mark = receipt.lowMark().or(line::lowMark);
    lines.put(line.id(), changed(line, line.quantity(), line.loans(), mark));
    return move(line.id(), Movement.Kind.RECEIVED, receipt.quantity(), member, note);
  }

  private static StockLine changed(
      StockLine line, int quantity, List<Loan> loans, Optional<Integer> mark) {
    return new StockLine(
        line.id(), line.goods(), line.place(), line.condition(), quantity, loans, mark);
  }

  private Movement move(long id, Movement.Kind kind, int change, String member, String note) {
    StockLine line = lines.get(id);
    if (line.present() + change < 0) {
      throw new ClubException(
          "only %d of %s are in %s; take fewer"
              .formatted(line.present(), line.goods().name(), line.place()));
    }
    lines.put(id, changed(line, line.quantity() + change, line.loans(), line.lowMark()));
    Movement movement =
        new Movement(
            movements.size() + 1,
            id,
            kind,
            change,
            Instant.parse("2026-11-24T19:30:00Z").plusSeconds(60L * movements.size()),
            member,
            note);
    movements.add(movement);
    return movement;
  }

  @Override
  public Movement take(long lineId, int quantity, String member, String note) {
    revision++;
    return move(lineId, Movement.Kind.TAKEN, -quantity, member, note);
  }

  @Override
  public Movement putBack(long lineId, int quantity, String member, String note) {
    revision++;
    return move(lineId, Movement.Kind.RETURNED, quantity, member, note);
  }

  @Override
  public Movement scrap(long lineId, int quantity, String member, String note) {
    revision++;
    return move(lineId, Movement.Kind.SCRAPPED, -quantity, member, note);
  }

  @Override
  public Movement count(long lineId, int counted, String member, String note) {
    revision++;
    int change = counted - lines.get(lineId).present();
    return move(lineId, Movement.Kind.COUNTED, change, member, note);
  }

  @Override
  public Movement undo(long movementId, String member) {
    revision++;
    Movement wrong = movements.get((int) movementId - 1);
    return move(wrong.lineId(), Movement.Kind.UNDONE, -wrong.quantity(), member, "");
  }

  @Override
  public List<Movement> undoAll(List<Long> movementIds, String member) {
    return movementIds.stream().map(id -> undo(id, member)).toList();
  }

  @Override
  public void lend(long lineId, int quantity, String member, Optional<LocalDate> due) {
    revision++;
    loans.computeIfAbsent(lineId, id -> new ArrayList<>()).add(new Loan(member, quantity, due));
    reckonLoans(lineId);
  }

  @Override
  public void giveBack(long lineId, int quantity, String member) {
    List<Loan> all = loans.getOrDefault(lineId, new ArrayList<>());
    Loan loan =
        all.stream()
            .filter(l -> l.member().equals(member) && l.quantity() >= quantity)
            .findFirst()
            .orElseThrow(() -> new ClubException(member + " has fewer on loan; give back fewer"));
    revision++;
    all.remove(loan);
    if (loan.quantity() > quantity) {
      all.add(new Loan(member, loan.quantity() - quantity, loan.due()));
    }
    reckonLoans(lineId);
  }

  private void reckonLoans(long lineId) {
    StockLine line = lines.get(lineId);
    List<Loan> all = loans.get(lineId);
    lines.put(lineId, changed(line, line.quantity(), all, line.lowMark()));
  }

  @Override
  public List<String> members() {
    TreeSet<String> names = new TreeSet<>();
    movements.stream().map(Movement::member).filter(m -> !m.isEmpty()).forEach(names::add);
    loans.values().forEach(all -> all.forEach(loan -> names.add(loan.member())));
    return List.copyOf(names);
  }

  @Override
  public List<String> places() {
    return lines.values().stream().map(StockLine::place).distinct().sorted().toList();
  }

  @Override
  public long revision() {
    return revision;
  }
}
