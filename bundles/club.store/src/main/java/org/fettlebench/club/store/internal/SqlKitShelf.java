package org.fettlebench.club.store.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.fettlebench.club.KitShelf;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The shelf of kit files over SQL. */
@Component(service = KitShelf.class)
public final class SqlKitShelf implements KitShelf {
  private static final String SELECT = "SELECT name, content, kept_ms FROM kit_file ";

  private final ClubDatabase database;
  private final InstantSource clock;

  /** Keeps the kits in {@code database}. */
  @Activate
  public SqlKitShelf(@Reference ClubDatabase database) {
    this(database, InstantSource.system());
  }

  SqlKitShelf(ClubDatabase database, InstantSource clock) {
    this.database = database;
    this.clock = clock;
  }

  @Override
  public List<KeptKit> kits() {
    return List.copyOf(
        database.inTransaction(
            transaction ->
                transaction.all(SELECT + "ORDER BY kept_ms DESC, name", SqlKitShelf::kit)));
  }

  @Override
  public Optional<KeptKit> kit(String name) {
    return database.inTransaction(transaction -> find(transaction, name));
  }

  @Override
  public Optional<KeptKit> keep(String name, String text) {
    Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
    KeptKit kit = new KeptKit(name, text, now);
    return database.inTransaction(
        transaction -> {
          Optional<KeptKit> before = takeDown(transaction, kit.name());
          transaction.change(
              "INSERT INTO kit_file (name, content, kept_ms) VALUES (?, ?, ?)",
              kit.name(),
              kit.text(),
              kit.keptAt().toEpochMilli());
          return before;
        });
  }

  @Override
  public Optional<KeptKit> remove(String name) {
    return database.inTransaction(transaction -> takeDown(transaction, name));
  }

  private static Optional<KeptKit> takeDown(Transaction transaction, String name)
      throws SQLException {
    Optional<KeptKit> kit = find(transaction, name);
    if (kit.isPresent()) {
      transaction.change("DELETE FROM kit_file WHERE name = ?", kit.get().name());
    }
    return kit;
  }

  private static Optional<KeptKit> find(Transaction transaction, String name) throws SQLException {
    return transaction.first(SELECT + "WHERE name = ?", SqlKitShelf::kit, name.strip());
  }

  private static KeptKit kit(ResultSet row) throws SQLException {
    return new KeptKit(row.getString(1), row.getString(2), Instant.ofEpochMilli(row.getLong(3)));
  }
}
