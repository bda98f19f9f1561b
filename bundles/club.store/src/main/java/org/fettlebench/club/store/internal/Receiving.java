package org.fettlebench.club.store.internal;

import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.club.Goods;
import org.fettlebench.club.Movement;
import org.fettlebench.club.Receipt;
import org.fettlebench.club.StockLine;

/** Enters receipts in one transaction: lines and movements go to the engine in batches. */
final class Receiving {
  private static final String INSERT_LINE =
      "INSERT INTO stock_line (id, kind, name, thread, style, diameter_nm, length_nm, material,"
          + " place_id, fitness, quantity, lent, low_mark)"
          + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 0, ?)";
  private static final String UPDATE_LINE =
      "UPDATE stock_line SET quantity = ?, low_mark = ? WHERE id = ?";
  private static final String FIND_LINE =
      "SELECT id, quantity, low_mark FROM stock_line WHERE name = ? AND kind = ? AND thread = ?"
          + " AND style = ? AND diameter_nm = ? AND length_nm = ? AND material = ?"
          + " AND place_id = ? AND fitness = ? ";

  /** What makes a line one. */
  private record Identity(Goods goods, long placeId, StockLine.Condition condition) {}

  /** A line as it will be when all is received. */
  private static final class Growing {
    private final long id;
    private final boolean isNew;
    private int quantity;
    private Integer lowMark;

    Growing(long id, boolean isNew, int quantity, Integer lowMark) {
      this.id = id;
      this.isNew = isNew;
      this.quantity = quantity;
      this.lowMark = lowMark;
    }
  }

  private final Transaction transaction;
  private final LastKeys keys;
  private final Names names;
  private final Instant now;
  private final Map<Identity, Growing> lines = new LinkedHashMap<>();

  Receiving(Transaction transaction, LastKeys keys, Instant now) {
    this.transaction = transaction;
    this.keys = keys;
    this.now = now;
    names = new Names(transaction, keys);
  }

  List<Movement> enter(List<Receipt> receipts, String member, String note) throws SQLException {
    Optional<Long> memberId = names.member(member);
    List<Movement> movements = new ArrayList<>(receipts.size());
    for (Receipt receipt : receipts) {
      Movement movement = movement(receipt, member, note);
      Ledger.add(transaction, movement, memberId, Optional.empty());
      movements.add(movement);
    }
    storeLines();
    Ledger.enterAll(transaction);
    return List.copyOf(movements);
  }

  private Movement movement(Receipt receipt, String member, String note) throws SQLException {
    Growing line = line(receipt);
    line.quantity = HeldLine.sum(receipt.goods().name(), line.quantity, receipt.quantity());
    receipt.lowMark().ifPresent(mark -> line.lowMark = mark);
    return new Movement(
        keys.nextMovement(),
        line.id,
        Movement.Kind.RECEIVED,
        receipt.quantity(),
        now,
        member,
        note);
  }

  private Growing line(Receipt receipt) throws SQLException {
    Identity identity =
        new Identity(receipt.goods(), names.place(receipt.place()), receipt.condition());
    Growing line = lines.get(identity);
    if (line == null) {
      line = stored(identity).orElseGet(() -> new Growing(keys.nextLine(), true, 0, null));
      lines.put(identity, line);
    }
    return line;
  }

  private Optional<Growing> stored(Identity identity) throws SQLException {
    Goods goods = identity.goods();
    return transaction.first(
        FIND_LINE + transaction.dialect().forUpdate(),
        row -> new Growing(row.getLong(1), false, row.getInt(2), row.getObject(3, Integer.class)),
        goods.name(),
        goods.kind().name(),
        goods.thread(),
        goods.style(),
        Lines.nanometres(goods.diameter()),
        Lines.nanometres(goods.length()),
        goods.material(),
        identity.placeId(),
        identity.condition().name());
  }

  private void storeLines() throws SQLException {
    for (Map.Entry<Identity, Growing> entry : lines.entrySet()) {
      if (entry.getValue().isNew) {
        addNew(entry.getKey(), entry.getValue());
      } else {
        Growing line = entry.getValue();
        transaction.addToBatch(UPDATE_LINE, line.quantity, line.lowMark, line.id);
      }
    }
    transaction.runBatch(INSERT_LINE);
    transaction.runBatch(UPDATE_LINE);
  }

  private void addNew(Identity identity, Growing line) throws SQLException {
    Goods goods = identity.goods();
    transaction.addToBatch(
        INSERT_LINE,
        line.id,
        goods.kind().name(),
        goods.name(),
        goods.thread(),
        goods.style(),
        Lines.nanometres(goods.diameter()),
        Lines.nanometres(goods.length()),
        goods.material(),
        identity.placeId(),
        identity.condition().name(),
        line.quantity,
        line.lowMark);
  }
}
