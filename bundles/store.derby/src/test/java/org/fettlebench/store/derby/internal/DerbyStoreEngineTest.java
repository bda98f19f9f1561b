package org.fettlebench.store.derby.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.fettlebench.store.StoreException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DerbyStoreEngineTest {
  @TempDir Path data;

  @Test
  void opensNothingUntilItIsUsed() throws IOException {
    try (DerbyStoreEngine engine = new DerbyStoreEngine(data)) {
      assertTrue(engine.description().contains(data.resolve("store").toString()));
      assertEquals("derby", engine.dialect().name());
      try (var entries = Files.list(data)) {
        assertEquals(0, entries.count());
      }
    }
  }

  @Test
  void keepsWhatWasCommittedFromOneOpeningToTheNext() throws SQLException {
    keepOneRow();
    try (DerbyStoreEngine engine = new DerbyStoreEngine(data)) {
      assertEquals(1, rows(engine.dataSource()));
    }
    assertTrue(Files.isDirectory(data.resolve("log")));
    assertFalse(Files.exists(data.resolve("store.unfinished")));
  }

  @Test
  void isFreeAgainOnceItIsClosed() throws SQLException {
    DerbyStoreEngine engine = new DerbyStoreEngine(data);
    DataSource source = engine.dataSource();
    engine.close();
    assertThrows(StoreException.class, engine::dataSource);
    assertThrows(SQLException.class, source::getConnection);
    assertFalse(Files.exists(data.resolve("store/db.lck")));
    engine.close();
  }

  @Test
  void anEmptyDirectoryNamedStoreIsNotTakenForOne() throws IOException {
    Files.createDirectory(data.resolve("store"));
    assertRefused(
        "service.properties is missing", data.resolve("store").toString(), "move it away");
  }

  @Test
  void aDamagedStoreIsRefusedWithTheNewestBackupNamed() throws Exception {
    keepOneRow();
    Path copy;
    try (DerbyStoreEngine engine = new DerbyStoreEngine(data)) {
      copy = engine.backup("before-harm");
    }
    try (var segments = Files.list(data.resolve("store/seg0"))) {
      for (Path segment : segments.toList()) {
        Files.writeString(segment, "not a segment", StandardCharsets.UTF_8);
      }
    }
    assertRefused("cannot be opened", data.resolve("store").toString(), copy.resolve("store"));
  }

  @Test
  void aStoreWithoutItsLogIsRefusedRatherThanOpenedWithoutIt() throws Exception {
    keepOneRow();
    Files.delete(data.resolve("store/log/log.ctrl"));
    assertRefused(Path.of("log", "log.ctrl") + " is missing");
  }

  @Test
  void aLostStoreIsNotReplacedByAnEmptyOneWhileThereAreBackups() throws SQLException {
    keepOneRow();
    try (DerbyStoreEngine engine = new DerbyStoreEngine(data)) {
      engine.backup("evening");
    }
    StoreFiles.delete(data.resolve("store"));
    assertRefused("is missing although there are backups", "copy the newest backup");
  }

  @Test
  void aStoreWhoseMakingWasBrokenOffIsMadeAgain() throws Exception {
    Files.createDirectories(data.resolve("store/seg0"));
    Files.createFile(data.resolve("store.unfinished"));
    keepOneRow();
    assertFalse(Files.exists(data.resolve("store.unfinished")));
  }

  @Test
  void aStoreThatAnotherIsMakingIsLeftToIt() throws Exception {
    Files.createDirectories(data.resolve("store/seg0"));
    try (MakingMark other = MakingMark.set(data.resolve("store.unfinished"))) {
      assertRefused("is being made by another program");
      assertTrue(Files.exists(data.resolve("store/seg0")));
      other.remove();
    }
  }

  @Test
  void aDataDirectoryThatIsAFileIsRefused() throws IOException {
    Files.writeString(data.resolve("file"), "");
    try (DerbyStoreEngine engine = new DerbyStoreEngine(data.resolve("file"))) {
      String said = assertThrows(StoreException.class, engine::dataSource).getMessage();
      assertTrue(said.contains("cannot be written; check who may write there"), said);
    }
  }

  @Test
  void aBackupIsAWholeStore(@TempDir Path elsewhere) throws Exception {
    keepOneRow();
    try (DerbyStoreEngine engine = new DerbyStoreEngine(data)) {
      Path copy = engine.backup("evening");
      assertTrue(copy.getFileName().toString().matches("\\d{8}-\\d{6}-evening"), copy.toString());
      assertEquals(data.resolve("backups"), copy.getParent());
      // The copy is opened while the store it came from is still open.
      Files.move(copy.resolve("store"), elsewhere.resolve("store"));
      try (DerbyStoreEngine restored = new DerbyStoreEngine(elsewhere)) {
        assertEquals(1, rows(restored.dataSource()));
      }
    }
  }

  @Test
  void twoBackupsInOneSecondAreTwo() {
    try (DerbyStoreEngine engine = new DerbyStoreEngine(data)) {
      assertFalse(engine.backup("same").equals(engine.backup("same")));
    }
  }

  @Test
  void aBackupIsNotWrittenOutsideItsFolder() {
    try (DerbyStoreEngine engine = new DerbyStoreEngine(data)) {
      assertThrows(IllegalArgumentException.class, () -> engine.backup("../escaped"));
      assertThrows(IllegalArgumentException.class, () -> engine.backup(""));
    }
  }

  @Test
  void aSemicolonInTheDirectoryIsRefusedRatherThanReadAsAnOption() {
    Path bad = data.resolve("a;create=true");
    String said =
        assertThrows(StoreException.class, () -> new DerbyStoreEngine(bad).close()).getMessage();
    assertTrue(said.contains("semicolon"), said);
  }

  private void keepOneRow() throws SQLException {
    try (DerbyStoreEngine engine = new DerbyStoreEngine(data);
        Connection connection = engine.dataSource().getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute("CREATE TABLE kept (amount BIGINT NOT NULL)");
      statement.execute("INSERT INTO kept VALUES (396875)");
    }
  }

  private static int rows(DataSource source) throws SQLException {
    try (Connection connection = source.getConnection();
        Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery("SELECT count(*) FROM kept")) {
      found.next();
      return found.getInt(1);
    }
  }

  private void assertRefused(Object... words) {
    try (DerbyStoreEngine engine = new DerbyStoreEngine(data)) {
      String said = assertThrows(StoreException.class, engine::dataSource).getMessage();
      for (Object word : words) {
        assertTrue(said.contains(word.toString()), said);
      }
    }
  }
}
