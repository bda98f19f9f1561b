package org.fettlebench.desktop;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Colours and fonts, so that every page looks like one hand drew it. Owned by the window: a page
 * never disposes of them, and asks anew each time it paints, since theme and text size may change
 * while the page stands. The window puts the new fonts and colours on every control that carries
 * one of these; only what a page paints itself, or sized by {@link #scale()}, is the page's own
 * care.
 */
@ProviderType
public interface Look {
  /** Returns the font of running text. */
  Font text();

  /** Returns the running font, heavier. */
  Font strong();

  /** Returns the font of a page's answer: the largest thing on it. */
  Font answer();

  /** Returns the font of a heading above a list or group. */
  Font heading();

  /** Returns the font of small remarks: sources, standing. */
  Font small();

  /** Returns the colour of the page behind everything. */
  Color ground();

  /** Returns the colour of lists and fields. */
  Color sheet();

  /** Returns the colour of the drawing paper: white in the light and the dark theme alike. */
  Color paper();

  /** Returns the colour of text. */
  Color ink();

  /** Returns the colour of lesser text. */
  Color faint();

  /** Returns the colour of rules between things. */
  Color rule();

  /** Returns the accent: what is chosen, and what governs. */
  Color accent();

  /** Returns the colour beside words that say something fits. */
  Color good();

  /** Returns the colour beside words that ask for care. */
  Color care();

  /** Returns the colour beside words that say something fails. */
  Color bad();

  /** Returns whether ink is light on a dark ground (the drawing paper stays white). */
  boolean dark();

  /** Returns how much larger than usual things are shown, 1.0 to 2.0. */
  double scale();
}
