package org.fettlebench.modules.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.fettlebench.modules.Faults;
import org.fettlebench.modules.Module;
import org.fettlebench.modules.ModuleOrigin;
import org.fettlebench.modules.Modules;
import org.fettlebench.modules.ModulesListener;
import org.fettlebench.tables.Tables;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleEvent;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;
import org.osgi.framework.ServiceEvent;
import org.osgi.framework.ServiceListener;
import org.osgi.framework.ServiceRegistration;
import org.osgi.framework.SynchronousBundleListener;
import org.osgi.framework.hooks.resolver.ResolverHookFactory;
import org.osgi.framework.startlevel.BundleStartLevel;
import org.osgi.framework.startlevel.FrameworkStartLevel;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import org.osgi.service.component.runtime.ServiceComponentRuntime;

/** Watches bundles and services, keeps left out what is left out, and tells of changes. */
@Component(service = Modules.class, immediate = true)
public final class ModuleRegistry implements Modules {
  private static final String OWN_LOG =
      "(component.name=org.fettlebench.modules.internal.FaultLog)";
  private static final long TELL_AFTER_MS = 100;

  private final BundleContext context;
  private final FaultLog faults;
  private final LeftOut leftOut;
  private final NewestOnly newest;
  private final ServiceRegistration<ResolverHookFactory> hook;
  private final Diagnosis diagnosis;
  private final ModuleView view;
  private final AtomicLong revision = new AtomicLong();
  private final AtomicBoolean toldSoon = new AtomicBoolean();
  private final SynchronousBundleListener onBundle = this::bundleChanged;
  private final ServiceListener onService = this::serviceChanged;
  private final Runnable onFault = this::changed;
  private final ScheduledExecutorService teller =
      Executors.newSingleThreadScheduledExecutor(ModuleRegistry::thread);

  /** The tables, whose provider may come later than this; null while there is none. */
  @Reference(
      cardinality = ReferenceCardinality.OPTIONAL,
      policy = ReferencePolicy.DYNAMIC,
      policyOption = ReferencePolicyOption.GREEDY)
  private volatile Tables tables;

  /** Whoever wants to be told of changes. */
  @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
  private volatile List<ModulesListener> listeners = List.of();

  /**
   * Stops what is left out and watches from now on.
   *
   * @param faults this bundle's own log: it is read here, which the service does not offer
   */
  @Activate
  public ModuleRegistry(
      BundleContext context,
      @Reference(target = OWN_LOG) Faults faults,
      @Reference ServiceComponentRuntime runtime) {
    this.context = context;
    this.faults = (FaultLog) faults;
    this.leftOut = new LeftOut(ModuleOrigin.dataDirectory(context));
    FrameworkStartLevel reached =
        context.getBundle(Constants.SYSTEM_BUNDLE_LOCATION).adapt(FrameworkStartLevel.class);
    this.newest = new NewestOnly(context);
    this.hook = context.registerService(ResolverHookFactory.class, newest, null);
    this.diagnosis =
        new Diagnosis(leftOut, newest, new Needs(context), new Parts(runtime), reached);
    this.view = new ModuleView(context, this.faults, diagnosis);
    context.addBundleListener(onBundle);
    context.addServiceListener(onService);
    this.faults.watch(onFault);
    Stream.of(context.getBundles()).forEach(this::stopIfUnwanted);
    Stream.of(context.getBundles()).forEach(this::startIfNewest);
    changed();
  }

  /** Stops watching. */
  @Deactivate
  public void close() {
    faults.unwatch(onFault);
    context.removeServiceListener(onService);
    context.removeBundleListener(onBundle);
    hook.unregister();
    teller.shutdownNow();
  }

  @Override
  public List<Module> installed() {
    return view.installed(Optional.ofNullable(tables));
  }

  @Override
  public Path folder() {
    return ModuleOrigin.folder(context);
  }

  @Override
  public long revision() {
    return revision.get();
  }

  @Override
  public void enable(String symbolicName, boolean enabled) {
    List<Bundle> dropped = newest.versions(symbolicName).toList();
    if (dropped.isEmpty()) {
      throw new IllegalArgumentException(
          "no module " + symbolicName + " came from the folder " + folder());
    }
    leftOut.set(symbolicName, !enabled);
    dropped.forEach(enabled ? this::startIfNewest : this::stopIfUnwanted);
    changed();
  }

  /** Starts a dropped module that was stopped because of a newer version or of being left out. */
  private void startIfNewest(Bundle bundle) {
    boolean stopped =
        ModuleOrigin.dropped(bundle, context)
            && bundle.getHeaders("").get(Constants.FRAGMENT_HOST) == null
            && !bundle.adapt(BundleStartLevel.class).isPersistentlyStarted();
    if (!stopped || unwanted(bundle)) {
      return;
    }
    try {
      bundle.start();
    } catch (BundleException refused) {
      faults.report(bundle, "starting", refused);
    }
  }

  private boolean unwanted(Bundle bundle) {
    String name = bundle.getSymbolicName();
    return name != null
        && ((leftOut.contains(name) && ModuleOrigin.dropped(bundle, context))
            || newest.newerThan(bundle).isPresent());
  }

  private void stopIfUnwanted(Bundle bundle) {
    if (!unwanted(bundle)) {
      return;
    }
    try {
      bundle.stop();
    } catch (BundleException refused) {
      faults.report(bundle, "stopping", refused);
    }
  }

  private void bundleChanged(BundleEvent event) {
    Bundle bundle = event.getBundle();
    switch (event.getType()) {
      case BundleEvent.STARTED -> stopIfUnwanted(bundle);
      // Before the newer one can start, so that it finds its names free.
      case BundleEvent.INSTALLED, BundleEvent.UPDATED ->
          newest.versions(bundle.getSymbolicName()).forEach(this::stopIfUnwanted);
      case BundleEvent.UNINSTALLED ->
          later(() -> newest.versions(bundle.getSymbolicName()).forEach(this::startIfNewest));
      default -> {
        // No other change decides who runs.
      }
    }
    changed();
  }

  private void serviceChanged(ServiceEvent event) {
    if (Contributions.isExtension(event.getServiceReference())) {
      changed();
    }
  }

  private void changed() {
    revision.incrementAndGet();
    if (toldSoon.compareAndSet(false, true)) {
      later(this::tell);
    }
  }

  private void later(Runnable work) {
    try {
      teller.schedule(work, TELL_AFTER_MS, TimeUnit.MILLISECONDS);
    } catch (RejectedExecutionException closing) {
      toldSoon.set(false);
    }
  }

  private void tell() {
    toldSoon.set(false);
    // While the framework starts or stops, a bundle that does not run yet or any more is well.
    if (context.getBundle(Constants.SYSTEM_BUNDLE_LOCATION).getState() == Bundle.ACTIVE) {
      Stream.of(context.getBundles()).forEach(diagnosis::ask);
    }
    for (ModulesListener listener : listeners) {
      try {
        listener.modulesChanged();
      } catch (RuntimeException | LinkageError refused) {
        faults.report(listener, "being told of a change", refused);
      }
    }
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "modules");
    thread.setDaemon(true);
    return thread;
  }
}
