package org.fettlebench.tables.internal;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Enumeration;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFile;
import org.fettlebench.tables.TableFormatException;
import org.osgi.framework.Bundle;

/**
 * A table file of a bundle, read when it is first asked for: a start asks for few of them. A faulty
 * one is reported once and holds no table.
 */
final class CarriedTable {
  private static final String FOLDER = "FETTLEBENCH/tables";
  private static final Pattern KIND = Pattern.compile("\ufeff?#\\s*kind\\s*:\\s*(\\S+)\\s*");

  private final Bundle bundle;
  private final boolean suite;
  private final URL file;
  private final Faults faults;
  private volatile String kind;
  private Optional<Table> table;

  private CarriedTable(Bundle bundle, boolean suite, URL file, Faults faults) {
    this.bundle = bundle;
    this.suite = suite;
    this.file = file;
    this.faults = faults;
  }

  /**
   * Lists the table files of a bundle.
   *
   * @param suite whether the bundle is one of the suite's own
   */
  static List<CarriedTable> of(Bundle bundle, boolean suite, Faults faults) {
    Enumeration<URL> files = bundle.findEntries(FOLDER, "*.csv", false);
    if (files == null) {
      return List.of();
    }
    return Collections.list(files).stream()
        .map(file -> new CarriedTable(bundle, suite, file, faults))
        .toList();
  }

  Bundle bundle() {
    return bundle;
  }

  boolean suite() {
    return suite;
  }

  /** Returns whether it may hold a table of a kind; reads no more than its first line. */
  boolean mayBe(String asked) {
    if (kind == null) {
      kind = firstLineKind();
    }
    return kind.isEmpty() || kind.equals(asked);
  }

  /** Returns the kind when the first line says it, as in all files of the suite; else nothing. */
  private String firstLineKind() {
    try (BufferedReader text = new BufferedReader(open())) {
      String line = text.readLine();
      Matcher found = KIND.matcher(line == null ? "" : line);
      return found.matches() ? found.group(1) : "";
    } catch (IOException unreadable) {
      // Reading the whole file will meet and report the same.
      return "";
    }
  }

  /** Returns the table; empty when it is faulty. */
  Optional<Table> table() {
    Exception refused = null;
    synchronized (this) {
      if (table != null) {
        return table;
      }
      try (Reader text = open()) {
        table = Optional.of(TableFile.read(name(), bundle.getSymbolicName(), text));
      } catch (IOException | TableFormatException e) {
        table = Optional.empty();
        refused = e;
      }
    }
    if (refused != null) {
      // Outside the lock: whoever is told may ask for the tables.
      faults.report(bundle, "reading the table " + name(), refused);
    }
    return table;
  }

  private Reader open() throws IOException {
    return new InputStreamReader(file.openStream(), StandardCharsets.UTF_8);
  }

  private String name() {
    return FOLDER + file.getPath().substring(file.getPath().lastIndexOf('/'));
  }
}
