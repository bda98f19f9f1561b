package org.fettlebench.desktop.threads.internal.sheet;

import org.eclipse.swt.graphics.GC;

/** Cuts words to the room there is, with an ellipsis at the end. */
public final class Elided {
  private Elided() {}

  /** Returns the text, or its beginning that finds room in so many pixels of the GC's font. */
  public static String to(GC gc, String text, int width) {
    if (gc.textExtent(text).x <= width) {
      return text;
    }
    int low = 0;
    int high = text.length();
    while (low < high) {
      int middle = (low + high + 1) / 2;
      if (gc.textExtent(text.substring(0, middle) + "\u2026").x <= width) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low == 0 ? "" : text.substring(0, low).strip() + "\u2026";
  }
}
