package org.fettlebench.club.store.internal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.fettlebench.store.StoreEngine;
import org.fettlebench.store.StoreException;

/** Brings a store's schema up to date, step by step, each step in a transaction of its own. */
final class SchemaRunner {
  private static final String VERSION_TABLE =
      """
      CREATE TABLE schema_version (
        version INTEGER NOT NULL PRIMARY KEY,
        name VARCHAR(100) NOT NULL,
        checksum CHAR(64) NOT NULL,
        applied_ms BIGINT NOT NULL)""";

  private record Applied(int version, String name, String checksum) {}

  private final StoreEngine engine;
  private final List<Migration> known;

  SchemaRunner(StoreEngine engine, List<Migration> known) {
    this.engine = engine;
    this.known = known;
  }

  /**
   * Applies what the store does not have yet, after a backup if there is anything in it.
   *
   * @throws StoreException if the store is newer than this suite or was made by other steps, or a
   *     step fails; the store is then as it was before that step
   */
  void bringUpToDate() {
    List<Applied> applied = applied();
    refuseNewer(applied);
    refuseOther(applied);
    if (applied.size() < known.size() && !applied.isEmpty()) {
      engine.backup("before-migration");
    }
    for (Migration next : known.subList(applied.size(), known.size())) {
      apply(next);
    }
  }

  private List<Applied> applied() {
    try (Connection connection = engine.dataSource().getConnection();
        Statement statement = connection.createStatement();
        ResultSet row =
            statement.executeQuery(
                "SELECT version, name, checksum FROM schema_version ORDER BY version")) {
      List<Applied> applied = new ArrayList<>();
      while (row.next()) {
        applied.add(new Applied(row.getInt(1), row.getString(2), row.getString(3)));
      }
      return applied;
    } catch (SQLException fault) {
      if (engine.dialect().isTableMissing(fault)) {
        return List.of();
      }
      throw new StoreException(
          "the version of the store cannot be read (%s). Store: %s"
              .formatted(fault.getMessage(), engine.description()),
          fault);
    }
  }

  private void refuseNewer(List<Applied> applied) {
    if (applied.size() > known.size()) {
      throw new StoreException(
          ("the store was last used by a newer suite: its schema is version %d, this suite knows"
                  + " versions up to %d; start the newer suite, or put back a backup from before."
                  + " Store: %s")
              .formatted(
                  applied.get(applied.size() - 1).version(), known.size(), engine.description()));
    }
  }

  private void refuseOther(List<Applied> applied) {
    for (int i = 0; i < applied.size(); i++) {
      Applied there = applied.get(i);
      Migration ours = known.get(i);
      if (there.version() != ours.version() || !there.checksum().equals(ours.checksum())) {
        throw new StoreException(
            ("the store was made by another edition of schema version %d (%s) than this suite's;"
                    + " start the suite that made it, or put back a backup from before. Store: %s")
                .formatted(there.version(), there.name(), engine.description()));
      }
    }
  }

  private void apply(Migration migration) {
    try (Connection connection = engine.dataSource().getConnection()) {
      connection.setAutoCommit(false);
      try {
        run(migration, connection);
        connection.commit();
      } finally {
        // After a commit there is nothing left to roll back.
        connection.rollback();
      }
    } catch (SQLException fault) {
      throw new StoreException(
          "the store was not brought to schema version %d (%s): %s; it is as it was. Store: %s"
              .formatted(
                  migration.version(), migration.name(), fault.getMessage(), engine.description()),
          fault);
    }
  }

  private void run(Migration migration, Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      if (migration.version() == 1) {
        statement.execute(VERSION_TABLE);
      }
      for (String sql : migration.statements(engine.dialect())) {
        statement.execute(sql);
      }
    }
    try (PreparedStatement done =
        connection.prepareStatement("INSERT INTO schema_version VALUES (?, ?, ?, ?)")) {
      done.setInt(1, migration.version());
      done.setString(2, migration.name());
      done.setString(3, migration.checksum());
      done.setLong(4, Instant.now().toEpochMilli());
      done.executeUpdate();
    }
  }
}
