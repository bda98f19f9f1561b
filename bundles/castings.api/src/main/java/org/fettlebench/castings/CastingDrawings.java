package org.fettlebench.castings;

import java.util.Set;
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

  /**
   * Draws the same with the names and figures of some features only, for sheets on which several
   * views stand together and each figure is to stand once.
   *
   * @param named features whose names and figures are written, as far as the view shows them
   */
  Drawing draw(Placing placing, CastingView view, LengthUnit unit, Set<Feature> named);
}
