package org.fettlebench.modules.internal;

import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.Tables;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.Constants;
import org.osgi.framework.ServiceReference;

/**
 * Tells in words of the trade what a module adds. Extension points are known by their names alone,
 * so that this bundle depends on none of them.
 */
final class Contributions {
  /**
   * An extension point.
   *
   * @param word what a person calls it
   * @param name methods to be called one after the other for the name of one contribution
   */
  private record Point(String word, List<String> name) {}

  private static final Map<String, Point> POINTS =
      Map.of(
          "org.fettlebench.desktop.Page", new Point("page", List.of("title")),
          "org.fettlebench.command.Command", new Point("command", List.of("usage", "words")),
          "org.fettlebench.kits.JointRule", new Point("kit check rule", List.of("title")),
          "org.fettlebench.store.StoreEngine", new Point("store engine", List.of()));

  private static final Map<String, String> TABLE_KINDS =
      Map.of(
          "thread-series", "thread series",
          "heads", "heads and nuts",
          "clearance-holes", "clearance holes",
          "thread-percent", "per cent of thread",
          "tapping-drills", "tapping drills",
          "drill-oversize", "drill oversize",
          "hole-methods", "ways to place a hole");

  private final BundleContext context;
  private final Faults faults;
  private final Set<Object> failedBefore = ConcurrentHashMap.newKeySet();

  Contributions(BundleContext context, Faults faults) {
    this.context = context;
    this.faults = faults;
  }

  /** Returns whether a service is an extension, so that people want to hear of it. */
  static boolean isExtension(ServiceReference<?> reference) {
    return Stream.of((String[]) reference.getProperty(Constants.OBJECTCLASS))
        .anyMatch(POINTS::containsKey);
  }

  /** Returns what a bundle adds: tables first, then services, each in order of its words. */
  List<String> of(Bundle bundle, Optional<Tables> tables) {
    List<String> added = new ArrayList<>();
    tables.stream()
        .flatMap(registry -> registry.all().stream())
        .filter(table -> table.module().equals(bundle.getSymbolicName()))
        .map(Contributions::words)
        .sorted()
        .forEach(added::add);
    ServiceReference<?>[] services = bundle.getRegisteredServices();
    if (services != null) {
      Stream.of(services).flatMap(this::words).sorted().forEach(added::add);
    }
    return added;
  }

  private static String words(Table table) {
    String kind = TABLE_KINDS.getOrDefault(table.kind(), table.kind().replace('-', ' '));
    return kind + ": " + table.title();
  }

  private Stream<String> words(ServiceReference<?> reference) {
    return Stream.of((String[]) reference.getProperty(Constants.OBJECTCLASS))
        .filter(POINTS::containsKey)
        .map(type -> words(reference, type, POINTS.get(type)));
  }

  private String words(ServiceReference<?> reference, String type, Point point) {
    if (point.name().isEmpty()) {
      return point.word();
    }
    try {
      return name(reference, type, point)
          .map(name -> point.word() + ": " + name)
          .orElse(point.word());
    } catch (ReflectiveOperationException | RuntimeException | LinkageError refused) {
      // Once each: the report makes the list be asked for again.
      if (failedBefore.add(reference.getProperty(Constants.SERVICE_ID))) {
        faults.report(
            reference.getBundle(), "asking for the name of its " + point.word(), cause(refused));
      }
      return point.word();
    }
  }

  private Optional<String> name(ServiceReference<?> reference, String type, Point point)
      throws ReflectiveOperationException {
    Object service = context.getService(reference);
    if (service == null) {
      return Optional.empty();
    }
    try {
      Object value = service;
      Class<?> seenAs = service.getClass().getClassLoader().loadClass(type);
      for (String method : point.name()) {
        value = seenAs.getMethod(method).invoke(value);
        seenAs = value.getClass();
      }
      return Optional.of(value.toString());
    } finally {
      context.ungetService(reference);
    }
  }

  private static Throwable cause(Throwable refused) {
    return refused instanceof InvocationTargetException thrown ? thrown.getCause() : refused;
  }
}
