package org.fettlebench.desktop.widgets;

import org.eclipse.swt.graphics.Color;
import org.fettlebench.desktop.Look;

/**
 * The shape that stands beside a verdict's word. Each reads in black and white: the word comes
 * first, weight and shape second, colour last.
 */
public enum VerdictMark {
  /** It fits: a tick. */
  TICK,
  /** It asks for care: a ring, half filled. */
  HALF,
  /** It fails: a filled disc, struck through. */
  STRUCK,
  /** Not known yet: an open ring. */
  OPEN;

  /** Returns the colour that goes with the shape. */
  public Color colour(Look look) {
    return switch (this) {
      case TICK -> look.good();
      case HALF -> look.care();
      case STRUCK -> look.bad();
      case OPEN -> look.faint();
    };
  }
}
