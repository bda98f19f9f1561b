package org.fettlebench.launcher;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.apache.felix.framework.FrameworkFactory;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;
import org.osgi.framework.FrameworkEvent;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.launch.Framework;
import org.osgi.framework.startlevel.BundleStartLevel;
import org.osgi.framework.startlevel.FrameworkStartLevel;
import org.osgi.util.tracker.ServiceTracker;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The framework with the suite's bundles in it, started to a level. */
final class Host implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(Host.class);
  private static final int SECONDS_TO_STOP = 15;

  private final Framework framework;
  private final AtomicBoolean closed = new AtomicBoolean();
  private final List<String> troubles = Collections.synchronizedList(new ArrayList<>());

  private final Path modules;

  private Host(Framework framework, Path modules) {
    this.framework = framework;
    this.modules = modules;
  }

  /**
   * Starts the framework and returns when everything up to a level has been started.
   *
   * @throws LaunchException when the framework cannot run; a bundle that does not start is only
   *     kept among the {@link #troubles}
   */
  static Host start(DataDirectory data, Distribution suite, int level) {
    BundleCache cache = new BundleCache(data.cache(), suite.bundles());
    boolean ready = cache.ready();
    Map<String, Object> properties = new HashMap<>(suite.frameworkProperties());
    System.getProperties().stringPropertyNames().stream()
        .filter(name -> name.startsWith("fettlebench."))
        .forEach(name -> properties.put(name, System.getProperty(name)));
    properties.putAll(properties(data, level));
    Host host = new Host(new FrameworkFactory().newFramework(asMap(properties)), data.modules());
    try {
      host.start(cache, ready, level);
      return host;
    } catch (BundleException | IOException e) {
      host.close();
      throw new LaunchException("The suite cannot be started: " + e.getMessage(), e);
    }
  }

  // The framework takes text and objects (its logger) in one map of raw type.
  @SuppressWarnings({"unchecked", "rawtypes"})
  private static Map<String, String> asMap(Map properties) {
    return properties;
  }

  private static Map<String, Object> properties(DataDirectory data, int level) {
    Map<String, Object> properties = new HashMap<>();
    properties.put(Constants.FRAMEWORK_STORAGE, data.cache().toString());
    properties.put(Constants.FRAMEWORK_BEGINNING_STARTLEVEL, String.valueOf(level));
    properties.put("felix.log.logger", new FrameworkLog());
    properties.put("felix.log.level", "2");
    properties.put("felix.shutdown.hook", "false");
    // Neither most calls nor the window's frame need the store: whoever does opens it.
    properties.put("fettlebench.store.early", "false");
    properties.put("fettlebench.data", data.path().toString());
    properties.put("fettlebench.modules", data.modules().toString());
    properties.put("felix.fileinstall.dir", data.modules().toString());
    properties.put("felix.fileinstall.tmpdir", data.cache().resolve("incoming").toString());
    properties.put("felix.fileinstall.poll", "700");
    properties.put("felix.fileinstall.noInitialDelay", "true");
    properties.put("felix.fileinstall.filter", ".*\\.jar");
    properties.put("felix.fileinstall.start.level", String.valueOf(StartLevels.MODULES));
    properties.put("felix.fileinstall.log.level", "2");
    return properties;
  }

  private void start(BundleCache cache, boolean ready, int level)
      throws BundleException, IOException {
    framework.init();
    framework.getBundleContext().addFrameworkListener(this::heard);
    if (!ready) {
      cache.install(framework.getBundleContext());
    }
    if (level < StartLevels.DESKTOP) {
      DroppedModules dropped = new DroppedModules(modules);
      dropped.bringInStep(framework.getBundleContext());
      troubles.addAll(dropped.troubles());
    }
    framework.start();
    Milestones.reached("framework started");
  }

  private void heard(FrameworkEvent event) {
    if (event.getType() == FrameworkEvent.ERROR) {
      String said = String.valueOf(event.getThrowable().getMessage());
      LOG.error("{}: {}", event.getBundle(), said, event.getThrowable());
      troubles.add(trouble(event.getBundle(), said));
    }
  }

  /** Of a club's module the suite itself tells all; of its own parts only this tells. */
  private String trouble(Bundle bundle, String said) {
    return bundle.getLocation().startsWith(modules.toUri().toString())
        ? DroppedModules.doesNotWork(bundle.getSymbolicName())
        : bundle.getSymbolicName() + ": " + said;
  }

  /** Returns what went wrong while starting, in the order it happened. */
  List<String> troubles() {
    synchronized (troubles) {
      return List.copyOf(troubles);
    }
  }

  /**
   * Waits for the service that bundles offer to the launcher.
   *
   * @param type a type of the JDK
   * @param name value of the service's property {@code fettlebench.main}
   * @param seconds how long to wait
   * @throws LaunchException when it is not offered in time, with what went wrong while starting
   */
  <T> T service(Class<T> type, String name, int seconds) {
    ServiceTracker<T, T> tracker =
        new ServiceTracker<>(framework.getBundleContext(), filter(type, name), null);
    tracker.open();
    try {
      T service = tracker.waitForService(TimeUnit.SECONDS.toMillis(seconds));
      if (service == null) {
        throw new LaunchException(missing(name));
      }
      return service;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new LaunchException("Waiting for the " + name + " was interrupted", e);
    } finally {
      tracker.close();
    }
  }

  private <T> org.osgi.framework.Filter filter(Class<T> type, String name) {
    try {
      return framework
          .getBundleContext()
          .createFilter("(&(objectClass=%s)(fettlebench.main=%s))".formatted(type.getName(), name));
    } catch (InvalidSyntaxException e) {
      throw new IllegalArgumentException(name, e);
    }
  }

  private String missing(String name) {
    StringBuilder text = new StringBuilder();
    text.append("No bundle offers the suite's %s; parts of it did not start:".formatted(name));
    troubles().forEach(trouble -> text.append("\n  ").append(trouble));
    int reached = framework.adapt(FrameworkStartLevel.class).getStartLevel();
    for (Bundle bundle : framework.getBundleContext().getBundles()) {
      if (bundle.getState() == Bundle.INSTALLED
          && bundle.adapt(BundleStartLevel.class).getStartLevel() <= reached) {
        text.append("\n  %s cannot be used".formatted(bundle.getSymbolicName()));
      }
    }
    return text.toString();
  }

  /** Stops all bundles and waits for them, but not for ever. May be called more than once. */
  @Override
  public void close() {
    if (!closed.compareAndSet(false, true)) {
      return;
    }
    try {
      framework.stop();
      FrameworkEvent end = framework.waitForStop(TimeUnit.SECONDS.toMillis(SECONDS_TO_STOP));
      if (end.getType() == FrameworkEvent.WAIT_TIMEDOUT) {
        LOG.error("The suite did not stop within {} s", SECONDS_TO_STOP);
      }
    } catch (BundleException e) {
      LOG.error("The suite did not stop cleanly", e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
