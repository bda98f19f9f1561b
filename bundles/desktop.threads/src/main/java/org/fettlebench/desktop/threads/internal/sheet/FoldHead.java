package org.fettlebench.desktop.threads.internal.sheet;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.fettlebench.desktop.Look;

/** The head of a fold: a triangle, its name, and at the right its answer in a few words. */
final class FoldHead extends Canvas {
  private static final int PAD = 5;

  private final Look look;
  private final String title;
  private final Runnable toggled;
  private String summary = "";
  private boolean open;
  private boolean under;

  FoldHead(Composite parent, Look look, String title, Runnable toggled) {
    super(parent, SWT.DOUBLE_BUFFERED);
    this.look = look;
    this.title = title;
    this.toggled = toggled;
    setBackground(parent.getBackground());
    setCursor(getDisplay().getSystemCursor(SWT.CURSOR_HAND));
    setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
    addListener(SWT.Paint, event -> paint(event.gc));
    addListener(SWT.MouseUp, event -> toggled.run());
    addListener(SWT.MouseEnter, event -> hover(true));
    addListener(SWT.MouseExit, event -> hover(false));
    addListener(SWT.KeyDown, this::key);
    addListener(SWT.Traverse, event -> event.doit = Keys.leaves(event.detail));
    addListener(SWT.FocusIn, event -> redraw());
    addListener(SWT.FocusOut, event -> redraw());
    getAccessible().addAccessibleListener(described());
  }

  private AccessibleAdapter described() {
    return new AccessibleAdapter() {
      @Override
      public void getName(AccessibleEvent event) {
        event.result = title + ", " + (open ? "open" : "folded") + ". " + summary;
      }
    };
  }

  private void hover(boolean now) {
    under = now;
    redraw();
  }

  private void key(Event event) {
    boolean pressed = event.keyCode == SWT.CR || event.character == ' ';
    boolean wantsOpen = event.keyCode == SWT.ARROW_RIGHT && !open;
    boolean wantsFolded = event.keyCode == SWT.ARROW_LEFT && open;
    if (pressed || wantsOpen || wantsFolded) {
      toggled.run();
    }
  }

  void open(boolean now) {
    open = now;
    redraw();
  }

  void summary(String words) {
    if (!words.equals(summary)) {
      summary = words;
      redraw();
    }
  }

  String summary() {
    return summary;
  }

  private void paint(GC gc) {
    Rectangle area = getClientArea();
    gc.setAntialias(SWT.ON);
    gc.setFont(look.heading());
    Point name = gc.textExtent(title);
    int middle = area.height / 2;
    triangle(gc, middle, name.y / 4);
    int left = name.y;
    gc.setForeground(look.ink());
    gc.drawText(title, left, middle - name.y / 2, true);
    gc.setFont(look.text());
    gc.setForeground(look.faint());
    int room = area.width - left - name.x - 2 * PAD - 8;
    String words = Elided.to(gc, summary, room);
    Point size = gc.textExtent(words);
    gc.drawText(words, area.width - size.x, middle - size.y / 2 + 1, true);
    gc.setForeground(look.rule());
    gc.drawLine(0, area.height - 1, area.width, area.height - 1);
    if (isFocusControl()) {
      gc.setForeground(look.accent());
      gc.drawRectangle(0, 0, area.width - 1, area.height - 2);
    }
  }

  private void triangle(GC gc, int middle, int half) {
    gc.setBackground(under ? look.accent() : look.faint());
    int x = 2 + half;
    gc.fillPolygon(
        open
            ? new int[] {x - half, middle - half / 2, x + half, middle - half / 2, x, middle + half}
            : new int[] {
              x - half / 2, middle - half, x - half / 2, middle + half, x + half, middle
            });
  }

  @Override
  public Point computeSize(int widthHint, int heightHint, boolean changed) {
    GC gc = new GC(this);
    gc.setFont(look.heading());
    int height = gc.getFontMetrics().getHeight() + 2 * PAD + 1;
    gc.dispose();
    return new Point(widthHint == SWT.DEFAULT ? 200 : widthHint, height);
  }
}
