package org.fettlebench.holes.patterns;

import org.fettlebench.drawing.Drawing;
import org.fettlebench.measure.LengthUnit;
import org.osgi.annotation.versioning.ProviderType;

/** Draws measured patterns to scale. */
@ProviderType
public interface PatternDrawings {
  /**
   * Draws the holes of the upper part and those of the lower part moved to where they fit best, the
   * fasteners' passage, the governing holes and what to file.
   *
   * @param fit what to draw
   * @param unit of the figures on the drawing
   */
  Drawing draw(PatternFit fit, LengthUnit unit);
}
