package org.fettlebench.desktop.seats.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.seats.internal.Snapping.Snapped;
import org.fettlebench.desktop.widgets.DrawingCanvas;
import org.fettlebench.desktop.widgets.DrawingView;
import org.fettlebench.fits.SeatWords;

/** Shows over the drawing what may be dragged, what is chosen, and what it is drawn to. */
final class HandlePaint implements DrawingCanvas.Overlay {
  /** Pixels between the pointer's place and its words. */
  private static final int BESIDE = 14;

  private static final Color PAPER = new Color(255, 255, 255);
  private static final Color MARK = new Color(0x1D, 0x4F, 0x86);
  private static final Color CHOSEN = new Color(0xC8, 0x5A, 0x00);

  private final Bench bench;
  private final Desk desk;
  private final SeatTool tool;

  HandlePaint(Bench bench, Desk desk, SeatTool tool) {
    this.bench = bench;
    this.desk = desk;
    this.tool = tool;
  }

  @Override
  public void paint(GC gc, DrawingView view) {
    gc.setAntialias(SWT.ON);
    tool.snapped().ifPresent(snapped -> guides(gc, view, snapped));
    for (Handles.Placed each : Handles.of(bench.sketch())) {
      handle(gc, view, each);
    }
  }

  private void guides(GC gc, DrawingView view, Snapped snapped) {
    Rectangle all = gc.getClipping();
    int x = px(view.x(snapped.at().xMm()));
    int y = px(view.y(snapped.at().yMm()));
    gc.setForeground(CHOSEN);
    gc.setLineWidth(1);
    gc.setLineStyle(SWT.LINE_DASH);
    if (snapped.onX()) {
      gc.drawLine(x, all.y, x, all.y + all.height);
    }
    if (snapped.onY()) {
      gc.drawLine(all.x, y, all.x + all.width, y);
    }
    gc.setLineStyle(SWT.LINE_SOLID);
    words(gc, x, y, SeatWords.place(snapped.at(), desk.unit()));
  }

  /** The place stands beside the pointer, on the side on which there is room for it. */
  private void words(GC gc, int x, int y, String words) {
    gc.setFont(desk.look().text());
    Point size = gc.textExtent(words);
    Rectangle all = gc.getClipping();
    boolean right = x + BESIDE + size.x + 6 <= all.x + all.width;
    int left = right ? x + BESIDE : x - BESIDE - size.x - 6;
    int top = Math.max(all.y + 1, y - size.y - 12);
    gc.setBackground(PAPER);
    gc.fillRectangle(left, top, size.x + 6, size.y + 2);
    gc.setForeground(CHOSEN);
    gc.drawText(words, left + 3, top + 1, true);
  }

  private void handle(GC gc, DrawingView view, Handles.Placed placed) {
    boolean chosen = bench.chosen().filter(placed.handle()::equals).isPresent();
    boolean under = tool.under().filter(placed.handle()::equals).isPresent();
    int half = px((chosen || under ? 4.5 : 3) * desk.look().scale());
    int x = px(view.x(placed.at().xMm()));
    int y = px(view.y(placed.at().yMm()));
    gc.setBackground(chosen ? CHOSEN : PAPER);
    gc.setForeground(chosen ? CHOSEN : MARK);
    gc.setLineWidth(under ? 2 : 1);
    switch (placed.handle().kind()) {
      case CENTRE, FOUND, NEIGHBOUR, WALL, ARC -> round(gc, x, y, half, chosen);
      default -> {
        gc.fillRectangle(x - half, y - half, 2 * half, 2 * half);
        gc.drawRectangle(x - half, y - half, 2 * half, 2 * half);
      }
    }
    if (chosen) {
      gc.setLineWidth(2);
      gc.drawOval(x - 2 * half, y - 2 * half, 4 * half, 4 * half);
    }
  }

  private static void round(GC gc, int x, int y, int half, boolean filled) {
    if (filled) {
      gc.fillOval(x - half, y - half, 2 * half, 2 * half);
    }
    gc.drawOval(x - half, y - half, 2 * half, 2 * half);
  }

  private static int px(double value) {
    return (int) Math.round(value);
  }
}
