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

  private record Way(Pattern pattern, UnaryOperator<String> writing) {}

  private static final List<Way> WAYS =
      List.of(
          // Only here do capitals tell the nut from the screw.
          way(
              "^(m\\s*[\\d.]+(?:\\s*[x-]\\s*[\\d.]+)?)[\\s-]+("
                  + METRIC
                  + "(?:\\s*/\\s*"
                  + METRIC
                  + ")?)$",
              UnaryOperator.identity()),
          way(
              "^(.*?\\S)(?:[\\s-]+|(?<=n[cfs])|(?<=nef)|(?<=un))([123][ab](?:\\s*/\\s*[123][ab])?)$",
              text -> text.toUpperCase(Locale.ROOT)),
          way("^(g[\\s\\d/-]*\\d)[\\s-]*([ab])$", text -> text.toUpperCase(Locale.ROOT)),
          way(
              "^(.*?\\S)[\\s,-]+(close|medium|free|normal)(?:\\s+(?:class|fit))?$",
              text -> text.toLowerCase(Locale.ROOT)));

  private static Way way(String pattern, UnaryOperator<String> writing) {
    return new Way(Pattern.compile(pattern, Pattern.CASE_INSENSITIVE), writing);
  }

  /** Parts a text whose signs are plain. */
  static ClassText of(String text) {
    for (Way way : WAYS) {
      Matcher parts = way.pattern().matcher(text);
      if (parts.matches()) {
        String written = way.writing().apply(parts.group(2)).replaceAll("\\s+", "");
        return new ClassText(parts.group(1), Optional.of(written));
      }
    }
    return new ClassText(text, Optional.empty());
  }
}
