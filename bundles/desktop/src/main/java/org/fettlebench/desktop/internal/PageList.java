package org.fettlebench.desktop.internal;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.fettlebench.desktop.Look;

/** The list of pages at the left, drawn by hand: title, and the digit that goes there with Alt. */
final class PageList extends Canvas {
  private static final int ROW = 38;
  private static final int WIDTH = 168;
  private static final int INDENT = 18;

  private final Look look;
  private final Consumer<PageSlot> chosen;
  private List<PageSlot> slots = List.of();
  private Optional<PageSlot> front = Optional.empty();
  private int hovered = -1;

  PageList(Composite parent, Look look, Consumer<PageSlot> chosen) {
    super(parent, SWT.DOUBLE_BUFFERED);
    this.look = look;
    this.chosen = chosen;
    setBackground(look.ground());
    addListener(SWT.Paint, event -> paint(event.gc));
    addListener(SWT.MouseDown, this::click);
    addListener(SWT.MouseMove, event -> hover(event.y / row()));
    addListener(SWT.MouseEnter, event -> hover(event.y / row()));
    addListener(SWT.MouseExit, event -> hover(-1));
    addListener(SWT.KeyDown, this::key);
    addListener(SWT.Traverse, event -> event.doit = leavesByTab(event));
    addListener(SWT.FocusIn, event -> redraw());
    addListener(SWT.FocusOut, event -> redraw());
    describe();
  }

  private void describe() {
    getAccessible()
        .addAccessibleListener(
            new AccessibleAdapter() {
              @Override
              public void getName(AccessibleEvent event) {
                event.result =
                    "Pages; "
                        + front.map(slot -> slot.identity().title()).orElse("none")
                        + " shown";
              }
            });
    getAccessible()
        .addAccessibleControlListener(
            new AccessibleControlAdapter() {
              @Override
              public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_LIST;
              }
            });
  }

  /** Shows the pages, one of them in front. */
  void show(List<PageSlot> newSlots, Optional<PageSlot> newFront) {
    slots = List.copyOf(newSlots);
    front = newFront;
    redraw();
  }

  private int row() {
    return (int) Math.round(ROW * look.scale());
  }

  @Override
  public Point computeSize(int widthHint, int heightHint, boolean changed) {
    GC gc = new GC(this);
    gc.setFont(look.strong());
    int widest = (int) (WIDTH * look.scale());
    for (PageSlot slot : slots) {
      int digit = (int) (34 * look.scale());
      widest = Math.max(widest, INDENT + gc.textExtent(slot.identity().title()).x + digit);
    }
    gc.dispose();
    return new Point(widest, slots.size() * row());
  }

  private void paint(GC gc) {
    gc.setBackground(look.ground());
    gc.fillRectangle(getClientArea());
    gc.setAntialias(SWT.ON);
    for (int i = 0; i < slots.size(); i++) {
      paintRow(gc, i);
    }
  }

  private void paintRow(GC gc, int index) {
    PageSlot slot = slots.get(index);
    int top = index * row();
    int width = getClientArea().width;
    boolean shown = front.filter(f -> f == slot).isPresent();
    if (shown || hovered == index) {
      gc.setBackground(look.sheet());
      gc.fillRectangle(0, top, width, row());
    }
    if (shown) {
      gc.setBackground(look.accent());
      gc.fillRectangle(0, top, (int) (5 * look.scale()), row());
    }
    gc.setFont(shown ? look.strong() : look.text());
    gc.setForeground(look.ink());
    Point title = gc.textExtent(slot.identity().title());
    gc.drawText(slot.identity().title(), INDENT, top + (row() - title.y) / 2, true);
    paintDigit(gc, index, slot, width, top);
    if (shown && isFocusControl()) {
      gc.setForeground(look.accent());
      gc.setLineWidth(1);
      gc.drawRectangle(0, top, width - 1, row() - 1);
    }
  }

  private void paintDigit(GC gc, int index, PageSlot slot, int width, int top) {
    String mark = slot.failing() ? "!" : index < 9 ? String.valueOf(index + 1) : "";
    gc.setFont(slot.failing() ? look.strong() : look.small());
    gc.setForeground(slot.failing() ? look.bad() : look.faint());
    Point size = gc.textExtent(mark);
    gc.drawText(mark, width - size.x - 12, top + (row() - size.y) / 2, true);
  }

  private void hover(int index) {
    if (index != hovered) {
      hovered = index;
      String tip = index >= 0 && index < Math.min(9, slots.size()) ? "Alt+" + (index + 1) : null;
      setToolTipText(tip);
      redraw();
    }
  }

  private void click(Event event) {
    int row = toControl(getDisplay().getCursorLocation()).y / row();
    if (event.button == 1 && row >= 0 && row < slots.size()) {
      PageSlot slot = slots.get(row);
      // The platform gives the keyboard to what is clicked, but the page shall have it.
      getDisplay()
          .asyncExec(
              () -> {
                if (!isDisposed() && slots.contains(slot)) {
                  chosen.accept(slot);
                }
              });
    }
  }

  private static boolean leavesByTab(Event event) {
    return event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS;
  }

  private void key(Event event) {
    int now = front.map(slots::indexOf).orElse(-1);
    switch (event.keyCode) {
      case SWT.ARROW_UP -> choose(now - 1);
      case SWT.ARROW_DOWN -> choose(now + 1);
      case SWT.HOME -> choose(0);
      case SWT.END -> choose(slots.size() - 1);
      case SWT.CR, SWT.KEYPAD_CR, SWT.ARROW_RIGHT -> front.ifPresent(PageSlot::focus);
      default -> event.doit = true;
    }
  }

  /** Goes to a page but keeps the keyboard here, so that arrows can go on. */
  private void choose(int index) {
    if (index >= 0 && index < slots.size()) {
      chosen.accept(slots.get(index));
      setFocus();
    }
  }
}
