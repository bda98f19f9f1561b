package org.fettlebench.club.contract;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import org.fettlebench.club.Goods;
import org.fettlebench.club.Receipt;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.club.store.internal.ClubDatabase;
import org.fettlebench.club.store.internal.SqlStock;
import org.fettlebench.measure.Length;
import org.fettlebench.store.StoreEngine;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A fresh store for each test, on whatever engine the subclass names; nothing may be left open. */
public abstract class StoreContract {
  /** A cabinet drawer, as most of the tests use it. */
  protected static final String DRAWER = "Cabinet / Drawer 3";

  @TempDir Path data;
  private StoreEngine plain;
  private LeakCheckedEngine engine;
  private ClubDatabase database;

  /** Opens the engine on a data directory. */
  protected abstract StoreEngine openEngine(Path directory);

  /** Closes an engine that {@link #openEngine} opened. */
  protected abstract void closeEngine(StoreEngine opened);

  @BeforeEach
  final void open() {
    plain = openEngine(data);
    engine = new LeakCheckedEngine(plain);
    database = new ClubDatabase(engine);
  }

  @AfterEach
  final void close() {
    try {
      engine.requireAllClosed();
    } finally {
      database.close();
      closeEngine(plain);
    }
  }

  /** Closes the store and opens it again. */
  protected final void reopen() {
    close();
    open();
  }

  protected final ClubDatabase database() {
    return database;
  }

  protected final LeakCheckedEngine engine() {
    return engine;
  }

  protected final Stock stock() {
    return new SqlStock(database);
  }

  /** Returns the one number that a query gives. */
  protected final long number(String sql) throws SQLException {
    try (Connection connection = engine.dataSource().getConnection();
        Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery(sql)) {
      row.next();
      return row.getLong(1);
    }
  }

  /** Runs a statement outside the services. */
  protected final void execute(String sql) throws SQLException {
    try (Connection connection = engine.dataSource().getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  protected static Goods screw(String name) {
    return new Goods(
        Goods.Kind.FASTENER,
        name,
        "2 BA",
        "hexagon",
        Optional.empty(),
        Optional.of(Length.ofInchFraction(1, 2)),
        "steel");
  }

  protected static Goods drill(long numerator, long denominator) {
    return new Goods(
        Goods.Kind.DRILL,
        numerator + "/" + denominator + " in",
        "",
        "",
        Optional.of(Length.ofInchFraction(numerator, denominator)),
        Optional.empty(),
        "");
  }

  protected static Receipt receipt(Goods goods, String place, int quantity) {
    return new Receipt(goods, place, StockLine.Condition.GOOD, quantity, Optional.empty());
  }

  /** Puts so many screws into the drawer and returns the line's key. */
  protected static long screws(Stock stock, int quantity) {
    return stock
        .receive(
            java.util.List.of(receipt(screw("2 BA hexagon screw x 1/2 in"), DRAWER, quantity)),
            "",
            "")
        .get(0)
        .lineId();
  }
}
