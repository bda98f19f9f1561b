package org.fettlebench.modules.internal;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.fettlebench.modules.Module;
import org.fettlebench.modules.ModuleOrigin;
import org.fettlebench.tables.Tables;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;

/** Shows bundles as modules. */
final class ModuleView {
  private static final Comparator<Module> ORDER =
      Comparator.comparing((Module module) -> !module.dropped())
          .thenComparing(Module::library)
          .thenComparing(module -> module.title().toLowerCase(Locale.ROOT))
          .thenComparing(Module::symbolicName)
          .thenComparing(Module::state);

  private final BundleContext context;
  private final FaultLog faults;
  private final Diagnosis diagnosis;
  private final Contributions contributions;
  private final StrayJars strays;

  ModuleView(BundleContext context, FaultLog faults, Diagnosis diagnosis) {
    this.context = context;
    this.faults = faults;
    this.diagnosis = diagnosis;
    this.contributions = new Contributions(context, faults);
    this.strays = new StrayJars(faults);
  }

  List<Module> installed(Optional<Tables> tables) {
    List<Module> modules = new ArrayList<>();
    Set<Path> files = new HashSet<>();
    Set<String> present = new HashSet<>();
    for (Bundle bundle : context.getBundles()) {
      if (bundle.getSymbolicName() != null) {
        modules.add(module(bundle, tables));
        ModuleOrigin.file(bundle)
            .map(Path::toAbsolutePath)
            .map(Path::normalize)
            .ifPresent(files::add);
        present.add(bundle.getSymbolicName() + " " + bundle.getVersion());
      }
    }
    modules.addAll(strays.find(ModuleOrigin.folder(context), files, present));
    modules.sort(ORDER);
    return List.copyOf(modules);
  }

  private Module module(Bundle bundle, Optional<Tables> tables) {
    String name = bundle.getSymbolicName();
    Health health = diagnosis.of(bundle);
    return new Module(
        name,
        header(bundle, "Bundle-Name").orElse(name),
        header(bundle, "Bundle-Description").orElse(""),
        bundle.getVersion().toString(),
        header(bundle, "Bundle-Vendor").orElse(""),
        ModuleOrigin.dropped(bundle, context),
        ModuleOrigin.file(bundle).map(Path::toString).orElse(""),
        health.working(),
        health.words(),
        Instant.ofEpochMilli(bundle.getLastModified()),
        runs(bundle) ? contributions.of(bundle, tables) : List.of(),
        faults.of(name));
  }

  /** What does not run adds nothing, though another version of it may. */
  private static boolean runs(Bundle bundle) {
    return (bundle.getState() & (Bundle.STARTING | Bundle.ACTIVE)) != 0;
  }

  private static Optional<String> header(Bundle bundle, String key) {
    return Optional.ofNullable(bundle.getHeaders().get(key));
  }
}
