package org.fettlebench.modules.internal;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleException;
import org.osgi.framework.startlevel.BundleStartLevel;
import org.osgi.framework.startlevel.FrameworkStartLevel;
import org.osgi.framework.wiring.BundleRevision;

/** Finds out whether a bundle works, and if not why. */
final class Diagnosis {
  /**
   * What a bundle said when it would not start.
   *
   * @param lastModified of the bundle then: an updated bundle is asked anew
   * @param said its message
   */
  private record Refusal(long lastModified, String said) {}

  private final LeftOut leftOut;
  private final NewestOnly newest;
  private final Needs needs;
  private final Parts parts;
  private final FrameworkStartLevel reached;
  private final Map<Long, Refusal> refusals = new ConcurrentHashMap<>();

  Diagnosis(
      LeftOut leftOut, NewestOnly newest, Needs needs, Parts parts, FrameworkStartLevel reached) {
    this.reached = reached;
    this.newest = newest;
    this.leftOut = leftOut;
    this.needs = needs;
    this.parts = parts;
  }

  Health of(Bundle bundle) {
    if (leftOut.contains(bundle.getSymbolicName())) {
      return Health.LEFT_OUT;
    }
    Optional<Bundle> newer = newest.newerThan(bundle);
    if (newer.isPresent()) {
      return Health.older(newer.get().getVersion().toString());
    }
    if (rests(bundle)) {
      return Health.RESTING;
    }
    return switch (bundle.getState()) {
      case Bundle.INSTALLED ->
          needs.of(bundle).map(Health::ill).orElseGet(() -> notStarted(bundle));
      case Bundle.RESOLVED ->
          isFragment(bundle)
              ? new Health(true, "working as a part of another bundle")
              : notStarted(bundle);
      case Bundle.STARTING -> isLazy(bundle) ? Health.WELL : Health.ill("is starting");
      case Bundle.ACTIVE -> active(bundle);
      default -> Health.ill("is stopping");
    };
  }

  private Health active(Bundle bundle) {
    List<String> wrong = parts.wrong(bundle);
    return wrong.isEmpty() ? Health.WELL : Health.ill(String.join("; ", wrong));
  }

  private Health notStarted(Bundle bundle) {
    return refusal(bundle)
        .map(refusal -> Health.ill("did not start: " + refusal.said()))
        .orElseGet(() -> Health.ill("is not started"));
  }

  /**
   * Learns why a bundle that should run does not, by starting it once more: whoever started it
   * first kept the reason for himself.
   */
  void ask(Bundle bundle) {
    boolean should =
        couldStart(bundle)
            && !rests(bundle)
            && !leftOut.contains(bundle.getSymbolicName())
            && newest.newerThan(bundle).isEmpty()
            && bundle.adapt(BundleStartLevel.class).isPersistentlyStarted();
    if (!should || refusal(bundle).isPresent()) {
      return;
    }
    try {
      bundle.start(Bundle.START_TRANSIENT);
    } catch (BundleException | IllegalStateException refused) {
      Throwable reason = refused.getCause() == null ? refused : refused.getCause();
      refusals.put(bundle.getBundleId(), new Refusal(bundle.getLastModified(), reason.toString()));
    }
  }

  /** Returns whether its turn has not come: a call on the command line leaves the window's part. */
  private boolean rests(Bundle bundle) {
    BundleStartLevel turn = bundle.adapt(BundleStartLevel.class);
    return (bundle.getState() & (Bundle.INSTALLED | Bundle.RESOLVED)) != 0
        && turn.isPersistentlyStarted()
        && turn.getStartLevel() > reached.getStartLevel();
  }

  private boolean couldStart(Bundle bundle) {
    return bundle.getState() == Bundle.RESOLVED
        ? !isFragment(bundle)
        : bundle.getState() == Bundle.INSTALLED && needs.of(bundle).isEmpty();
  }

  private Optional<Refusal> refusal(Bundle bundle) {
    return Optional.ofNullable(refusals.get(bundle.getBundleId()))
        .filter(refusal -> refusal.lastModified() == bundle.getLastModified());
  }

  private static boolean isFragment(Bundle bundle) {
    BundleRevision revision = bundle.adapt(BundleRevision.class);
    return revision != null && (revision.getTypes() & BundleRevision.TYPE_FRAGMENT) != 0;
  }

  private static boolean isLazy(Bundle bundle) {
    String policy = bundle.getHeaders("").get("Bundle-ActivationPolicy");
    return policy != null && policy.startsWith("lazy");
  }
}
