package org.fettlebench.desktop.widgets;

import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Display;

/** Puts text and pictures on the clipboard. */
public final class Copying {
  private Copying() {}

  /** Copies a text that is not empty. */
  public static void text(Display display, String text) {
    put(display, text, TextTransfer.getInstance());
  }

  /** Copies a picture. */
  public static void picture(Display display, ImageData picture) {
    put(display, picture, ImageTransfer.getInstance());
  }

  private static void put(Display display, Object thing, Transfer as) {
    Clipboard clipboard = new Clipboard(display);
    clipboard.setContents(new Object[] {thing}, new Transfer[] {as});
    clipboard.dispose();
  }
}
