package org.fettlebench.kits.internal;

import java.util.Optional;
import java.util.regex.Pattern;
import org.fettlebench.measure.Length;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;

/** Reads the diameter of a hole, as a length or by its drill's name: No 9. */
final class DrilledSize {
  /** A number or letter drill; everything else is a length. */
  private static final Pattern DRILL_NAME =
      Pattern.compile("(?:no\\.?|#)\\s*\\d{1,2}|[a-z]", Pattern.CASE_INSENSITIVE);

  private DrilledSize() {}

  static Optional<Length> read(Section section, String key, Drills drills) {
    return section
        .value(key)
        .filter(String.class::isInstance)
        .map(value -> ((String) value).strip())
        .filter(text -> DRILL_NAME.matcher(text).matches())
        .flatMap(drills::find)
        .map(DrillSize::diameter)
        .or(() -> section.positive(key));
  }
}
