package org.fettlebench.drawing;

import org.osgi.annotation.versioning.ConsumerType;

/** The letters of a medium, so that words find the room they need. Sizes are mm on paper. */
@ConsumerType
public interface Lettering {
  /** Letters 3.5 mm high (ISO 3098) of usual width, for media that cannot be asked. */
  Lettering USUAL =
      new Lettering() {
        @Override
        public double heightMm() {
          return Plotter.TEXT_MM;
        }

        @Override
        public double lengthMm(String words, boolean strong) {
          return words.length() * Plotter.TEXT_MM * Plotter.LETTER_SHARE;
        }
      };

  /** Returns the height of a line of letters, above nothing. */
  double heightMm();

  /**
   * Returns the length of words.
   *
   * @param strong whether they are set heavier
   */
  double lengthMm(String words, boolean strong);
}
