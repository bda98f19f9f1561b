package org.fettlebench.desktop.stock.internal;

import java.util.Locale;

/** Reads whole numbers as they are typed into a field. */
final class Whole {
  private Whole() {}

  /**
   * Returns the number.
   *
   * @param least 0 or 1
   * @throws IllegalArgumentException if it is none, or below the least; the message is for people
   */
  static int read(String what, String typed, int least) {
    String plain = typed.strip();
    if (plain.isEmpty()) {
      throw new IllegalArgumentException(what + " is missing; type a number such as 6");
    }
    if (!plain.matches("\\d{1,9}")) {
      throw new IllegalArgumentException(
          "\u201c" + plain + "\u201d is no whole number; type one such as 6");
    }
    int number = Integer.parseInt(plain);
    if (!(number >= least)) {
      throw new IllegalArgumentException(
          what.toLowerCase(Locale.ROOT) + " is " + number + "; it must be " + least + " or more");
    }
    return number;
  }
}
