package org.fettlebench.testkit;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceEvent;
import org.osgi.framework.ServiceListener;
import org.osgi.framework.launch.Framework;
import org.osgi.framework.launch.FrameworkFactory;
import org.osgi.util.tracker.ServiceTracker;

/**
 * A real Felix with Declarative Services for one test. Bundles are taken by symbolic name from the
 * test's class path, or from any jar. Bundles that are <em>shared</em> are not installed: the
 * framework itself exports their packages out of the class path, so that the test and the bundles
 * see the same types and services can be used directly.
 *
 * <pre>{@code
 * try (FelixHarness felix =
 *     FelixHarness.sharing("org.fettlebench.measure", "org.fettlebench.tables.api").start()) {
 *   felix.start("org.fettlebench.modules", "org.fettlebench.tables");
 *   Tables tables = felix.await(Tables.class);
 * }
 * }</pre>
 */
public final class FelixHarness implements AutoCloseable {
  private static final Duration PATIENCE = Duration.ofSeconds(10);
  private static final List<String> ALWAYS_SHARED =
      List.of(
          "slf4j.api",
          "org.osgi.util.function",
          "org.osgi.util.promise",
          "org.osgi.service.component");

  private final Framework framework;
  private final Path cache;
  private final Map<String, ClassPathBundle> classPath;

  private FelixHarness(Framework framework, Path cache, Map<String, ClassPathBundle> classPath) {
    this.framework = framework;
    this.cache = cache;
    this.classPath = classPath;
  }

  /** Begins a harness that shares the packages of the named bundles with the test. */
  public static Setup sharing(String... symbolicNames) {
    return new Setup(List.of(symbolicNames));
  }

  /** What a framework is started with. */
  public static final class Setup {
    private final Set<String> shared = new LinkedHashSet<>(ALWAYS_SHARED);
    private final Map<String, String> properties = new HashMap<>();
    private String morePackages = "";

    private Setup(List<String> symbolicNames) {
      shared.addAll(symbolicNames);
    }

    /** Sets a framework property. */
    public Setup property(String key, String value) {
      properties.put(key, value);
      return this;
    }

    /** Exports further packages of the class path that belong to no bundle there. */
    public Setup packages(String exportHeader) {
      morePackages += "," + exportHeader;
      return this;
    }

    /** Starts the framework and Declarative Services. */
    public FelixHarness start() {
      Map<String, ClassPathBundle> found = ClassPathBundle.all(FelixHarness.class.getClassLoader());
      try {
        Path cache = Files.createTempDirectory("fettlebench-felix");
        Map<String, String> all = new HashMap<>(properties);
        all.put(Constants.FRAMEWORK_STORAGE, cache.toString());
        all.put(Constants.FRAMEWORK_STORAGE_CLEAN, "onFirstInit");
        all.put(Constants.FRAMEWORK_SYSTEMPACKAGES_EXTRA, packages(found));
        all.put("felix.log.level", "1");
        Framework framework =
            ServiceLoader.load(FrameworkFactory.class).findFirst().orElseThrow().newFramework(all);
        framework.start();
        FelixHarness harness = new FelixHarness(framework, cache, found);
        harness.start("org.apache.felix.scr");
        return harness;
      } catch (IOException unwritable) {
        throw new UncheckedIOException("no place for the framework's cache", unwritable);
      } catch (BundleException refused) {
        throw new AssertionError("the framework did not start", refused);
      }
    }

    private String packages(Map<String, ClassPathBundle> found) {
      return shared.stream()
              .map(name -> named(found, name).exports())
              .filter(exports -> !exports.isEmpty())
              .collect(Collectors.joining(","))
          + morePackages;
    }
  }

  /** Returns the framework's own context, to register the test's own services with. */
  public BundleContext context() {
    return framework.getBundleContext();
  }

  /** Installs bundles of the class path, without starting them. */
  public void install(String... symbolicNames) {
    for (String name : symbolicNames) {
      install(named(classPath, name).location());
    }
  }

  /** Installs all the named bundles of the class path, then starts each. */
  public void start(String... symbolicNames) {
    List<Bundle> bundles =
        Stream.of(symbolicNames).map(name -> install(named(classPath, name).location())).toList();
    bundles.forEach(this::start);
  }

  /** Installs a jar without starting it. */
  public Bundle install(Path jar) {
    return install(jar.toUri().toString());
  }

  /** Starts a bundle; a failure says what it lacked. */
  public void start(Bundle bundle) {
    try {
      bundle.start();
    } catch (BundleException refused) {
      throw new AssertionError(bundle + " did not start\n" + doctor(), refused);
    }
  }

  /** Returns an installed bundle by its symbolic name. */
  public Optional<Bundle> bundle(String symbolicName) {
    return Stream.of(context().getBundles())
        .filter(bundle -> symbolicName.equals(bundle.getSymbolicName()))
        .findFirst();
  }

  /** Returns a service of a shared type as soon as there is one, within ten seconds. */
  public <T> T await(Class<T> type) {
    return await(type, "(objectClass=*)");
  }

  /** Returns a service of a shared type that fits a filter, within ten seconds. */
  public <T> T await(Class<T> type, String filter) {
    try {
      String both = "(&(" + Constants.OBJECTCLASS + "=" + type.getName() + ")" + filter + ")";
      ServiceTracker<T, T> tracker =
          new ServiceTracker<>(context(), context().createFilter(both), null);
      tracker.open();
      T service = tracker.waitForService(PATIENCE.toMillis());
      if (service == null) {
        tracker.close();
        throw new AssertionError("no service " + both + " came\n" + doctor());
      }
      // Left open: the framework lets go of the service when it stops.
      return service;
    } catch (InvalidSyntaxException malformed) {
      throw new IllegalArgumentException(malformed);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new AssertionError("interrupted while waiting for " + type.getName(), interrupted);
    }
  }

  /** Returns when no service of a type is left, within ten seconds. */
  public void awaitGone(Class<?> type) {
    CountDownLatch gone = new CountDownLatch(1);
    ServiceListener listener =
        event -> {
          // While a service unregisters it is still listed: ask for the others.
          if (event.getType() == ServiceEvent.UNREGISTERING && others(type, event) == 0) {
            gone.countDown();
          }
        };
    context().addServiceListener(listener);
    try {
      if (!none(type) && !gone.await(PATIENCE.toMillis(), TimeUnit.MILLISECONDS)) {
        throw new AssertionError("service " + type.getName() + " is still there\n" + doctor());
      }
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new AssertionError("interrupted while waiting", interrupted);
    } finally {
      context().removeServiceListener(listener);
    }
  }

  /** Returns why parts do not work, for a failure's message. */
  public String doctor() {
    return ServiceDoctor.report(context());
  }

  /** Stops the framework and deletes its cache. */
  @Override
  public void close() {
    try {
      framework.stop();
      framework.waitForStop(PATIENCE.toMillis());
      try (Stream<Path> files = Files.walk(cache)) {
        files.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
      }
    } catch (BundleException | IOException refused) {
      throw new AssertionError("the framework did not stop", refused);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  private Bundle install(String location) {
    try {
      return context().installBundle(location);
    } catch (BundleException refused) {
      throw new AssertionError(location + " was not installed", refused);
    }
  }

  private boolean none(Class<?> type) {
    return context().getServiceReference(type.getName()) == null;
  }

  private long others(Class<?> type, ServiceEvent event) {
    try {
      var left = context().getServiceReferences(type.getName(), null);
      return left == null
          ? 0
          : Stream.of(left).filter(one -> !one.equals(event.getServiceReference())).count();
    } catch (InvalidSyntaxException malformed) {
      throw new IllegalStateException(malformed);
    }
  }

  private static ClassPathBundle named(Map<String, ClassPathBundle> found, String name) {
    return Optional.ofNullable(found.get(name))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no bundle " + name + " on the class path; there are " + found.keySet()));
  }
}
