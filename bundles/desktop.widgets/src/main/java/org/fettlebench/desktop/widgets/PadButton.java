package org.fettlebench.desktop.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** A push button with room around its words, at every text size. */
final class PadButton extends Button {
  private static final int PAD = 18;

  PadButton(Composite parent) {
    super(parent, SWT.PUSH);
  }

  @Override
  public Point computeSize(int widthHint, int heightHint, boolean changed) {
    Point size = super.computeSize(widthHint, heightHint, changed);
    return widthHint == SWT.DEFAULT ? new Point(size.x + PAD, size.y) : size;
  }

  @Override
  protected void checkSubclass() {
    // Only its wish for room differs from the platform's button.
  }
}
