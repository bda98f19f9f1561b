package org.fettlebench.desktop.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;

/** Keys of the window that no menu can carry. */
final class WindowKeys {
  private final MainWindow window;

  WindowKeys(MainWindow window) {
    this.window = window;
  }

  void watch() {
    var display = window.shell().getDisplay();
    var filter = (org.eclipse.swt.widgets.Listener) this::key;
    display.addFilter(SWT.KeyDown, filter);
    window.shell().addListener(SWT.Dispose, event -> display.removeFilter(SWT.KeyDown, filter));
  }

  private void key(Event event) {
    if (event.display.getActiveShell() == window.shell() && handled(event)) {
      event.doit = false;
      event.type = SWT.None;
    }
  }

  private boolean handled(Event event) {
    // On many keyboards plus is Shift and the key of the equals sign.
    boolean plus = event.keyCode == '=' && modifiers(event) == (SWT.MOD1 | SWT.SHIFT);
    if (modifiers(event) == SWT.MOD1 || plus) {
      return withControl(event);
    }
    if (modifiers(event) == SWT.ALT && event.keyCode >= '1' && event.keyCode <= '9') {
      window.bring(event.keyCode - '1');
      return true;
    }
    if (event.keyCode == SWT.F6 && (modifiers(event) & ~SWT.SHIFT) == 0) {
      nextPart();
      return true;
    }
    return event.keyCode == SWT.ESC && modifiers(event) == 0 && window.complaints().hide();
  }

  /** A mouse button held at the same time changes nothing. */
  private static int modifiers(Event event) {
    return event.stateMask & SWT.MODIFIER_MASK;
  }

  private boolean withControl(Event event) {
    switch (event.keyCode) {
      case 'k' -> window.find();
      case '=', SWT.KEYPAD_ADD -> window.textSize(window.appearance().neighbour(1));
      case SWT.KEYPAD_SUBTRACT -> window.textSize(window.appearance().neighbour(-1));
      default -> {
        return false;
      }
    }
    return true;
  }

  /** From the find box to the list of pages, to the page, and round again. */
  private void nextPart() {
    WindowParts parts = window.parts();
    if (parts.find().field().isFocusControl()) {
      parts.list().setFocus();
    } else if (parts.list().isFocusControl()) {
      parts.area().front().ifPresent(PageSlot::focus);
    } else {
      window.find();
    }
  }
}
