package org.fettlebench.drawing;

import java.util.List;

/**
 * A drawing: items from the bottom up, and the box of the real thing that it shows.
 *
 * @param title for people and for screen readers: what the drawing shows, in one sentence
 * @param items drawn in this order
 * @param frame the part of the plane to show
 */
public record Drawing(String title, List<Item> items, Frame frame) {
  /** Copies what could change. */
  public Drawing {
    items = List.copyOf(items);
  }

  /**
   * A box in millimetres of the real thing.
   *
   * @param minXMm left
   * @param minYMm near
   * @param maxXMm right; greater than left
   * @param maxYMm far; greater than near
   */
  public record Frame(double minXMm, double minYMm, double maxXMm, double maxYMm) {
    /** Refuses an empty box. */
    public Frame {
      if (!(maxXMm > minXMm && maxYMm > minYMm)) {
        throw new IllegalArgumentException("a drawing needs a frame with width and height");
      }
    }
  }
}
