package org.fettlebench.store.derby.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.fettlebench.store.Dialect;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every clause is tried on the engine itself. */
class DerbyDialectTest {
  @TempDir Path data;

  @Test
  void itsClausesAreUnderstoodByTheEngine() throws SQLException {
    try (DerbyStoreEngine engine = new DerbyStoreEngine(data);
        Connection connection = engine.dataSource().getConnection();
        Statement statement = connection.createStatement()) {
      Dialect dialect = engine.dialect();
      statement.execute(
          "CREATE TABLE page (id %s PRIMARY KEY, words %s NOT NULL)"
              .formatted(dialect.identityColumn(), dialect.longTextType()));
      statement.execute("INSERT INTO page (words) VALUES ('one'), ('two')");
      String sql = "SELECT id FROM page ORDER BY id DESC " + dialect.firstRows(1);
      try (ResultSet found = statement.executeQuery(sql)) {
        assertTrue(found.next());
        assertEquals(2, found.getLong(1));
        assertFalse(found.next());
      }
      statement.executeQuery("SELECT id FROM page WHERE id = 1 " + dialect.forUpdate()).close();
    }
  }

  @Test
  void itKnowsAMissingTableAndACollidingKey() throws SQLException {
    try (DerbyStoreEngine engine = new DerbyStoreEngine(data);
        Connection connection = engine.dataSource().getConnection();
        Statement statement = connection.createStatement()) {
      SQLException missing =
          assertThrows(SQLException.class, () -> statement.executeQuery("SELECT * FROM nowhere"));
      assertTrue(engine.dialect().isTableMissing(missing));
      assertFalse(engine.dialect().isCollision(missing));
      statement.execute("CREATE TABLE once (id INT PRIMARY KEY)");
      statement.execute("INSERT INTO once VALUES 1");
      SQLException twice =
          assertThrows(SQLException.class, () -> statement.execute("INSERT INTO once VALUES 1"));
      assertTrue(engine.dialect().isCollision(twice));
      assertFalse(engine.dialect().isTableMissing(twice));
    }
  }

  @Test
  void noRowsAreNotAsked() {
    assertThrows(IllegalArgumentException.class, () -> new DerbyDialect().firstRows(0));
  }
}
