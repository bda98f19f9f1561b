package org.fettlebench.desktop.stock.internal;

/** What can be done with a line, each by one letter. */
enum Deed {
  TAKE('T', "&Take", "Take", "Take"),
  PUT_BACK('P', "&Put back", "Put back", "Put back"),
  COUNT('C', "&Count", "Count", "Enter the count"),
  SCRAP('S', "&Scrap", "Scrap", "Scrap"),
  LEND('L', "&Lend", "Lend", "Lend"),
  GIVE_BACK('B', "&Back from loan", "Back from loan", "Take back");

  private final char letter;
  private final String button;
  private final String heading;
  private final String doing;

  Deed(char letter, String button, String heading, String doing) {
    this.letter = letter;
    this.button = button;
    this.heading = heading;
    this.doing = doing;
  }

  char letter() {
    return letter;
  }

  /** Returns the text of its button, an ampersand before its letter. */
  String button() {
    return button;
  }

  String title() {
    return button.replace("&", "");
  }

  String heading() {
    return heading;
  }

  /** Returns the text of the button that does it. */
  String doing() {
    return doing;
  }

  String question() {
    return this == COUNT ? "How many are there" : "How many";
  }

  /** Returns whether it is about one member, whoever may be at the keyboard. */
  boolean concernsBorrower() {
    return this == LEND || this == GIVE_BACK;
  }
}
