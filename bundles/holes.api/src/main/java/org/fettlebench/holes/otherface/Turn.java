package org.fettlebench.holes.otherface;

import org.fettlebench.measure.Point;

/** How the person turns the part over to look at its other face. */
public enum Turn {
  /** Like a page of a book: what was right is left, what was away stays away. */
  SIDEWAYS("turned over sideways, like a page of a book") {
    @Override
    public Point seen(Point fromAbove) {
      return new Point(0 - fromAbove.xMm(), fromAbove.yMm());
    }
  },
  /** Like a sheet of a notepad: what was away is near, what was right stays right. */
  ENDWAYS("turned over towards you, like a sheet of a notepad") {
    @Override
    public Point seen(Point fromAbove) {
      return new Point(fromAbove.xMm(), 0 - fromAbove.yMm());
    }
  };

  private final String words;

  Turn(String words) {
    this.words = words;
  }

  /** Returns how the part is turned, in words. */
  public String words() {
    return words;
  }

  /**
   * Returns where a place stands once the part is turned, the datum staying where it is. Done twice
   * it gives the place again.
   *
   * @param fromAbove the place as seen from above before the part is turned
   */
  public abstract Point seen(Point fromAbove);
}
