package org.fettlebench.club.store.internal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fettlebench.store.Dialect;

/**
 * One step of the schema. Once released, its text is never altered: a later step amends it.
 *
 * @param version 1 and up, without gaps
 * @param name what it brings, from its file's name
 * @param text SQL, each statement ending in a semicolon at the end of a line
 */
record Migration(int version, String name, String text) {
  private static final Pattern FILE = Pattern.compile("V(\\d{3})__(\\w+)\\.sql");

  /** Reads the version and the name from a file's name, such as {@code V001__stock_ledger.sql}. */
  static Migration ofFile(String file, String text) {
    Matcher parts = FILE.matcher(file);
    if (!parts.matches()) {
      throw new IllegalArgumentException("a migration is named V001__words.sql, not " + file);
    }
    return new Migration(Integer.parseInt(parts.group(1)), parts.group(2), text);
  }

  /** Returns a figure that changes when the text does, whatever its line ends. */
  String checksum() {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      byte[] bytes = text.replace("\r\n", "\n").getBytes(StandardCharsets.UTF_8);
      return HexFormat.of().formatHex(digest.digest(bytes));
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException("every Java has SHA-256", missing);
    }
  }

  /** Returns the statements in the engine's own SQL. */
  List<String> statements(Dialect dialect) {
    String sql =
        text.replaceAll("(?m)^\\s*--.*$", "")
            .replace("${identity}", dialect.identityColumn())
            .replace("${longText}", dialect.longTextType());
    List<String> statements = new ArrayList<>();
    for (String statement : sql.split(";\\s*(\\R|$)")) {
      if (!statement.isBlank()) {
        statements.add(statement.strip());
      }
    }
    return statements;
  }
}
