package org.fettlebench.modules.internal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.fettlebench.modules.Faults;
import org.fettlebench.modules.Module;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;
import org.osgi.service.component.annotations.Component;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Keeps what modules did wrong, newest first and bounded. Needs no other service, so that every
 * registry can report from the first moment on.
 */
@Component(service = Faults.class)
public final class FaultLog implements Faults {
  static final int KEPT_OF_EACH_MODULE = 50;
  private static final String SUITE = "org.fettlebench.modules";
  private static final Logger LOG = LoggerFactory.getLogger(FaultLog.class);

  private final Map<String, List<Module.Fault>> byModule = new HashMap<>();
  private final List<Runnable> watchers = new CopyOnWriteArrayList<>();

  @Override
  public void report(Object contribution, String doing, Throwable cause) {
    String module = module(contribution);
    LOG.warn("{}: {}", module, doing, cause);
    // One that is known already is news to nobody: a rule may fail at every joint of every check.
    if (keep(module, new Module.Fault(Instant.now(), doing, said(cause)))) {
      watchers.forEach(Runnable::run);
    }
  }

  /** Keeps a fault in front and returns whether it is a new one. */
  private synchronized boolean keep(String module, Module.Fault fault) {
    List<Module.Fault> kept = byModule.computeIfAbsent(module, name -> new ArrayList<>());
    boolean known =
        kept.removeIf(old -> old.doing().equals(fault.doing()) && old.said().equals(fault.said()));
    kept.add(0, fault);
    if (kept.size() > KEPT_OF_EACH_MODULE) {
      kept.remove(KEPT_OF_EACH_MODULE);
    }
    return !known;
  }

  /** Returns the faults of a module, newest first. */
  synchronized List<Module.Fault> of(String symbolicName) {
    return List.copyOf(byModule.getOrDefault(symbolicName, List.of()));
  }

  /** Tells {@code watcher}, on the reporting thread, of every fault from now on. */
  void watch(Runnable watcher) {
    watchers.add(watcher);
  }

  void unwatch(Runnable watcher) {
    watchers.remove(watcher);
  }

  private static String module(Object contribution) {
    return owner(contribution).map(Bundle::getSymbolicName).orElse(SUITE);
  }

  private static Optional<Bundle> owner(Object contribution) {
    if (contribution instanceof Bundle bundle) {
      return Optional.of(bundle);
    }
    Class<?> type = contribution instanceof Class<?> one ? one : contribution.getClass();
    return Optional.ofNullable(FrameworkUtil.getBundle(type));
  }

  /** Returns what a person needs of a throwable: its message, or failing that its name. */
  private static String said(Throwable cause) {
    String name = cause.getClass().getSimpleName();
    String message = cause.getMessage();
    if (message == null || message.isBlank()) {
      return name;
    }
    return cause instanceof IllegalArgumentException || cause instanceof IllegalStateException
        ? message
        : name + ": " + message;
  }
}
