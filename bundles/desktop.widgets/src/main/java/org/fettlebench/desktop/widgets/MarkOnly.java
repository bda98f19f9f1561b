package org.fettlebench.desktop.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.fettlebench.desktop.Look;

/** A verdict's shape alone, as tall as a line of text, before a sentence. */
final class MarkOnly extends Canvas {
  private final Look look;
  private final VerdictMark mark;

  MarkOnly(Composite parent, Look look, VerdictMark mark) {
    super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
    this.look = look;
    this.mark = mark;
    setBackground(parent.getBackground());
    addListener(SWT.Paint, event -> paint(event.gc));
  }

  private void paint(GC gc) {
    int size = size();
    gc.setForeground(mark.colour(look));
    VerdictShapes.paint(gc, mark, 1, (getClientArea().height - size) / 2, size);
  }

  private int size() {
    return (int) Math.round(12 * look.scale());
  }

  @Override
  public Point computeSize(int widthHint, int heightHint, boolean changed) {
    GC gc = new GC(this);
    gc.setFont(look.text());
    int height = gc.getFontMetrics().getHeight();
    gc.dispose();
    return new Point(size() + 4, height);
  }
}
