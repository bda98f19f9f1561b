package org.fettlebench.desktop.threads.internal.folds;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.desktop.threads.internal.profile.ThreadProfile;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.wires.OverWires;

/**
 * Two of three wires in a screw's thread, to scale, where they rest on its flanks; the line across
 * their tops is half the measurement from the axis.
 */
final class WiresDrawing {
  private static final int PITCHES = 3;

  private WiresDrawing() {}

  static Drawing of(ScrewThread thread, OverWires over, LengthUnit unit) {
    double pitch = thread.pitch().millimetres();
    ThreadProfile profile = new ThreadProfile(thread.form(), pitch);
    List<Point> screw = profile.screw(PITCHES);
    double right = PITCHES * pitch;
    double low = -profile.screwDepthMm() - 0.5 * pitch;
    List<Point> body = new ArrayList<>(screw);
    body.add(new Point(right, low));
    body.add(new Point(0, low));
    List<Item> items = new ArrayList<>();
    items.add(new Item.Area(Tone.PART, body, List.of()));
    items.add(new Item.Path(LineKind.OUTLINE, screw, false));
    double radius = over.wire().millimetres() / 2;
    double top = over.overWires().minus(thread.major()).millimetres() / 2;
    for (double x : new double[] {0.5 * pitch, 2.5 * pitch}) {
      items.add(new Item.Circle(LineKind.OUTLINE, new Point(x, top - radius), radius));
    }
    double effective = over.effective().minus(thread.major()).millimetres() / 2;
    level(items, LineKind.THIN, top, right, "over wires " + show(over.overWires(), unit));
    level(items, LineKind.CENTRE, effective, right, "effective " + show(over.effective(), unit));
    items.add(
        new Item.Label(
            new Point(0.5 * pitch, top - radius),
            show(over.wire(), unit),
            Item.Side.CENTRE,
            false));
    return new Drawing(
        "Wires of "
            + show(over.wire(), unit)
            + " in "
            + thread.designation()
            + ": "
            + show(over.overWires(), unit)
            + " over three wires",
        items,
        new Drawing.Frame(0, low, right + 0.15 * pitch, Math.max(0, top) + 0.1 * pitch));
  }

  private static void level(List<Item> items, LineKind kind, double y, double right, String words) {
    Point end = new Point(right + 0.15 * right / PITCHES, y);
    items.add(new Item.Path(kind, List.of(new Point(0, y), end), false));
    items.add(new Item.Label(end, words, Item.Side.RIGHT, false));
  }

  private static String show(org.fettlebench.measure.Length length, LengthUnit unit) {
    return LengthFormat.show(length, unit, unit == LengthUnit.INCH ? 4 : 3);
  }
}
