package org.fettlebench.command.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.fettlebench.club.Goods;
import org.fettlebench.club.KitShelf;
import org.fettlebench.club.MeasuredErrors;
import org.fettlebench.club.Receipt;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine.Condition;
import org.fettlebench.club.store.internal.ClubDatabase;
import org.fettlebench.club.store.internal.SqlKitShelf;
import org.fettlebench.club.store.internal.SqlMeasuredErrors;
import org.fettlebench.club.store.internal.SqlStock;
import org.fettlebench.measure.Length;
import org.fettlebench.store.derby.internal.DerbyStoreEngine;

/** A club's books in a new store of the real kind. */
public final class FreshClub implements AutoCloseable {
  private final DerbyStoreEngine engine;
  private final Stock stock;
  private final KitShelf shelf;
  private final MeasuredErrors errors;

  /** Opens new books in a folder. */
  public FreshClub(Path folder) {
    engine = new DerbyStoreEngine(folder);
    ClubDatabase database = new ClubDatabase(engine);
    stock = new SqlStock(database);
    shelf = new SqlKitShelf(database);
    errors = new SqlMeasuredErrors(database);
  }

  /** Returns the store. */
  public DerbyStoreEngine engine() {
    return engine;
  }

  /** Returns the stock. */
  public Stock stock() {
    return stock;
  }

  /** Returns the kits. */
  public KitShelf shelf() {
    return shelf;
  }

  /** Returns the measured errors. */
  public MeasuredErrors errors() {
    return errors;
  }

  /** A screw of the usual kind. */
  public static Goods screw(String thread, String length) {
    return new Goods(
        Goods.Kind.FASTENER,
        thread + " hexagon screw x " + length + " in",
        thread,
        "hexagon",
        Optional.empty(),
        Optional.of(Length.ofInchFraction(1, 2)),
        "steel");
  }

  /** A drill. */
  public static Goods drill(String name, double diameterMm) {
    return new Goods(
        Goods.Kind.DRILL,
        name,
        "",
        "",
        Optional.of(Length.ofMillimetres(diameterMm)),
        Optional.empty(),
        "");
  }

  /** A tap. */
  public static Goods tap(String thread, String lead) {
    return new Goods(
        Goods.Kind.TAP,
        thread + " " + lead + " tap",
        thread,
        lead,
        Optional.empty(),
        Optional.empty(),
        "");
  }

  /** Puts things in, and returns the number of their line. */
  public long receive(Goods goods, String place, int quantity) {
    return receive(goods, place, quantity, Condition.GOOD, Optional.empty());
  }

  /** Puts things in, and returns the number of their line. */
  public long receive(
      Goods goods, String place, int quantity, Condition condition, Optional<Integer> low) {
    Receipt receipt = new Receipt(goods, place, condition, quantity, low);
    return stock.receive(List.of(receipt), "", "").get(0).lineId();
  }

  @Override
  public void close() {
    engine.close();
  }
}
