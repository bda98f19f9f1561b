package org.fettlebench.desktop.kits.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/** Keys of the page that belong to no single control on it. */
final class KitKeys {
  private final KitView view;
  private final Runnable check;

  KitKeys(KitView view, Runnable check) {
    this.view = view;
    this.check = check;
  }

  /** Listens as long as the page stands; hears nothing while another page is in front. */
  void watch() {
    Listener filter = this::key;
    view.getDisplay().addFilter(SWT.KeyDown, filter);
    view.addListener(SWT.Dispose, event -> view.getDisplay().removeFilter(SWT.KeyDown, filter));
  }

  private void key(Event event) {
    if (inFront() && handled(event)) {
      event.doit = false;
      event.type = SWT.None;
    }
  }

  private boolean inFront() {
    Control active = view;
    return active.isVisible() && view.getDisplay().getActiveShell() == view.getShell();
  }

  private boolean handled(Event event) {
    int held = event.stateMask & SWT.MODIFIER_MASK;
    if (held == 0 && event.keyCode == SWT.F5) {
      check.run();
      return true;
    }
    if (held != SWT.MOD1) {
      return false;
    }
    if (event.keyCode == 'l') {
      return view.joints().filter().setFocus();
    }
    if (event.keyCode >= '0' && event.keyCode <= '9') {
      view.panel().choose(event.keyCode - '0');
      return true;
    }
    return false;
  }
}
