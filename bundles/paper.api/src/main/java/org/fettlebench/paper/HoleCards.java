package org.fettlebench.paper;

import java.io.IOException;
import java.io.OutputStream;
import org.fettlebench.holes.correct.CorrectionAnswer;
import org.fettlebench.holes.otherface.FaceMark;
import org.fettlebench.measure.LengthUnit;
import org.osgi.annotation.versioning.ProviderType;

/** Puts the correction of a hole, and the marking-out of one, on a page to take to the bench. */
@ProviderType
public interface HoleCards {
  /**
   * Writes the card of a correction: one page, upright. Which side to file and how much, the face
   * and the hole to scale, the order of work, what remains possible, what to measure afterwards.
   *
   * @param name of the part or the place, for the head of the card
   * @param answer what to do
   * @param first unit shown first where both are shown
   * @param pdf takes the bytes; is not closed
   * @throws IOException if the stream cannot take them
   */
  void correctionCard(String name, CorrectionAnswer answer, LengthUnit first, OutputStream pdf)
      throws IOException;

  /**
   * Writes the card of marking out from the other face: one page, upright. How to turn the part,
   * the two distances, the face to scale as it is then seen, and small the face as it was before.
   *
   * @param mark where to mark
   * @param first unit shown first where both are shown
   * @param pdf takes the bytes; is not closed
   * @throws IOException if the stream cannot take them
   */
  void markingCard(FaceMark mark, LengthUnit first, OutputStream pdf) throws IOException;
}
