package org.fettlebench.club.store.internal;

import java.sql.Date;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.club.ClubException;
import org.fettlebench.club.HoleError;
import org.fettlebench.club.MeasuredError;
import org.fettlebench.club.MeasuredError.Strike;
import org.fettlebench.club.MeasuredErrors;
import org.fettlebench.measure.Length;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The book of measured errors over SQL. */
@Component(service = MeasuredErrors.class)
public final class SqlMeasuredErrors implements MeasuredErrors {
  private static final String SELECT =
      "SELECT e.id, e.method, e.x_nm, e.y_nm, e.measured, m.name, e.machine, e.note, e.entered_ms,"
          + " e.struck_ms, s.name, e.struck_why FROM measured_error e"
          + " LEFT JOIN member m ON m.id = e.member_id LEFT JOIN member s ON s.id = e.struck_by ";
  private static final String INSERT =
      "INSERT INTO measured_error (id, method, x_nm, y_nm, measured, member_id, machine, note,"
          + " entered_ms) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)";

  private final ClubDatabase database;
  private final InstantSource clock;

  /** Keeps the errors in {@code database}. */
  @Activate
  public SqlMeasuredErrors(@Reference ClubDatabase database) {
    this(database, InstantSource.system());
  }

  SqlMeasuredErrors(ClubDatabase database, InstantSource clock) {
    this.database = database;
    this.clock = clock;
  }

  @Override
  public List<MeasuredError> all() {
    return List.copyOf(
        database.inTransaction(
            transaction -> transaction.all(SELECT + "ORDER BY e.id", SqlMeasuredErrors::entry)));
  }

  @Override
  public List<MeasuredError> enter(List<HoleError> errors) {
    Instant now = now();
    return List.copyOf(
        database.inTransaction(
            transaction -> {
              LastKeys keys = LastKeys.lock(transaction);
              Names names = new Names(transaction, keys);
              long id = last(transaction);
              List<MeasuredError> entered = new ArrayList<>();
              for (HoleError error : errors) {
                id++;
                add(transaction, names, new MeasuredError(id, error, now, Optional.empty()));
                entered.add(new MeasuredError(id, error, now, Optional.empty()));
              }
              transaction.runBatch(INSERT);
              keys.save();
              return entered;
            }));
  }

  /** The lock on the keys keeps two writers from taking the same number. */
  private static long last(Transaction transaction) throws SQLException {
    return transaction
        .first("SELECT MAX(id) FROM measured_error", row -> row.getLong(1))
        .orElse(0L);
  }

  private static void add(Transaction transaction, Names names, MeasuredError entry)
      throws SQLException {
    HoleError error = entry.error();
    transaction.addToBatch(
        INSERT,
        entry.id(),
        error.method(),
        error.x().nanometres(),
        error.y().nanometres(),
        Date.valueOf(error.measured()),
        names.member(error.member()).orElse(null),
        error.machine(),
        error.note(),
        entry.entered().toEpochMilli());
  }

  @Override
  public MeasuredError strike(long id, String member, String reason) {
    Strike strike = new Strike(now(), member, reason);
    return database.inTransaction(
        transaction -> {
          LastKeys keys = LastKeys.lock(transaction);
          MeasuredError entry = find(transaction, id);
          if (!entry.counts()) {
            throw new ClubException(
                "error %d was struck out already: %s"
                    .formatted(id, entry.struck().orElseThrow().reason()));
          }
          transaction.change(
              "UPDATE measured_error SET struck_ms = ?, struck_by = ?, struck_why = ? WHERE id = ?",
              strike.at().toEpochMilli(),
              new Names(transaction, keys).member(strike.member()).orElse(null),
              strike.reason(),
              id);
          keys.save();
          return new MeasuredError(id, entry.error(), entry.entered(), Optional.of(strike));
        });
  }

  private static MeasuredError find(Transaction transaction, long id) throws SQLException {
    return transaction
        .first(SELECT + "WHERE e.id = ?", SqlMeasuredErrors::entry, id)
        .orElseThrow(
            () ->
                new ClubException(
                    "there is no measured error %d; look it up in the list of errors"
                        .formatted(id)));
  }

  private Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MILLIS);
  }

  private static MeasuredError entry(ResultSet row) throws SQLException {
    HoleError error =
        new HoleError(
            row.getString(2),
            Length.ofNanometres(row.getLong(3)),
            Length.ofNanometres(row.getLong(4)),
            row.getDate(5).toLocalDate(),
            said(row.getString(6)),
            row.getString(7),
            row.getString(8));
    Instant entered = Instant.ofEpochMilli(row.getLong(9));
    long struck = row.getLong(10);
    Optional<Strike> strike =
        row.wasNull()
            ? Optional.empty()
            : Optional.of(
                new Strike(
                    Instant.ofEpochMilli(struck), said(row.getString(11)), row.getString(12)));
    return new MeasuredError(row.getLong(1), error, entered, strike);
  }

  private static String said(String text) {
    return text == null ? "" : text;
  }
}
