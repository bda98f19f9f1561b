package org.fettlebench.tooling.risk;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Sorts of taps, as far as the torque depends on them. */
public enum TapSort {
  /** First hand tap, long lead. */
  TAPER("taper", "taper hand tap"),
  /** Second hand tap, also called plug. */
  SECOND("second", "second hand tap"),
  /** Bottoming hand tap, shortest lead. */
  BOTTOMING("bottoming", "bottoming hand tap"),
  /** Spiral flutes, which lift the chips out of a blind hole. */
  SPIRAL_FLUTE("spiral-flute", "spiral fluted tap"),
  /** Spiral point, which drives the chips ahead through a through hole. */
  SPIRAL_POINT("spiral-point", "spiral pointed tap");

  private final String word;
  private final String title;

  TapSort(String word, String title) {
    this.word = word;
    this.title = title;
  }

  /** Finds a sort by its word, whatever the capitals, and with spaces for hyphens. */
  public static Optional<TapSort> ofWord(String typed) {
    String plain = typed.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
    return Arrays.stream(values()).filter(sort -> sort.word.equals(plain)).findFirst();
  }

  /** Returns the word for it in a table file and on the command line. */
  public String word() {
    return word;
  }

  /** Returns the name for people. */
  public String title() {
    return title;
  }
}
