package org.fettlebench.desktop.seats.internal;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.seats.internal.Snapping.Snapped;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.desktop.widgets.DrawingCanvas;
import org.fettlebench.desktop.widgets.DrawingTool;
import org.fettlebench.desktop.widgets.DrawingView;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.measure.Point;

/** Drags, nudges, adds and removes on the drawing. */
final class SeatTool implements DrawingTool {
  /** How near the pointer must come to a handle, pixels. */
  static final double GRAB_PIXELS = 9;

  private static final double SNAP_PIXELS = 6;

  /** Pixels within which a press is a choice and not yet a drag. */
  private static final double STILL_PIXELS = 3;

  private final Bench bench;
  private final Desk desk;
  private final DrawingCanvas canvas;
  private Optional<Handle> held = Optional.empty();
  private Optional<Handle> under = Optional.empty();
  private Optional<Snapped> snapped = Optional.empty();
  private Point grip = new Point(0, 0);
  private double pressedX;
  private double pressedY;
  private boolean moved;
  private int run;

  SeatTool(Bench bench, Desk desk, DrawingCanvas canvas) {
    this.bench = bench;
    this.desk = desk;
    this.canvas = canvas;
  }

  Optional<Handle> under() {
    return under;
  }

  Optional<Snapped> snapped() {
    return snapped;
  }

  @Override
  public boolean press(Pointer at) {
    held = hit(at);
    bench.choose(held);
    if (held.isEmpty()) {
      return false;
    }
    Point place = Handles.at(bench.sketch(), held.get()).orElseThrow();
    // What is grabbed beside its middle does not jump to the pointer.
    grip = new Point(place.xMm() - at.place().xMm(), place.yMm() - at.place().yMm());
    pressedX = at.x();
    pressedY = at.y();
    moved = false;
    run++;
    return true;
  }

  private Optional<Handle> hit(Pointer at) {
    return Handles.hit(bench.sketch(), at.place(), GRAB_PIXELS / at.view().pixelsPerMm());
  }

  @Override
  public void drag(Pointer at) {
    if (!moved && Math.hypot(at.x() - pressedX, at.y() - pressedY) <= STILL_PIXELS) {
      return;
    }
    if (!moved) {
      moved = true;
      bench.dragging(true);
    }
    Handle handle = held.orElseThrow();
    Point place = at.place().moved(grip.xMm(), grip.yMm());
    double scale = at.view().pixelsPerMm();
    Snapped to =
        at.free()
            ? new Snapped(place, false, false, "")
            : Snapping.snap(
                bench.sketch(),
                handle,
                place,
                SNAP_PIXELS / scale,
                Snapping.stepMm(desk.unit(), scale));
    snapped = Optional.of(to);
    bench.apply(
        new Change<>(
            handle.words() + " moved",
            "drag " + run,
            sketch -> Handles.moved(sketch, handle, to.at())));
    canvas.redraw();
  }

  @Override
  public void release(Pointer at) {
    snapped = Optional.empty();
    held = Optional.empty();
    if (moved) {
      bench.dragging(false);
    }
    canvas.redraw();
  }

  @Override
  public boolean hover(Pointer at) {
    Optional<Handle> now = hit(at);
    if (!now.equals(under)) {
      under = now;
      canvas.setToolTipText(now.map(SeatTool::hint).orElse(null));
      canvas.redraw();
    }
    return now.isPresent();
  }

  private static String hint(Handle handle) {
    return SeatWords.upper(handle.words()) + ": drag it; Ctrl frees it from snapping.";
  }

  @Override
  public boolean doubleClick(Pointer at) {
    if (hit(at).isPresent()) {
      return true;
    }
    double reach = GRAB_PIXELS / at.view().pixelsPerMm();
    Point place = at.place();
    boolean added =
        Edges.cornerAdded(bench.sketch(), place, reach)
            .map(changed -> bench.apply(Change.of("corner added", before -> changed)))
            .orElse(false);
    if (added) {
      bench.choose(Handles.hit(bench.sketch(), place, reach));
      desk.say("Corner added.", bench.undoOfLast());
    }
    return added;
  }

  @Override
  public boolean key(Event event) {
    boolean command = (event.stateMask & SWT.MOD1) != 0;
    if (bench.chosen().isEmpty() || command) {
      return false;
    }
    Handle handle = bench.chosen().get();
    boolean fine = (event.stateMask & SWT.SHIFT) != 0;
    double step = Nudge.stepMm(desk.unit(), fine);
    switch (event.keyCode) {
      case SWT.ARROW_LEFT -> nudge(handle, -step, 0);
      case SWT.ARROW_RIGHT -> nudge(handle, step, 0);
      case SWT.ARROW_UP -> nudge(handle, 0, step);
      case SWT.ARROW_DOWN -> nudge(handle, 0, -step);
      case SWT.DEL, SWT.BS -> remove(handle);
      case SWT.ESC -> bench.choose(Optional.empty());
      default -> {
        return false;
      }
    }
    return true;
  }

  private void nudge(Handle handle, double dxMm, double dyMm) {
    bench.apply(
        new Change<>(
            handle.words() + " moved",
            "nudge " + handle,
            sketch -> Nudge.moved(sketch, handle, dxMm, dyMm)));
  }

  /** Takes away what a handle belongs to. */
  void remove(Handle handle) {
    boolean gone =
        bench.apply(
            Change.of(handle.words() + " removed", sketch -> Handles.removed(sketch, handle)));
    if (gone) {
      desk.say(SeatWords.upper(handle.words()) + " removed.", bench.undoOfLast());
    } else {
      desk.say(SeatWords.upper(handle.words()) + " cannot be spared.");
    }
  }

  @Override
  public boolean next(boolean backwards) {
    Optional<Handle> next = Handles.next(bench.sketch(), bench.chosen(), backwards);
    bench.choose(next);
    next.ifPresent(
        handle ->
            desk.say(
                SeatWords.upper(handle.words())
                    + ": "
                    + SeatWords.place(
                        Handles.at(bench.sketch(), handle).orElseThrow(), desk.unit())));
    return next.isPresent();
  }

  /** Returns the view on the screen, for what is painted over. */
  Optional<DrawingView> view() {
    return canvas.view();
  }
}
