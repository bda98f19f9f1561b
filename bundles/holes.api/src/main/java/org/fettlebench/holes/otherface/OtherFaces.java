package org.fettlebench.holes.otherface;

import org.fettlebench.drawing.Drawing;
import org.fettlebench.measure.LengthUnit;
import org.osgi.annotation.versioning.ProviderType;

/** Marks holes that are drilled from the other face; pure. */
@ProviderType
public interface OtherFaces {
  /**
   * Works the mark out.
   *
   * @throws org.fettlebench.holes.correct.HoleException if an outline or a figure cannot be, the
   *     mark lies off the far face, or it cannot be measured from two edges there; with the remedy
   */
  FaceMark mark(MarkQuestion question);

  /**
   * Draws the far face to scale as the person sees it: outline with its corners numbered, the mark,
   * the hole, both distances square to their edges, the upper face in hidden lines.
   *
   * @param unit of the figures
   */
  Drawing draw(FaceMark mark, LengthUnit unit);

  /**
   * Draws the upper face to scale as it is seen before the part is turned, with the same corner
   * numbers, so that both pictures can be held against the part.
   *
   * @param unit of the figures
   */
  Drawing drawAbove(FaceMark mark, LengthUnit unit);
}
