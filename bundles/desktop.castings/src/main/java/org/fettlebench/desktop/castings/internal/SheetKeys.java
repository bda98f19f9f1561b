package org.fettlebench.desktop.castings.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Text;

/** Keys of the page that belong to no single control on it. */
final class SheetKeys {
  private final CastingSheet sheet;
  private final Deeds deeds;

  SheetKeys(CastingSheet sheet, Deeds deeds) {
    this.sheet = sheet;
    this.deeds = deeds;
  }

  /** Listens as long as the page stands; hears nothing while another page is in front. */
  void watch() {
    Listener filter = this::key;
    sheet.getDisplay().addFilter(SWT.KeyDown, filter);
    sheet.addListener(SWT.Dispose, event -> sheet.getDisplay().removeFilter(SWT.KeyDown, filter));
  }

  private void key(Event event) {
    boolean front = sheet.isVisible() && sheet.getDisplay().getActiveShell() == sheet.getShell();
    boolean command = (event.stateMask & SWT.MOD1) != 0;
    if (front && command && handled(event)) {
      event.doit = false;
      event.type = SWT.None;
    }
  }

  private boolean handled(Event event) {
    boolean shift = (event.stateMask & SWT.SHIFT) != 0;
    switch (event.keyCode) {
      case 'z' -> {
        if (shift) {
          sheet.redo();
        } else {
          sheet.undo();
        }
      }
      case 'y' -> sheet.redo();
      case 'o' -> deeds.open();
      case 's' -> deeds.save();
      case SWT.DEL -> sheet.takeAway();
      case 'c' -> {
        if (!shift && (event.widget instanceof Text || event.widget == sheet.canvas())) {
          return false;
        }
        deeds.copy();
      }
      default -> {
        return false;
      }
    }
    return true;
  }
}
