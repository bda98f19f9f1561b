package org.fettlebench.holes.correct;

import org.fettlebench.drawing.Drawing;
import org.fettlebench.measure.LengthUnit;
import org.osgi.annotation.versioning.ProviderType;

/** Turns readings at a real hole into its centre; pure. */
@ProviderType
public interface HoleMeasuring {
  /**
   * Fits the centre.
   *
   * @throws HoleException if the readings do not fix a place: fewer than two, all from edges that
   *     are parallel or from spots in one line, or circles that do not meet; with the remedy
   */
  MeasuredHole measure(MeasuringQuestion question);

  /**
   * Draws what was measured to scale: references, hole, readings as dimensions.
   *
   * @param unit of the figures
   */
  Drawing draw(MeasuredHole hole, LengthUnit unit);
}
