package org.fettlebench.product;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Holds the features against what the build has made; finds all faults at once. */
final class PartsCheck {
  private static final Predicate<String> NEVER_SHIPPED =
      name ->
          name.startsWith("sample.")
              || name.endsWith(".itest")
              || name.startsWith("testkit.")
              || Set.of("testkit", "benchmarks").contains(name);

  private final List<Part> parts;
  private final Set<String> reactor;
  private final Set<String> jars;
  private final List<String> faults = new ArrayList<>();

  /**
   * @param parts what the features name
   * @param reactor folder names under bundles/ that the parent builds
   * @param jars file names of the jars that the product depends on
   */
  PartsCheck(List<Part> parts, Set<String> reactor, Set<String> jars) {
    this.parts = parts;
    this.reactor = reactor;
    this.jars = jars;
  }

  /**
   * Checks everything.
   *
   * @throws AssemblyException naming every fault with its remedy
   */
  void check() {
    namedOnce();
    present();
    nothingLeftOut();
    nothingSecret();
    if (!faults.isEmpty()) {
      throw new AssemblyException(
          "The features do not fit the build:\n  " + String.join("\n  ", faults));
    }
  }

  private void namedOnce() {
    Map<String, String> seen = new HashMap<>();
    for (Part part : parts) {
      String before = seen.put(part.group() + ":" + part.artifact(), part.feature());
      if (before != null) {
        faults.add(
            "%s is named by %s and by %s; leave it in one"
                .formatted(part.artifact(), before, part.feature()));
      }
    }
  }

  private void present() {
    for (Part part : parts) {
      if (!jars.contains(part.file())) {
        faults.add(
            "%s names %s, which is not there; add the dependency to product/pom.xml or mend the"
                    .formatted(part.feature(), part.file())
                + " version");
      }
    }
  }

  private void nothingLeftOut() {
    Set<String> named = parts.stream().map(Part::file).collect(Collectors.toSet());
    new TreeSet<>(jars)
        .stream()
            .filter(jar -> !named.contains(jar))
            .forEach(
                jar ->
                    faults.add(
                        jar + " is a part of the product, but no feature names it; name it"));
    Set<String> ours =
        parts.stream()
            .filter(Part::ours)
            .map(part -> part.artifact().substring("org.fettlebench.".length()))
            .collect(Collectors.toSet());
    new TreeSet<>(reactor)
        .stream()
            .filter(NEVER_SHIPPED.negate())
            .filter(folder -> !ours.contains(folder))
            .forEach(folder -> faults.add("bundles/" + folder + " is in no feature; add it"));
  }

  private void nothingSecret() {
    parts.stream()
        .filter(Part::ours)
        .filter(part -> NEVER_SHIPPED.test(part.artifact().substring("org.fettlebench.".length())))
        .forEach(
            part ->
                faults.add(
                    "%s names %s, which is never shipped; take it out"
                        .formatted(part.feature(), part.artifact())));
  }
}
