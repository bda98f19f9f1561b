package org.fettlebench.castings;

/** Something of the part that is to be finished out of the rough. */
public sealed interface Feature permits FlatFace, RoundFace {
  /** Returns its name for people. */
  String name();

  /** Returns the least that must come off for it to clean up; of a round one per side. */
  double leastCutMm();

  /** Returns how far its rough skin may lie from what was measured, 0 or more. */
  double uncertaintyMm();
}
