package org.fettlebench.holes.internal.otherface;

import org.fettlebench.holes.correct.Direction;

/** Names the sides of a face as the person who looks at it does. */
final class SideNames {
  private static final String[] SIDES = {"right-hand", "far", "left-hand", "near"};

  private SideNames() {}

  /** Returns the name of the side whose outward direction is given. */
  static String of(Direction outward) {
    return SIDES[(int) Math.floor((outward.degrees() + 45) / 90) % 4];
  }
}
