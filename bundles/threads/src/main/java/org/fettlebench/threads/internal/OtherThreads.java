package org.fettlebench.threads.internal;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Kinds of thread that the trade knows and no series here carries, by how they are written. */
final class OtherThreads {
  private static final String SIZE = "((?:\\d\\+)?\\d{1,2}(?:/\\d{1,2})?)";
  private static final String TAPER = "taper pipe threads (ISO 7-1: R, Rc, BSPT) are not carried";

  private record Kind(Pattern pattern, Function<Matcher, String> words) {}

  private static final List<Kind> KINDS =
      List.of(
          kind("(?:rc?|bspt|bsptaper)" + SIZE, OtherThreads::taper),
          kind(SIZE + "(?:-\\d{2})?(?:rc|bspt|bsptaper)", OtherThreads::taper),
          kind(
              "rp" + SIZE,
              found ->
                  "Rp (ISO 7-1) is not carried; G %s has the same size and pitch, but other limits"
                      .formatted(size(found))),
          kind(
              ".*np(?:t|tf|s|sm|sf)(?:[\\d+/-].*)?",
              found -> "American pipe threads (NPT, NPS) are not carried"),
          kind(
              "mj(\\d+(?:\\.\\d+)?(?:x\\d+(?:\\.\\d+)?)?).*",
              found ->
                  "MJ (ISO 5855) has a larger root radius and is not carried; M"
                      + found.group(1).replace("x", " x ")
                      + " has the same major diameter and pitch"),
          kind(
              ".*unj(?:[cf]|ef)?(?:[\\d.+/#-].*)?",
              found ->
                  "UNJ (ASME B1.15) has a larger root radius and is not carried; UNC, UNF and UNEF"
                      + " have the same major diameters and pitches"),
          kind("tr\\d.*", found -> "trapezoidal threads (ISO 2904) are not carried"),
          kind(".*acme.*", found -> "Acme threads (ASME B1.5) are not carried"),
          kind("pg\\d.*", found -> "steel conduit threads (Pg) are not carried"),
          kind(".*(?:bsc|cei|cycle)", found -> "cycle threads (BS 811) are not carried"));

  private OtherThreads() {}

  private static Kind kind(String pattern, Function<Matcher, String> words) {
    return new Kind(Pattern.compile(pattern), words);
  }

  /** Returns what to say of a designation brought to {@link DesignationText#key}. */
  static Optional<String> refusal(String key) {
    for (Kind kind : KINDS) {
      Matcher found = kind.pattern().matcher(key);
      if (found.matches()) {
        return Optional.of(kind.words().apply(found));
      }
    }
    return Optional.empty();
  }

  private static String taper(Matcher found) {
    return TAPER + "; G " + size(found) + " is the parallel one of that size";
  }

  private static String size(Matcher found) {
    return found.group(1).replace('+', ' ');
  }
}
