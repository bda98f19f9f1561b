package org.fettlebench.holes.correct;

import org.fettlebench.drawing.Drawing;
import org.fettlebench.measure.LengthUnit;
import org.osgi.annotation.versioning.ProviderType;

/** Says what to do about a hole that is drilled; pure. */
@ProviderType
public interface Corrections {
  /**
   * Works out the correction.
   *
   * @throws HoleException if a figure is out of range
   * @throws org.fettlebench.fits.SeatException if the seat cannot be
   */
  CorrectionAnswer correct(CorrectionQuestion question);

  /**
   * Draws the face to scale: outline, target, hole as found, the way to file.
   *
   * @param unit of the figures
   */
  Drawing drawFace(CorrectionAnswer answer, LengthUnit unit);

  /**
   * Draws the hole alone, for a large scale: as found, the crescent to file with its figure, the
   * finished hole, the target.
   *
   * @param unit of the figures
   */
  Drawing drawHole(CorrectionAnswer answer, LengthUnit unit);
}
