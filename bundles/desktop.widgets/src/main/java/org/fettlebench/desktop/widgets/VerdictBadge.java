package org.fettlebench.desktop.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.fettlebench.desktop.Look;

/** A verdict: its word in heavy type with the shape beside it. */
public final class VerdictBadge extends Canvas {
  private final Look look;
  private VerdictMark mark = VerdictMark.OPEN;
  private String word = "";
  private boolean large;
  private boolean small;

  /** Makes an empty badge. */
  public VerdictBadge(Composite parent, Look look) {
    super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
    this.look = look;
    setBackground(parent.getBackground());
    addPaintListener(event -> paint(event.gc));
    getAccessible()
        .addAccessibleListener(
            new AccessibleAdapter() {
              @Override
              public void getName(AccessibleEvent event) {
                event.result = word;
              }
            });
  }

  /** Shows a verdict; relayout of the parent is the caller's. */
  public void show(VerdictMark newMark, String newWord) {
    mark = newMark;
    word = newWord;
    redraw();
  }

  /** Sets it in the size of a page's answer. */
  public VerdictBadge large() {
    large = true;
    return this;
  }

  /** Sets it in the size of a remark. */
  public VerdictBadge small() {
    small = true;
    return this;
  }

  /** Returns the word shown. */
  public String word() {
    return word;
  }

  private Font font() {
    return large ? look.answer() : small ? look.small() : look.strong();
  }

  @Override
  public Point computeSize(int widthHint, int heightHint, boolean changed) {
    if (word.isEmpty()) {
      return new Point(0, 0);
    }
    GC gc = new GC(this);
    gc.setFont(font());
    Point text = gc.textExtent(word);
    int size = shapeSize(gc);
    gc.dispose();
    return new Point(size + size / 2 + text.x + 2, Math.max(text.y, size));
  }

  private static int shapeSize(GC gc) {
    return gc.getFontMetrics().getAscent();
  }

  private void paint(GC gc) {
    if (word.isEmpty()) {
      return;
    }
    gc.setFont(font());
    gc.setForeground(mark.colour(look));
    int size = shapeSize(gc);
    Point text = gc.textExtent(word);
    int middle = getClientArea().height / 2;
    VerdictShapes.paint(gc, mark, 0, middle - size / 2, size - 1);
    gc.drawText(word, size + size / 2, middle - text.y / 2, true);
  }
}
