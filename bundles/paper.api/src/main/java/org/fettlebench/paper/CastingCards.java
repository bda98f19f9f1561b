package org.fettlebench.paper;

import java.io.IOException;
import java.io.OutputStream;
import org.fettlebench.castings.Placing;
import org.fettlebench.measure.LengthUnit;
import org.osgi.annotation.versioning.ProviderType;

/** Puts a placed casting on a page to take to the surface plate: A4, as PDF. */
@ProviderType
public interface CastingCards {
  /**
   * Writes the marking-out card: one page, upright. The verdict, the views that matter to scale
   * with a line to measure after printing, where to set out from and what to scribe, what comes off
   * each face, what would have to give, boxes for what came out, cautions.
   *
   * @param placing what to mark out
   * @param holdsPressure whether the finished part holds steam or pressure
   * @param first unit shown first where both are shown
   * @param pdf takes the bytes; is not closed
   * @throws IOException if the stream cannot take them
   */
  void card(Placing placing, boolean holdsPressure, LengthUnit first, OutputStream pdf)
      throws IOException;

  /**
   * Writes the views that matter alone: one page, upright, each to a standard scale.
   *
   * @param placing what to draw
   * @param first unit of the figures
   * @param pdf takes the bytes; is not closed
   * @throws IOException if the stream cannot take them
   */
  void views(Placing placing, LengthUnit first, OutputStream pdf) throws IOException;
}
