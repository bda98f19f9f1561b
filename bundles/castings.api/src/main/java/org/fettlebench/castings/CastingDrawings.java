package org.fettlebench.castings;

import org.fettlebench.drawing.Drawing;
import org.fettlebench.measure.LengthUnit;
import org.osgi.annotation.versioning.ProviderType;

/** Draws placed castings to scale. */
@ProviderType
public interface CastingDrawings {
  /**
   * Draws the rough outline as measured, the finished part inside it, the metal that comes off, and
   * what governs.
   *
   * @param placing what to draw
   * @param view from where
   * @param unit of the figures on the drawing
   */
  Drawing draw(Placing placing, CastingView view, LengthUnit unit);
}
