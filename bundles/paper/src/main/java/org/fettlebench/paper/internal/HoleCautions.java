package org.fettlebench.paper.internal;

/** The usual short cautions with work on a hole. Common practice, no source. */
final class HoleCautions {
  static final String DRILLING =
      "Clamp the work, guard the spindle, take the chuck key out, wear eye protection. A drill"
          + " grabs in a hole that is there already: keep the work clamped and feed gently. Never put"
          + " a finger in the hole; brush swarf away.";

  private HoleCautions() {}
}
