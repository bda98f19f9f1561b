package org.fettlebench.tooling.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.Tables;
import org.osgi.framework.BundleContext;

/**
 * What one kind of table was read as, kept until the tables change. A table that cannot be read is
 * reported and left out; the others stay.
 */
public final class Kept<T> {
  private final Tables tables;
  private final String kind;
  private final Function<Table, T> reader;
  private final BiConsumer<Table, RuntimeException> faulty;
  private long revision;
  // Read when first asked for: a start asks for few kinds.
  private List<T> read;

  /**
   * Reads the tables of a kind.
   *
   * @param reader of one table; throws when it is faulty
   * @param faulty told of each table that cannot be used
   */
  public Kept(
      Tables tables,
      String kind,
      Function<Table, T> reader,
      BiConsumer<Table, RuntimeException> faulty) {
    this.tables = tables;
    this.kind = kind;
    this.reader = reader;
    this.faulty = faulty;
  }

  /** Returns what the sound tables were read as: the suite's own first. */
  public synchronized List<T> now() {
    // The revision is taken before the tables, so a change in between is read again next time.
    long current = tables.revision();
    if (read == null || current != revision) {
      read = readAll();
      revision = current;
    }
    return read;
  }

  /** Returns the same with what modules add before the suite's own, for tables that replace. */
  public List<T> modulesFirst() {
    List<T> reversed = new ArrayList<>(now());
    Collections.reverse(reversed);
    return reversed;
  }

  private List<T> readAll() {
    List<T> sound = new ArrayList<>();
    for (Table table : tables.ofKind(kind)) {
      try {
        sound.add(reader.apply(table));
      } catch (RuntimeException refused) {
        faulty.accept(table, refused);
      }
    }
    return List.copyOf(sound);
  }

  /** Returns a place for faults that finds the module of a table. */
  public static BiConsumer<Table, RuntimeException> reportingTo(
      Faults faults, BundleContext context) {
    return (table, fault) ->
        faults.report(owner(context, table), "reading " + table.kind() + " " + table.id(), fault);
  }

  private static Object owner(BundleContext context, Table table) {
    return Arrays.stream(context.getBundles())
        .filter(bundle -> table.module().equals(bundle.getSymbolicName()))
        .findFirst()
        .orElse(context.getBundle());
  }
}
