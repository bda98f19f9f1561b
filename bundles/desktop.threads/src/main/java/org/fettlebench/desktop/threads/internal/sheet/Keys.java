package org.fettlebench.desktop.threads.internal.sheet;

import org.eclipse.swt.SWT;

/** What keys do that go from one control to another. */
public final class Keys {
  private Keys() {}

  /** Returns whether a traversal leaves a painted control; arrows and Enter are its own. */
  public static boolean leaves(int detail) {
    return detail == SWT.TRAVERSE_TAB_NEXT
        || detail == SWT.TRAVERSE_TAB_PREVIOUS
        || detail == SWT.TRAVERSE_ESCAPE
        || detail == SWT.TRAVERSE_MNEMONIC;
  }
}
