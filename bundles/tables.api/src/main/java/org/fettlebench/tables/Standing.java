package org.fettlebench.tables;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** How far a figure may be trusted; shown wherever the figure is shown. */
public enum Standing {
  /** Printed in a standard or handbook that is named. */
  PUBLISHED("published"),
  /** Worked out by the rule of a standard that is named. */
  RULE("by rule"),
  /** Measured by the club itself. */
  MEASURED("measured by the club"),
  /** A habit of the trade without a source. */
  COMMON_PRACTICE("common practice, no source"),
  /** Remembered; no page was seen. */
  FROM_MEMORY("from memory");

  private final String words;

  Standing(String words) {
    this.words = words;
  }

  /** Returns the words as they stand in a table file and on the screen. */
  public String words() {
    return words;
  }

  /** Returns the standing of the given words, whatever their capitals; empty if there is none. */
  public static Optional<Standing> ofWords(String words) {
    String plain = words.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(standing -> standing.words.equals(plain)).findFirst();
  }

  /** Returns the words of all standings, for messages. */
  static String allWords() {
    return Arrays.stream(values()).map(Standing::words).collect(Collectors.joining("; "));
  }
}
