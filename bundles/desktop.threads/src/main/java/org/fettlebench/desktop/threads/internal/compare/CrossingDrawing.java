package org.fettlebench.desktop.threads.internal.compare;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.desktop.threads.internal.profile.ThreadProfile;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/**
 * Lays a screw and a nut of another thread over each other, to scale on a common axis, their first
 * crests together: the screw in full lines, the nut dashed, hatched what both claim.
 */
public final class CrossingDrawing {
  private static final int STEPS_A_PITCH = 60;

  private final Crossing crossing;
  private final int threads;
  private final LengthUnit unit;
  private final double screwPitch;
  private final double nutPitch;
  private final double right;
  private final List<Point> screw;
  private final List<Point> nut;
  private final List<Item> items = new ArrayList<>();

  private CrossingDrawing(Crossing crossing, int threads, LengthUnit unit) {
    this.crossing = crossing;
    this.threads = threads;
    this.unit = unit;
    this.screwPitch = crossing.screw().pitch().millimetres();
    this.nutPitch = crossing.nut().pitch().millimetres();
    this.right = threads * Math.max(screwPitch, nutPitch) + 0.5 * crossing.finerMm();
    this.screw =
        new ThreadProfile(crossing.screw().form(), screwPitch)
            .screw(threads(screwPitch)).stream().toList();
    double shift = -crossing.largerMm() / 2;
    this.nut =
        new ThreadProfile(crossing.nut().form(), nutPitch)
            .nut(threads(nutPitch)).stream().map(point -> point.moved(0, shift)).toList();
  }

  private int threads(double pitch) {
    return (int) Math.ceil(right / pitch) + 1;
  }

  /**
   * Returns the drawing.
   *
   * @param threads how many from the one that starts, 1 or more
   */
  public static Drawing of(Crossing crossing, int threads, LengthUnit unit) {
    return new CrossingDrawing(crossing, threads, unit).drawn(false);
  }

  /** Returns the drawing with its end once more below it, larger, where that shows more. */
  static Drawing withDetail(Crossing crossing, int threads, LengthUnit unit) {
    return new CrossingDrawing(crossing, threads, unit).drawn(true);
  }

  /** Returns how deep the screw stands in the nut's metal over so many threads, on the radius. */
  static double deepestMm(Crossing crossing, int threads) {
    CrossingDrawing drawing = new CrossingDrawing(crossing, threads, LengthUnit.MILLIMETRE);
    return new Overlap(drawing.screw, drawing.nut).deepestMm(0, drawing.right, drawing.step());
  }

  private double step() {
    return crossing.finerMm() / STEPS_A_PITCH;
  }

  private Drawing drawn(boolean detailed) {
    double finer = crossing.finerMm();
    double low = lowest(screw) - 0.45 * finer;
    double high = Math.max(highest(screw), highest(nut)) + 0.45 * finer;
    List<Point> screwLine = upTo(screw);
    List<Point> nutLine = upTo(nut);
    items.add(new Item.Area(Tone.PART, closed(screwLine, low), List.of()));
    for (List<Point> both : new Overlap(screw, nut).areas(0, right, step())) {
      items.add(new Item.Area(Tone.WALL, both, List.of()));
    }
    items.add(new Item.Path(LineKind.OUTLINE, screwLine, false));
    items.add(new Item.Path(LineKind.HIDDEN, nutLine, false));
    words(low, high);
    apart(high);
    if (detailed) {
      low = detail(low);
    }
    return new Drawing(
        title(), items, new Drawing.Frame(-0.4 * finer, low, right + 0.4 * finer, high));
  }

  private double detail(double low) {
    double finer = crossing.finerMm();
    double last = threads * Math.min(screwPitch, nutPitch);
    CrossingDetail detail =
        new CrossingDetail(screw, nut, finer, Math.max(0, last - 1.15 * finer), right);
    return detail.isLarger() ? detail.addTo(items, low, unit) : low;
  }

  private String title() {
    return "Screw "
        + crossing.screw().designation()
        + " laid over nut "
        + crossing.nut().designation()
        + ", first crests together: "
        + CrossingWords.answer(crossing, threads);
  }

  private List<Point> upTo(List<Point> outline) {
    List<Point> kept = new ArrayList<>(outline.stream().filter(p -> p.xMm() < right).toList());
    kept.add(new Point(right, Overlap.at(outline, right)));
    return kept;
  }

  private List<Point> closed(List<Point> outline, double edge) {
    List<Point> ring = new ArrayList<>(outline);
    ring.add(new Point(right, edge));
    ring.add(new Point(0, edge));
    return ring;
  }

  private static double lowest(List<Point> outline) {
    return outline.stream().mapToDouble(Point::yMm).min().orElse(0);
  }

  private static double highest(List<Point> outline) {
    return outline.stream().mapToDouble(Point::yMm).max().orElse(0);
  }

  private void words(double low, double high) {
    double finer = crossing.finerMm();
    double middle = right / 2;
    label(middle, low + 0.17 * finer, "screw " + crossing.screw().designation() + ", full line");
    label(middle, high - 0.17 * finer, "nut " + crossing.nut().designation() + ", dashed");
  }

  private void label(double x, double y, String words) {
    items.add(new Item.Label(new Point(x, y), words, Item.Side.CENTRE, false));
  }

  /** The crest that started together is marked, and the last one of each with what lies between. */
  private void apart(double high) {
    double finer = crossing.finerMm();
    double bottom = lowest(screw) - 0.45 * finer;
    line(0, bottom, high);
    double ofScrew = threads * screwPitch;
    double ofNut = threads * nutPitch;
    double between = Math.abs(ofNut - ofScrew);
    if (between > finer / 100) {
      line(ofScrew, bottom, high);
      line(ofNut, bottom, high);
      items.add(
          new Item.Dimension(
              new Point(Math.min(ofScrew, ofNut), high),
              new Point(Math.max(ofScrew, ofNut), high),
              5,
              CrossingWords.fine(between, unit),
              true));
    }
    items.add(
        new Item.Dimension(
            new Point(0, bottom),
            new Point(ofScrew, bottom),
            -5,
            threads + (threads == 1 ? " thread of the screw" : " threads of the screw"),
            false));
  }

  private void line(double x, double from, double to) {
    items.add(new Item.Path(LineKind.CENTRE, List.of(new Point(x, from), new Point(x, to)), false));
  }
}
