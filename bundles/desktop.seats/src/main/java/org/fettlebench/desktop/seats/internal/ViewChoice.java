package org.fettlebench.desktop.seats.internal;

/** What the drawing shows. */
enum ViewChoice {
  /** The seat, to be worked on. */
  SEAT("Seat"),
  /** The face with the side to file. */
  FACE("Where to file"),
  /** The hole alone, enlarged. */
  HOLE("Hole, enlarged"),
  /** The far face, as seen when the part is turned over. */
  OTHER_FACE("From the other face");

  private final String words;

  ViewChoice(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }
}
