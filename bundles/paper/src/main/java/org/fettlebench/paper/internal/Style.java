package org.fettlebench.paper.internal;

/**
 * How words are set.
 *
 * @param points size
 * @param strong whether heavier
 * @param ink colour
 */
record Style(double points, boolean strong, Ink ink) {
  /** Title of a card. */
  static final Style TITLE = new Style(20, true, Ink.BLACK);

  /** Heading of a list. */
  static final Style HEADING = new Style(11.5, true, Ink.BLACK);

  /** Running text, readable at arm's length. */
  static final Style TEXT = new Style(10, false, Ink.BLACK);

  /** Running text, heavier. */
  static final Style STRONG = new Style(10, true, Ink.BLACK);

  /** Small remarks: sources, standing. */
  static final Style REMARK = new Style(8, false, Ink.FAINT);

  Style in(Ink other) {
    return new Style(points, strong, other);
  }

  /** Returns the distance from line to line, mm. */
  double lineMm() {
    return points * 25.4 / 72 * 1.25;
  }
}
