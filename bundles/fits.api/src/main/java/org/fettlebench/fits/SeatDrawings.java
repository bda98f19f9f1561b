package org.fettlebench.fits;

import org.fettlebench.drawing.Drawing;
import org.fettlebench.measure.LengthUnit;
import org.osgi.annotation.versioning.ProviderType;

/** Draws an answered seat to scale. */
@ProviderType
public interface SeatDrawings {
  /**
   * Draws the seat as measured with its walls, the head as it will sit, the allowed centres, the
   * intended and the best centre, and the governing feature with its figure.
   *
   * @param answer what to draw
   * @param unit of the figures on the drawing
   */
  Drawing draw(SeatAnswer answer, LengthUnit unit);
}
