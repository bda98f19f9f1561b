package org.fettlebench.desktop.stock.internal;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** Finds controls in a page. */
final class Trees {
  private Trees() {}

  /** Returns the first control of a type, from the top down. */
  static <C extends Control> C first(Control at, Class<C> type) {
    if (type.isInstance(at)) {
      return type.cast(at);
    }
    if (at instanceof Composite composite) {
      for (Control child : composite.getChildren()) {
        C found = first(child, type);
        if (found != null) {
          return found;
        }
      }
    }
    return null;
  }
}
