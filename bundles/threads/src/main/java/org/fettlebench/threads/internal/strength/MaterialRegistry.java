package org.fettlebench.threads.internal.strength;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.Tables;
import org.fettlebench.threads.strength.Material;
import org.fettlebench.threads.strength.Materials;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Keeps the materials of the tables of the moment; reads them anew when the tables change. */
@Component(service = Materials.class)
public final class MaterialRegistry implements Materials {
  private record Snapshot(long revision, List<Material> all) {}

  private final Tables tables;
  private final BiConsumer<Table, RuntimeException> faulty;
  // Made when first asked for: a start asks for no material.
  private Optional<Snapshot> snapshot = Optional.empty();

  /** Takes the tables of all started bundles and reports bad ones against their module. */
  @Activate
  public MaterialRegistry(
      BundleContext context, @Reference Tables tables, @Reference Faults faults) {
    this(
        tables,
        (table, fault) ->
            faults.report(owner(context, table), "reading materials " + table.id(), fault));
  }

  /**
   * Takes tables without a framework.
   *
   * @param faulty told of each table that cannot be used
   */
  public MaterialRegistry(Tables tables, BiConsumer<Table, RuntimeException> faulty) {
    this.tables = tables;
    this.faulty = faulty;
  }

  private static Object owner(BundleContext context, Table table) {
    return Arrays.stream(context.getBundles())
        .filter(bundle -> table.module().equals(bundle.getSymbolicName()))
        .findFirst()
        .orElse(context.getBundle());
  }

  @Override
  public synchronized List<Material> all() {
    long revision = tables.revision();
    if (snapshot.filter(made -> made.revision() == revision).isEmpty()) {
      snapshot = Optional.of(read(revision));
    }
    return snapshot.orElseThrow().all();
  }

  private Snapshot read(long revision) {
    Map<String, Material> byId = new LinkedHashMap<>();
    for (Table table : tables.ofKind(MaterialReader.KIND)) {
      try {
        MaterialReader.read(table).forEach(one -> byId.putIfAbsent(plain(one.id()), one));
      } catch (RuntimeException refused) {
        faulty.accept(table, refused);
      }
    }
    return new Snapshot(revision, List.copyOf(byId.values()));
  }

  @Override
  public Optional<Material> find(String name) {
    String wanted = plain(name);
    return all().stream()
        .filter(one -> plain(one.id()).equals(wanted) || plain(one.name()).equals(wanted))
        .findFirst();
  }

  @Override
  public List<Material> near(String name) {
    List<String> words =
        Arrays.stream(name.toLowerCase(Locale.ROOT).split("[^a-z0-9.]+"))
            .filter(word -> !word.isEmpty())
            .toList();
    return words.isEmpty()
        ? List.of()
        : all().stream()
            .filter(one -> words.stream().allMatch(plain(one.id() + one.name())::contains))
            .toList();
  }

  private static String plain(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9.]+", "");
  }
}
