package org.fettlebench.club.store.internal;

import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.club.ClubException;

/** Places and members, which come to be when they are first named. */
final class Names {
  private static final int LONGEST_MEMBER = 120;

  private final Transaction transaction;
  private final LastKeys keys;
  private final Map<String, Long> placesSeen = new HashMap<>();

  Names(Transaction transaction, LastKeys keys) {
    this.transaction = transaction;
    this.keys = keys;
  }

  /** Returns the key of a place. */
  long place(String path) throws SQLException {
    Long seen = placesSeen.get(path);
    if (seen == null) {
      seen = storedPlace(path);
      placesSeen.put(path, seen);
    }
    return seen;
  }

  private long storedPlace(String path) throws SQLException {
    Optional<Long> stored =
        transaction.first("SELECT id FROM place WHERE path = ?", row -> row.getLong(1), path);
    if (stored.isPresent()) {
      return stored.get();
    }
    long id = keys.nextPlace();
    transaction.change("INSERT INTO place (id, path) VALUES (?, ?)", id, path);
    return id;
  }

  /** Returns the key of a member, none for an empty name. */
  Optional<Long> member(String name) throws SQLException {
    if (name.isEmpty()) {
      return Optional.empty();
    }
    Optional<Long> stored = storedMember(transaction, name);
    if (stored.isPresent()) {
      return stored;
    }
    long id = keys.nextMember();
    transaction.change("INSERT INTO member (id, name) VALUES (?, ?)", id, name);
    return Optional.of(id);
  }

  static Optional<Long> storedMember(Transaction transaction, String name) throws SQLException {
    return transaction.first("SELECT id FROM member WHERE name = ?", row -> row.getLong(1), name);
  }

  static List<String> members(Transaction transaction) throws SQLException {
    return List.copyOf(
        transaction.all("SELECT name FROM member ORDER BY name", row -> row.getString(1)));
  }

  static List<String> places(Transaction transaction) throws SQLException {
    return List.copyOf(
        transaction.all("SELECT path FROM place ORDER BY path", row -> row.getString(1)));
  }

  /** Returns a member's name as it is kept. */
  static String memberName(String name) {
    return oneLine("the member", name, LONGEST_MEMBER);
  }

  /** Returns a text without the blanks around it, refusing what does not fit on its line. */
  static String oneLine(String what, String text, int longest) {
    String words = text.strip();
    if (!(words.length() <= longest) || words.chars().anyMatch(Character::isISOControl)) {
      throw new ClubException(
          "%s is to be one line of at most %d characters, not %d characters beginning '%s'"
              .formatted(
                  what,
                  longest,
                  words.length(),
                  words.substring(0, Math.min(20, words.length())).replaceAll("\\p{Cntrl}", "?")));
    }
    return words;
  }
}
