package org.fettlebench.tooling.speed;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a spindle is to do. */
public enum CuttingOperation {
  /** Drilling with a twist drill. */
  DRILL("drill"),
  /** Countersinking; the diameter is that of the finished countersink at the face. */
  COUNTERSINK("countersink"),
  /** Counterboring and spot facing; the diameter is that of the cutter. */
  COUNTERBORE("counterbore"),
  /** Reaming under power. */
  REAM("ream"),
  /** Tapping under power; the diameter is the thread's major diameter. */
  TAP("tap");

  private final String word;

  CuttingOperation(String word) {
    this.word = word;
  }

  /** Finds an operation by its word, whatever the capitals. */
  public static Optional<CuttingOperation> ofWord(String typed) {
    String plain = typed.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(operation -> operation.word.equals(plain)).findFirst();
  }

  /** Returns the word for it in a table file and on the command line. */
  public String word() {
    return word;
  }
}
