package org.fettlebench.drawing;

/**
 * Where a drawing lies on a sheet of paper.
 *
 * @param scale millimetres on paper for one of the real thing; above nothing
 * @param leftMm paper x of the real zero
 * @param topMm paper y of the real zero, downwards
 * @param widthMm of the sheet
 * @param heightMm of the sheet
 */
public record Placement(
    double scale, double leftMm, double topMm, double widthMm, double heightMm) {
  /** Refuses a scale that shows nothing. */
  public Placement {
    if (!(scale > 0 && Double.isFinite(scale))) {
      throw new IllegalArgumentException("a scale of " + scale + ":1 shows nothing");
    }
  }
}
