package org.fettlebench.fits;

import java.util.List;
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
  default Drawing draw(SeatAnswer answer, LengthUnit unit) {
    return draw(answer, List.of(), unit);
  }

  /**
   * Draws the same with how far the hole may be out in every direction: thin spokes from the
   * intended centre to where the allowed centres end, dashed where it has to move so far first.
   *
   * @param answer what to draw
   * @param rose of {@link Seats#rose} for the same question; empty to leave it out
   * @param unit of the figures on the drawing
   */
  Drawing draw(SeatAnswer answer, List<Reach> rose, LengthUnit unit);
}
