package org.fettlebench.threads.internal;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A known thread with something behind it that looks like a class and is none of its. */
final class ClassSlip {
  private static final int MOST_NAMED = 3;
  private static final Pattern LIKE_A_CLASS =
      Pattern.compile("(.*\\S)[\\s-]+(\\d{1,2}[a-zA-Z]{1,2}(?:/\\w{1,4})?)");

  private ClassSlip() {}

  /** Returns what to say of such a designation; empty for any other. */
  static Optional<String> refusal(String designation, ThreadRegistry threads) {
    if (designation.length() > DesignationText.LONGEST) {
      return Optional.empty();
    }
    Matcher parts = LIKE_A_CLASS.matcher(designation.strip());
    if (!parts.matches()) {
      return Optional.empty();
    }
    return threads
        .find(parts.group(1))
        .map(
            thread -> {
              String known =
                  threads.classes(thread).stream()
                      .limit(MOST_NAMED)
                      .collect(Collectors.joining(", "));
              return "%s is a thread, but \"%s\" behind it is no class of its%s"
                  .formatted(
                      thread.designation(),
                      parts.group(2),
                      known.isEmpty() ? "" : "; such are " + known);
            });
  }
}
