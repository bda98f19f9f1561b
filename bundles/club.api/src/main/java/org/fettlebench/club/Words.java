package org.fettlebench.club;

/** What every short text in the club's books must be: one line, not too long, no blanks around. */
final class Words {
  private Words() {}

  /** Returns a text that may be empty, without the blanks around it. */
  static String optional(String what, String text, int most) {
    String words = text.strip();
    if (!(words.length() <= most)) {
      throw new ClubException(
          "%s '%s...' has %d characters; at most %d can be kept, so shorten it"
              .formatted(what, words.substring(0, 20), words.length(), most));
    }
    if (hasControls(words)) {
      throw new ClubException(
          "%s '%s' must be one line, without tabs or line ends"
              .formatted(what, words.replaceAll("\\p{Cntrl}", "?")));
    }
    return words;
  }

  /** A plain loop, because every line of a big stock comes through here. */
  private static boolean hasControls(String words) {
    for (int i = 0; i < words.length(); i++) {
      if (Character.isISOControl(words.charAt(i))) {
        return true;
      }
    }
    return false;
  }

  /** Returns a text that may not be empty, without the blanks around it. */
  static String needed(String what, String text, int most) {
    String words = optional(what, text, most);
    if (words.isEmpty()) {
      throw new ClubException(what + " is missing; give it");
    }
    return words;
  }

  /** Returns a quantity that is above nothing. */
  static int aboveNothing(String what, int quantity) {
    if (!(quantity > 0)) {
      throw new ClubException("%s is %d; it must be 1 or more".formatted(what, quantity));
    }
    return quantity;
  }

  /** Returns a quantity that may be nothing. */
  static int notBelowNothing(String what, int quantity) {
    if (!(quantity >= 0)) {
      throw new ClubException("%s is %d; it cannot be below nothing".formatted(what, quantity));
    }
    return quantity;
  }
}
