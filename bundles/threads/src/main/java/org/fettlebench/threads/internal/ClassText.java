package org.fettlebench.threads.internal;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A designation parted into the thread and its class.
 *
 * @param thread what stands before the class
 * @param threadClass as the standard writes it; empty if there is none
 */
record ClassText(String thread, Optional<String> threadClass) {
  private static final String METRIC = "[3-9][a-hA-H](?:[3-9][a-hA-H])?";

  /** A way of writing a class, and the signs that such a text begins and ends with. */
  private record Way(String begins, String ends, Pattern pattern, UnaryOperator<String> writing) {
    /** Whether a text may be written so; spares the pattern where it cannot be. */
    boolean fits(String text) {
      return !text.isEmpty()
          && (begins.isEmpty() || begins.indexOf(Character.toLowerCase(text.charAt(0))) >= 0)
          && ends.indexOf(Character.toLowerCase(text.charAt(text.length() - 1))) >= 0;
    }
  }

  private static final List<Way> WAYS =
      List.of(
          // Only here do capitals tell the nut from the screw.
          way(
              "m",
              "abcdefgh",
              "^(m\\s*[\\d.]+(?:\\s*[x-]\\s*[\\d.]+)?)[\\s-]+("
                  + METRIC
                  + "(?:\\s*/\\s*"
                  + METRIC
                  + ")?)$",
              UnaryOperator.identity()),
          way(
              "",
              "ab",
              "^(.*?\\S)(?:[\\s-]+|(?<=n[cfs])|(?<=nef)|(?<=un))([123][ab](?:\\s*/\\s*[123][ab])?)$",
              text -> text.toUpperCase(Locale.ROOT)),
          way(
              "g",
              "ab",
              "^(g[\\s\\d./-]*\\d)[\\s-]*([ab])$",
              text -> text.toUpperCase(Locale.ROOT)),
          way(
              "",
              // close, medium, free, normal, class, fit
              "emlst",
              "^(.*?\\S)[\\s,-]+(close|medium|free|normal)(?:\\s+(?:class|fit))?$",
              text -> text.toLowerCase(Locale.ROOT)));

  private static Way way(
      String begins, String ends, String pattern, UnaryOperator<String> writing) {
    return new Way(begins, ends, Pattern.compile(pattern, Pattern.CASE_INSENSITIVE), writing);
  }

  /** Parts a text whose signs are plain. */
  static ClassText of(String text) {
    for (Way way : WAYS) {
      if (!way.fits(text)) {
        continue;
      }
      Matcher parts = way.pattern().matcher(text);
      if (parts.matches()) {
        String written = way.writing().apply(parts.group(2)).replaceAll("\\s+", "");
        return new ClassText(parts.group(1), Optional.of(written));
      }
    }
    return new ClassText(text, Optional.empty());
  }
}
