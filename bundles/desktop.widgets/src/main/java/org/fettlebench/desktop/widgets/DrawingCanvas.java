package org.fettlebench.desktop.widgets;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.fettlebench.desktop.Desk;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;

/**
 * Shows a drawing to scale on paper white. The wheel and + and - zoom, dragging and the arrow keys
 * move, 0 shows the whole again; Ctrl+C copies the picture.
 */
public final class DrawingCanvas extends Canvas {
  private final Desk desk;
  private final DrawingHand hand;
  private Optional<Drawing> drawing = Optional.empty();
  private Optional<DrawingView> held = Optional.empty();
  private Optional<Overlay> overlay = Optional.empty();
  private Optional<GcRenderer> kept = Optional.empty();
  private String whenEmpty = "";

  /** Makes an empty surface. */
  public DrawingCanvas(Composite parent, Desk desk) {
    super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
    this.desk = desk;
    setBackground(desk.look().paper());
    addListener(SWT.Paint, event -> show(event.gc, getSize()));
    addListener(SWT.Dispose, event -> forgetRenderer());
    addListener(SWT.Resize, event -> redraw());
    hand = new DrawingHand(this, desk);
    desk.onLookChange(this::redrawIfThere);
    getAccessible().addAccessibleListener(described());
  }

  private AccessibleAdapter described() {
    return new AccessibleAdapter() {
      @Override
      public void getName(AccessibleEvent event) {
        event.result = drawing.map(Drawing::title).orElse(whenEmpty);
      }

      @Override
      public void getDescription(AccessibleEvent event) {
        event.result = "Drawing to scale. Plus and minus zoom, arrow keys move, 0 shows the whole.";
      }
    };
  }

  /** Says what stands on the paper while there is no drawing. */
  public DrawingCanvas whenEmpty(String sentence) {
    whenEmpty = sentence;
    redraw();
    return this;
  }

  /** Shows a drawing whole. */
  public void show(Drawing newDrawing) {
    drawing = Optional.of(newDrawing);
    whole();
  }

  /** Shows another state of the same thing, at the zoom and place that a person chose. */
  public void redrawn(Drawing newDrawing) {
    drawing = Optional.of(newDrawing);
    redraw();
  }

  /** Shows empty paper. */
  public void clear() {
    drawing = Optional.empty();
    whole();
  }

  /** Returns what is shown. */
  public Optional<Drawing> drawing() {
    return drawing;
  }

  /** Shows the whole drawing, and again whenever the surface changes its size. */
  public void whole() {
    held = Optional.empty();
    redraw();
  }

  /** Keeps a view until {@link #whole}. */
  public void hold(DrawingView view) {
    held = Optional.of(view);
    redraw();
  }

  /** Returns whether the view is one that a person chose. */
  public boolean held() {
    return held.isPresent();
  }

  /** What is painted over a drawing on the screen, and never on a picture of it. */
  @FunctionalInterface
  public interface Overlay {
    /** Paints over the drawing; places are turned into pixels by the view. */
    void paint(GC gc, DrawingView view);
  }

  /** Paints something over the drawing: handles, guide lines. */
  public void overlay(Overlay painted) {
    overlay = Optional.of(painted);
    redraw();
  }

  /** Returns the view now on the screen, if there is a drawing. */
  public Optional<DrawingView> view() {
    if (held.isPresent() && drawing.isPresent()) {
      return held;
    }
    GC gc = new GC(this);
    try {
      return drawing.map(shown -> view(gc, shown, getSize()));
    } finally {
      gc.dispose();
    }
  }

  private DrawingView view(GC gc, Drawing shown, Point size) {
    // The scale bar stands below the drawing and not across its dimensions.
    int height = Math.max(size.y * 3 / 4, size.y - renderer().barHeight());
    return held.orElseGet(() -> renderer().fit(gc, shown, size.x, height));
  }

  /** Fonts are kept from one painting to the next: a drawing that is dragged is painted often. */
  private GcRenderer renderer() {
    if (kept.isEmpty()) {
      double scale = desk.look().scale();
      String family = desk.look().text().getFontData()[0].getName();
      double pixelsPerMm = getDisplay().getDPI().x / 25.4 * scale;
      kept = Optional.of(new GcRenderer(getDisplay(), family, pixelsPerMm, scale));
    }
    return kept.get();
  }

  private void forgetRenderer() {
    kept.ifPresent(GcRenderer::close);
    kept = Optional.empty();
  }

  private void show(GC gc, Point size) {
    paint(gc, size);
    if (overlay.isPresent() && drawing.isPresent() && size.x >= 8 && size.y >= 8) {
      overlay.get().paint(gc, view(gc, drawing.get(), size));
    }
    if (isFocusControl()) {
      gc.setLineWidth(2);
      gc.setForeground(desk.look().accent());
      gc.drawRectangle(1, 1, size.x - 2, size.y - 2);
    }
  }

  private void paint(GC gc, Point size) {
    gc.setBackground(desk.look().paper());
    gc.fillRectangle(new Rectangle(0, 0, size.x, size.y));
    drawing.ifPresentOrElse(shown -> paint(gc, shown, size), () -> paintEmpty(gc, size));
  }

  private void paint(GC gc, Drawing shown, Point size) {
    if (size.x < 8 || size.y < 8) {
      return;
    }
    DrawingView view = view(gc, shown, size);
    renderer().draw(gc, shown, view, new Rectangle(0, 0, size.x, size.y));
    LengthUnit unit = desk.unit();
    double unitMm = unit.nanometres() / (double) Length.NM_PER_MM;
    renderer().scaleBar(gc, view, size.y, unit.symbol(), unitMm);
  }

  private void paintEmpty(GC gc, Point size) {
    gc.setFont(desk.look().text());
    gc.setForeground(DrawingSheet.FAINT);
    Point words = gc.textExtent(whenEmpty);
    gc.drawText(whenEmpty, (size.x - words.x) / 2, (size.y - words.y) / 2, true);
  }

  private void redrawIfThere() {
    if (!isDisposed()) {
      forgetRenderer();
      setBackground(desk.look().paper());
      redraw();
    }
  }

  /** Returns what is shown as a picture. */
  public ImageData picture() {
    Point size = new Point(Math.max(8, getSize().x), Math.max(8, getSize().y));
    Image image = new Image(getDisplay(), size.x, size.y);
    GC gc = new GC(image);
    paint(gc, size);
    gc.dispose();
    ImageData data = image.getImageData(100);
    image.dispose();
    return data;
  }

  /** Copies what is shown as a picture. */
  public void copyPicture() {
    Copying.picture(getDisplay(), picture());
    desk.say("Drawing copied as a picture.");
  }

  /** Returns what moves and zooms the drawing, for a page's own keys or buttons. */
  public DrawingHand hand() {
    return hand;
  }
}
