package org.fettlebench.store.derby.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.CallableStatement;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import org.fettlebench.store.StoreException;

/** Copies the open store into a folder of its own under the backups. */
final class DerbyBackup {
  private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss");

  private final StoreFiles files;

  DerbyBackup(StoreFiles files) {
    this.files = files;
  }

  Path take(DerbyDatabase database, String why) {
    if (!why.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
      throw new IllegalArgumentException(
          "a backup's reason is small letters, digits and single hyphens, not '" + why + "'");
    }
    Path target = freeName(LocalDateTime.now().format(STAMP) + "-" + why);
    // Under a passing name until it is whole, so that half a copy is never taken for a backup.
    Path passing = target.resolveSibling(target.getFileName() + ".unfinished");
    try {
      Files.createDirectories(files.backups());
      copy(database, passing);
      return Files.move(passing, target);
    } catch (SQLException | IOException fault) {
      StoreFiles.delete(passing);
      throw new StoreException(
          "the store was not copied to " + target + " (" + fault.getMessage() + ")", fault);
    }
  }

  private Path freeName(String name) {
    Path target = files.backups().resolve(name);
    for (int again = 2; Files.exists(target); again++) {
      target = files.backups().resolve(name + "-" + again);
    }
    return target;
  }

  private static void copy(DerbyDatabase database, Path target) throws SQLException {
    try (Connection connection = database.connection();
        CallableStatement backup =
            connection.prepareCall("CALL SYSCS_UTIL.SYSCS_BACKUP_DATABASE(?)")) {
      backup.setString(1, target.toString());
      backup.execute();
    }
  }
}
