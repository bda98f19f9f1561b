package org.fettlebench.club.store.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.fettlebench.club.Movement;
import org.fettlebench.club.StockLine;
import org.fettlebench.store.StoreException;
import org.fettlebench.store.derby.internal.DerbyStoreEngine;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SchemaRunnerTest {
  @TempDir Path data;
  private DerbyStoreEngine engine;

  @BeforeEach
  void open() {
    engine = new DerbyStoreEngine(data);
  }

  @AfterEach
  void close() {
    engine.close();
  }

  @Test
  void theShippedStepsAreNumberedWithoutGapsAndAllListed() throws Exception {
    List<Migration> steps = Migrations.ofThisVersion();
    assertEquals(
        IntStream.rangeClosed(1, steps.size()).boxed().toList(),
        steps.stream().map(Migration::version).toList());
    Path folder = Path.of(SchemaRunner.class.getResource("migrations/migrations.list").toURI());
    try (var files = Files.list(folder.getParent())) {
      assertEquals(steps.size(), files.filter(file -> file.toString().endsWith(".sql")).count());
    }
  }

  @Test
  void aStepIsNeverAlteredOnceItIsReleased() throws IOException {
    for (Migration step : Migrations.ofThisVersion()) {
      String file = "V%03d__%s.sql".formatted(step.version(), step.name());
      assertEquals(
          Migration.ofFile(file, released(file)).checksum(),
          step.checksum(),
          "add a new step instead of altering " + file);
    }
  }

  @Test
  void anEmptyStoreIsBroughtUpToDateOnceAndWithoutABackup() throws SQLException {
    bringUpToDate(Migrations.ofThisVersion());
    bringUpToDate(Migrations.ofThisVersion());
    assertEquals(Migrations.ofThisVersion().size(), count("schema_version"));
    assertEquals(0, count("stock_line"));
    assertFalse(Files.exists(data.resolve("backups")));
  }

  @Test
  void aStoreOfVersionOneKeepsAllItHeldAndIsBackedUpFirst(@TempDir Path restored) throws Exception {
    bringUpToDate(
        List.of(Migration.ofFile("V001__stock_ledger.sql", released("V001__stock_ledger.sql"))));
    Migration rows = new Migration(1, "rows", released("V001-rows.sql"));
    for (String row : rows.statements(engine.dialect())) {
      execute(row);
    }
    close();
    open();
    try (ClubDatabase database = new ClubDatabase(engine)) {
      SqlStock stock = new SqlStock(database);
      StockLine worn = stock.line(2).orElseThrow();
      assertEquals(12_700_000, worn.goods().length().orElseThrow().nanometres());
      assertEquals(StockLine.Condition.WORN, worn.condition());
      assertEquals(6, stock.movements(2).stream().mapToInt(Movement::quantity).sum());
      StockLine drill = stock.line(1).orElseThrow();
      assertEquals("Ann Turner until 3 December 2030", drill.holder());
      assertEquals(3_968_750, drill.goods().diameter().orElseThrow().nanometres());
      assertEquals(6, stock.take(2, 1, "Ann Turner", "").id());
      new SqlKitShelf(database).keep("Feed pump", "text");
    }
    close();
    requireBackupOfVersionOne(restored);
    open();
  }

  private void requireBackupOfVersionOne(Path restored) throws Exception {
    List<Path> backups;
    try (var copies = Files.list(data.resolve("backups"))) {
      backups = copies.toList();
    }
    assertEquals(1, backups.size());
    assertTrue(backups.get(0).toString().endsWith("-before-migration"));
    Files.move(backups.get(0).resolve("store"), restored.resolve("store"));
    engine = new DerbyStoreEngine(restored);
    assertEquals(1, count("schema_version"));
    assertEquals(5, count("movement"));
    engine.close();
  }

  @Test
  void aStoreThatIsNewerThanTheSuiteIsRefusedAndLeftAlone() throws SQLException {
    bringUpToDate(Migrations.ofThisVersion());
    int newest = Migrations.ofThisVersion().size();
    List<Migration> older = Migrations.ofThisVersion().subList(0, newest - 1);
    String said = refusal(older);
    assertTrue(said.contains("its schema is version " + newest), said);
    assertTrue(said.contains("knows versions up to " + (newest - 1)), said);
    assertTrue(said.contains("start the newer suite, or put back a backup"), said);
    assertTrue(said.contains(data.resolve("store").toString()), said);
    assertEquals(newest, count("schema_version"));
  }

  @Test
  void aStoreMadeByOtherStepsIsRefused() {
    bringUpToDate(Migrations.ofThisVersion());
    List<Migration> other = new ArrayList<>(Migrations.ofThisVersion());
    other.set(0, new Migration(1, "stock_ledger", "CREATE TABLE other (id INTEGER);"));
    assertTrue(refusal(other).contains("another edition of schema version 1 (stock_ledger)"));
  }

  @Test
  void aStepThatFailsHalfWayLeavesNothingOfItself() throws SQLException {
    bringUpToDate(Migrations.ofThisVersion());
    List<Migration> longer = new ArrayList<>(Migrations.ofThisVersion());
    int next = longer.size() + 1;
    longer.add(
        new Migration(next, "half", "CREATE TABLE half (id INTEGER);\nCREATE TABEL oops;\n"));
    String said = refusal(longer);
    assertTrue(said.contains("was not brought to schema version " + next + " (half)"), said);
    assertEquals(next - 1, count("schema_version"));
    assertThrows(SQLException.class, () -> count("half"));
    bringUpToDate(Migrations.ofThisVersion());
  }

  @Test
  void lineEndsDoNotChangeAChecksum() {
    Migration unix = new Migration(1, "a", "CREATE TABLE a (\n id INTEGER);\n");
    Migration other = new Migration(1, "a", "CREATE TABLE a (\r\n id INTEGER);\r\n");
    assertEquals(unix.checksum(), other.checksum());
    assertEquals(1, other.statements(engine.dialect()).size());
  }

  @Test
  void aFileThatIsNotNamedAsAStepIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Migration.ofFile("stock.sql", ""));
  }

  private void bringUpToDate(List<Migration> steps) {
    new SchemaRunner(engine, steps).bringUpToDate();
  }

  private String refusal(List<Migration> steps) {
    return assertThrows(StoreException.class, () -> bringUpToDate(steps)).getMessage();
  }

  private void execute(String sql) throws SQLException {
    try (Connection connection = engine.dataSource().getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  private int count(String table) throws SQLException {
    try (Connection connection = engine.dataSource().getConnection();
        Statement statement = connection.createStatement();
        var row = statement.executeQuery("SELECT count(*) FROM " + table)) {
      row.next();
      return row.getInt(1);
    }
  }

  private static String released(String file) throws IOException {
    try (var in = SchemaRunnerTest.class.getResourceAsStream("released/" + file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
