package org.fettlebench.modules.internal;

import java.util.Collection;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fettlebench.modules.ModuleOrigin;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.hooks.resolver.ResolverHook;
import org.osgi.framework.hooks.resolver.ResolverHookFactory;
import org.osgi.framework.wiring.BundleCapability;
import org.osgi.framework.wiring.BundleRequirement;
import org.osgi.framework.wiring.BundleRevision;

/**
 * Of several versions of one dropped module only the newest runs: a newer jar often has another
 * file name, and the older one stays in the folder. As a hook of the resolver it keeps the others
 * from starting at all, so that not even for a moment two of them ask for one name.
 */
final class NewestOnly implements ResolverHookFactory {
  private final BundleContext context;
  // Asked for every bundle at every step of a start, and it looks at the disk.
  private final Map<String, Boolean> droppedByLocation = new ConcurrentHashMap<>();

  NewestOnly(BundleContext context) {
    this.context = context;
  }

  /** Returns the newest version of a dropped module, if it is newer than {@code bundle}. */
  Optional<Bundle> newerThan(Bundle bundle) {
    return versions(bundle.getSymbolicName())
        .filter(other -> other.getVersion().compareTo(bundle.getVersion()) > 0)
        .max(Comparator.comparing(Bundle::getVersion))
        .filter(other -> dropped(bundle));
  }

  /** Returns all versions of a module that lie in the folder. */
  Stream<Bundle> versions(String symbolicName) {
    return Stream.of(context.getBundles())
        .filter(bundle -> symbolicName != null && symbolicName.equals(bundle.getSymbolicName()))
        .filter(bundle -> dropped(bundle));
  }

  private boolean dropped(Bundle bundle) {
    return droppedByLocation.computeIfAbsent(
        bundle.getLocation(), place -> ModuleOrigin.dropped(bundle, context));
  }

  @Override
  public ResolverHook begin(Collection<BundleRevision> triggers) {
    // Asked at every step of a start: the suite's own, which are most, are left out first.
    return new Hook(
        Stream.of(context.getBundles())
            .filter(bundle -> dropped(bundle))
            .filter(bundle -> newerThan(bundle).isPresent())
            .collect(Collectors.toUnmodifiableSet()));
  }

  /**
   * Keeps from the older ones what they require, so that they cannot be resolved. To strike them
   * from the resolvable ones would be plainer, but the framework then forgets the packages of Java
   * itself for everybody.
   */
  private record Hook(Set<Bundle> older) implements ResolverHook {
    @Override
    public void filterMatches(
        BundleRequirement requirement, Collection<BundleCapability> candidates) {
      if (older.contains(requirement.getRevision().getBundle())) {
        candidates.clear();
      }
    }

    @Override
    public void filterResolvable(Collection<BundleRevision> candidates) {
      // See above.
    }

    @Override
    public void filterSingletonCollisions(
        BundleCapability singleton, Collection<BundleCapability> collisions) {
      // Singletons are the framework's own affair.
    }

    @Override
    public void end() {
      // Nothing is kept.
    }
  }
}
