package org.fettlebench.modules.internal;

import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.Constants;
import org.osgi.framework.wiring.BundleCapability;
import org.osgi.framework.wiring.BundleRequirement;
import org.osgi.framework.wiring.BundleRevision;
import org.osgi.framework.wiring.FrameworkWiring;
import org.osgi.resource.Namespace;

/** Says what a bundle lacks that the framework could not join with the others. */
final class Needs {
  private final FrameworkWiring wiring;

  Needs(BundleContext context) {
    wiring = context.getBundle(Constants.SYSTEM_BUNDLE_LOCATION).adapt(FrameworkWiring.class);
  }

  /**
   * Returns in one sentence what keeps a bundle from being resolved; empty if nothing is lacking.
   */
  Optional<String> of(Bundle bundle) {
    List<BundleRequirement> mandatory =
        bundle.adapt(BundleRevision.class).getDeclaredRequirements(null).stream()
            .filter(Needs::mandatory)
            .toList();
    List<String> absent =
        mandatory.stream().filter(need -> offers(need).isEmpty()).map(Needs::words).toList();
    if (!absent.isEmpty()) {
      return Optional.of("needs " + String.join(" and ", absent) + ", which nothing offers");
    }
    List<String> waiting =
        mandatory.stream().filter(this::offeredOnlyByUnresolved).map(Needs::words).toList();
    if (!waiting.isEmpty()) {
      return Optional.of(
          "needs " + String.join(" and ", waiting) + " of a module that does not work itself");
    }
    return Optional.empty();
  }

  private Collection<BundleCapability> offers(BundleRequirement need) {
    return wiring.findProviders(need);
  }

  private boolean offeredOnlyByUnresolved(BundleRequirement need) {
    return offers(need).stream()
        .map(offer -> offer.getRevision().getBundle())
        .filter(Objects::nonNull)
        .allMatch(provider -> provider.getState() == Bundle.INSTALLED);
  }

  private static boolean mandatory(BundleRequirement need) {
    String resolution = need.getDirectives().get(Namespace.REQUIREMENT_RESOLUTION_DIRECTIVE);
    String effective = need.getDirectives().get(Namespace.REQUIREMENT_EFFECTIVE_DIRECTIVE);
    boolean now = effective == null || effective.equals(Namespace.EFFECTIVE_RESOLVE);
    return now && !Stream.of("optional", "dynamic").anyMatch(word -> word.equals(resolution));
  }

  private static String words(BundleRequirement need) {
    String filter = need.getDirectives().getOrDefault(Namespace.REQUIREMENT_FILTER_DIRECTIVE, "");
    String plain =
        switch (need.getNamespace()) {
          case "osgi.wiring.package" -> "the package ";
          case "osgi.wiring.bundle", "osgi.wiring.host" -> "the bundle ";
          case "osgi.ee" -> "the Java environment ";
          default -> "the capability " + need.getNamespace() + " ";
        };
    return plain + readable(filter, need.getNamespace());
  }

  /** Turns {@code (&(osgi.wiring.package=a.b)(version>=1.0.0))} into {@code a.b from 1.0.0}. */
  private static String readable(String filter, String namespace) {
    String name = first(Pattern.quote(namespace) + "=([^)]*)\\)", filter).orElse(filter);
    // A version that is to be stayed under stands behind a 'not'.
    String from = first("(?<!!)\\(version>=([^)]*)\\)", filter).map(v -> " from " + v).orElse("");
    String under = first("!\\(version>=([^)]*)\\)", filter).map(v -> " under " + v).orElse("");
    return name + from + under;
  }

  private static Optional<String> first(String pattern, String text) {
    return Pattern.compile(pattern)
        .matcher(text)
        .results()
        .map(found -> found.group(1))
        .findFirst();
  }
}
