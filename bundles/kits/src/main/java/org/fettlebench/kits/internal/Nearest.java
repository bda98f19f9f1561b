package org.fettlebench.kits.internal;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that somebody probably meant. */
final class Nearest {
  private Nearest() {}

  /** Returns the word that takes fewest changes of a letter, if that is fewer than half of them. */
  static Optional<String> to(String typed, Collection<String> words) {
    String plain = typed.toLowerCase(Locale.ROOT);
    return words.stream()
        .min(Comparator.comparingInt((String word) -> changes(plain, word)).thenComparing(w -> w))
        .filter(word -> 2 * changes(plain, word) <= Math.max(word.length(), 3));
  }

  /** Counts letters to put in, take out or change (Levenshtein's distance). */
  private static int changes(String one, String other) {
    int[] row = new int[other.length() + 1];
    for (int j = 0; j <= other.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= one.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= other.length(); j++) {
        int change = diagonal + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[other.length()];
  }
}
