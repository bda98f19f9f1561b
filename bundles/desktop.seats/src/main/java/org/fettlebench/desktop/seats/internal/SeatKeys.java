package org.fettlebench.desktop.seats.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Text;

/** Keys of the page that belong to no single control on it. */
final class SeatKeys {
  private final SeatView view;
  private final SeatDeeds deeds;

  SeatKeys(SeatView view, SeatDeeds deeds) {
    this.view = view;
    this.deeds = deeds;
  }

  /** Listens as long as the page stands; hears nothing while another page is in front. */
  void watch() {
    Listener filter = this::key;
    view.getDisplay().addFilter(SWT.KeyDown, filter);
    view.addListener(SWT.Dispose, event -> view.getDisplay().removeFilter(SWT.KeyDown, filter));
  }

  private void key(Event event) {
    boolean front = view.isVisible() && view.getDisplay().getActiveShell() == view.getShell();
    if (front && handled(event)) {
      event.doit = false;
      event.type = SWT.None;
    }
  }

  private boolean handled(Event event) {
    boolean command = (event.stateMask & SWT.MOD1) != 0;
    boolean shift = (event.stateMask & SWT.SHIFT) != 0;
    if (!command) {
      return false;
    }
    switch (event.keyCode) {
      case 'z' -> {
        if (shift) {
          view.redo();
        } else {
          view.undo();
        }
      }
      case 'y' -> view.redo();
      case 'o' -> deeds.open();
      case 's' -> deeds.save();
      case 'c' -> {
        if (event.widget instanceof Text || event.widget == view.canvas()) {
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
