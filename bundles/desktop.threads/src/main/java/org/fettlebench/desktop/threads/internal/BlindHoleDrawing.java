package org.fettlebench.desktop.threads.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.fettlebench.tooling.BlindHole;
import org.fettlebench.tooling.HoleChooser.BlindHoleRequest;

/** Draws a blind tapped hole in section, the face above: depths from the face, the floor left. */
final class BlindHoleDrawing {
  private final BlindHoleRequest asked;
  private final BlindHole hole;
  private final LengthUnit unit;
  private final double wide;
  private final List<Item> items = new ArrayList<>();

  private BlindHoleDrawing(BlindHoleRequest asked, BlindHole hole, LengthUnit unit) {
    this.asked = asked;
    this.hole = hole;
    this.unit = unit;
    this.wide = 1.5 * asked.thread().major().millimetres();
  }

  static Drawing of(BlindHoleRequest asked, BlindHole hole, LengthUnit unit) {
    return new BlindHoleDrawing(asked, hole, unit).drawn();
  }

  private Drawing drawn() {
    double floor = -asked.metal().millimetres();
    double shoulder = -hole.shoulder().millimetres();
    double tip = -hole.drillTip().millimetres();
    double bore = asked.drill().diameter().millimetres() / 2;
    List<Point> outline =
        List.of(
            new Point(-bore, 0),
            new Point(-bore, shoulder),
            new Point(0, tip),
            new Point(bore, shoulder),
            new Point(bore, 0));
    List<Point> metal = box(-wide, floor, wide, 0);
    items.add(new Item.Area(Tone.WALL, metal, List.of()));
    items.add(new Item.Area(Tone.EMPTY, outline, List.of()));
    items.add(new Item.Path(LineKind.OUTLINE, outline, false));
    line(LineKind.OUTLINE, -bore, shoulder, bore, shoulder);
    line(LineKind.OUTLINE, -wide, 0, -bore, 0);
    line(LineKind.OUTLINE, bore, 0, wide, 0);
    line(LineKind.OUTLINE, -wide, floor, wide, floor);
    thread();
    line(LineKind.CENTRE, 0, 0.25 * wide, 0, Math.min(tip, floor) - 0.2 * wide);
    dimensions(floor, shoulder, tip);
    double lowest = Math.min(tip, floor);
    return new Drawing(
        title(), items, new Drawing.Frame(-2 * wide, lowest, 2.6 * wide, 0.2 * wide));
  }

  private String title() {
    return "Blind hole for "
        + asked.thread().designation()
        + ": drill to the shoulder "
        + show(hole.shoulder())
        + ", full thread "
        + show(hole.fullThread())
        + (hole.breaksThrough()
            ? ", breaks through"
            : ", left below the point " + show(hole.left()));
  }

  private static List<Point> box(double left, double low, double right, double high) {
    return List.of(
        new Point(left, low), new Point(right, low), new Point(right, high), new Point(left, high));
  }

  private void line(LineKind kind, double x1, double y1, double x2, double y2) {
    items.add(new Item.Path(kind, List.of(new Point(x1, y1), new Point(x2, y2)), false));
  }

  /** The thread as drawings have it: major diameter thin, the end of full thread across it. */
  private void thread() {
    double major = asked.thread().major().millimetres() / 2;
    double full = -hole.fullThread().millimetres();
    double last = full - hole.tapLead().millimetres();
    double bore = asked.drill().diameter().millimetres() / 2;
    for (int side : new int[] {-1, 1}) {
      line(LineKind.THIN, side * major, 0, side * major, full);
      line(LineKind.THIN, side * major, full, side * bore, last);
    }
    line(LineKind.OUTLINE, -major, full, major, full);
  }

  private void dimensions(double floor, double shoulder, double tip) {
    double full = -hole.fullThread().millimetres();
    down(wide, full, 5, show(hole.fullThread()));
    down(wide, shoulder, 14, show(hole.shoulder()));
    items.add(
        new Item.Dimension(
            new Point(-wide, floor), new Point(-wide, 0), 5, show(asked.metal()), false));
    if (!hole.breaksThrough()) {
      double at = -0.3 * wide;
      items.add(
          new Item.Dimension(
              new Point(at, tip), new Point(at, floor), 0, show(hole.left()) + " left", true));
    }
  }

  private void down(double x, double y, double offset, String words) {
    items.add(new Item.Dimension(new Point(x, 0), new Point(x, y), offset, words, false));
  }

  private String show(Length length) {
    return LengthFormat.show(length, unit);
  }
}
