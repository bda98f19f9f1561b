package org.fettlebench.desktop.threads.internal.folds;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.Point;
import org.fettlebench.threads.DiameterRange;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;

/**
 * The tolerance zones of screw and nut along the basic profile, to scale: between the full and the
 * dashed line of each lies what its class allows. Roundings are left out: limits are of diameters.
 */
final class ZoneDrawing {
  private static final int PITCHES = 2;

  private final ScrewThread thread;
  private final double pitch;
  private final double tangent;
  private final List<Item> items = new ArrayList<>();

  private ZoneDrawing(ScrewThread thread) {
    this.thread = thread;
    this.pitch = thread.pitch().millimetres();
    this.tangent = Math.tan(Math.toRadians(thread.form().includedAngleDegrees() / 2));
  }

  /** Returns the drawing of the limits there are. */
  static Drawing of(
      ScrewThread thread, Optional<LimitsOfThread> screw, Optional<LimitsOfThread> nut) {
    return new ZoneDrawing(thread).drawn(screw, nut);
  }

  private Drawing drawn(Optional<LimitsOfThread> screw, Optional<LimitsOfThread> nut) {
    nut.ifPresent(limits -> zone(Tone.WALL, limits));
    screw.ifPresent(limits -> zone(Tone.HEAD, limits));
    double minor = depth(thread.minorInternal());
    items.add(new Item.Path(LineKind.CENTRE, profile(0, depth(thread.effective()), minor), false));
    nut.ifPresent(l -> label(0.22, "nut " + l.threadClass() + ", hatched"));
    screw.ifPresent(
        l -> label(-depth(thread.minorExternal()) / pitch - 0.3, "screw " + l.threadClass()));
    double low = -depth(thread.minorExternal()) - 0.4 * pitch;
    return new Drawing(
        thread.designation() + ": zones that the classes allow, along the basic profile",
        items,
        new Drawing.Frame(0, low, PITCHES * pitch, 0.35 * pitch));
  }

  private double depth(Length diameter) {
    return thread.major().minus(diameter).millimetres() / 2;
  }

  private double depth(Optional<Length> limit, Length basic) {
    return depth(limit.orElse(basic));
  }

  private void label(double pitches, String words) {
    items.add(
        new Item.Label(
            new Point(PITCHES * pitch / 2, pitches * pitch), words, Item.Side.CENTRE, false));
  }

  private void zone(Tone tone, LimitsOfThread limits) {
    List<Point> most = outline(limits, true);
    List<Point> least = outline(limits, false);
    List<Point> ring = new ArrayList<>(most);
    List<Point> back = new ArrayList<>(least);
    Collections.reverse(back);
    ring.addAll(back);
    items.add(new Item.Area(tone, ring, List.of()));
    items.add(new Item.Path(LineKind.THIN, most, false));
    items.add(new Item.Path(LineKind.THIN, least, false));
  }

  private List<Point> outline(LimitsOfThread limits, boolean most) {
    return profile(
        depth(end(limits.major(), most), thread.major()),
        depth(end(limits.effective(), most), thread.effective()),
        depth(end(limits.minor(), most), basicMinor(limits)));
  }

  private Length basicMinor(LimitsOfThread limits) {
    return limits.side() == org.fettlebench.threads.ThreadSide.EXTERNAL
        ? thread.minorExternal()
        : thread.minorInternal();
  }

  /** Returns one end of a range; where the standard leaves it open, the other. */
  private static Optional<Length> end(DiameterRange range, boolean most) {
    return most ? range.most().or(range::least) : range.least().or(range::most);
  }

  /**
   * Returns flanks through the effective diameter, cut off at crest and root; depths below major.
   */
  private List<Point> profile(double crest, double effective, double root) {
    List<Point> points = new ArrayList<>();
    double onCrest = Math.max(0, pitch / 4 - (effective - crest) * tangent);
    double onRoot = Math.min(pitch / 2, pitch / 4 + (root - effective) * tangent);
    for (int i = 0; i < PITCHES; i++) {
      double left = i * pitch;
      points.add(new Point(left, -crest));
      points.add(new Point(left + onCrest, -crest));
      points.add(new Point(left + onRoot, -root));
      points.add(new Point(left + pitch - onRoot, -root));
      points.add(new Point(left + pitch - onCrest, -crest));
    }
    points.add(new Point(PITCHES * pitch, -crest));
    return points;
  }
}
