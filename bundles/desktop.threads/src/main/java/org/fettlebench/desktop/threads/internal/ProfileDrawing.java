package org.fettlebench.desktop.threads.internal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.fettlebench.desktop.threads.internal.profile.ThreadProfile;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.DrillSize;

/**
 * Draws screw and nut in each other, cut along the axis: the screw as its form has it, the nut with
 * its crests cut off where the drilled hole is, so that the thread that is left can be seen.
 */
final class ProfileDrawing {
  private static final int PITCHES = 3;

  private final ScrewThread thread;
  private final Optional<DrillSize> hole;
  private final LengthUnit unit;
  private final ThreadProfile profile;
  private final double pitch;
  private final double right;
  private final List<Item> items = new ArrayList<>();

  private ProfileDrawing(ScrewThread thread, Optional<DrillSize> hole, LengthUnit unit) {
    this.thread = thread;
    this.hole = hole;
    this.unit = unit;
    this.pitch = thread.pitch().millimetres();
    this.profile = new ThreadProfile(thread.form(), pitch);
    this.right = PITCHES * pitch;
  }

  /**
   * Returns the drawing.
   *
   * @param hole the drill whose hole the nut is tapped in; without one the nut is as its form
   */
  static Drawing of(ScrewThread thread, Optional<DrillSize> hole, LengthUnit unit) {
    return new ProfileDrawing(thread, hole, unit).drawn();
  }

  private Drawing drawn() {
    double top = 0.5 * pitch;
    double bottom = -profile.screwDepthMm() - 0.33 * pitch;
    Optional<Double> cut = hole.map(drill -> below(drill.diameter()));
    List<Point> nut =
        cut.map(depth -> profile.nut(PITCHES, depth)).orElseGet(() -> profile.nut(PITCHES));
    body(Tone.WALL, nut, top);
    body(Tone.PART, profile.screw(PITCHES), bottom);
    levels();
    cut.ifPresent(this::holeLevel);
    items.add(
        new Item.Dimension(
            new Point(pitch, top),
            new Point(2 * pitch, top),
            4,
            "pitch " + show(thread.pitch()),
            false));
    word(0.5 * pitch, top - 0.22 * pitch, "nut");
    word(0.5 * pitch, bottom + 0.17 * pitch, "screw");
    Drawing.Frame frame =
        new Drawing.Frame(-0.95 * pitch, bottom, right + 1.35 * pitch, top + 0.1 * pitch);
    return new Drawing(title(), items, frame);
  }

  private String title() {
    return thread.designation()
        + ", screw in nut"
        + hole.map(d -> ", tapped in a hole of " + d.name()).orElse("");
  }

  /** Returns how far a diameter lies below the major one, on the radius, in millimetres. */
  private double below(Length diameter) {
    return thread.major().minus(diameter).millimetres() / 2;
  }

  private void body(Tone tone, List<Point> outline, double edge) {
    List<Point> shell = new ArrayList<>(outline);
    List<Point> back = new ArrayList<>(List.of(new Point(0, edge), new Point(right, edge)));
    Collections.reverse(back);
    shell.addAll(back);
    items.add(new Item.Area(tone, shell, List.of()));
    items.add(new Item.Path(LineKind.OUTLINE, outline, false));
  }

  /** The words stand a little apart from each other, so that they find room on a small surface. */
  private void levels() {
    double apart = 0.14 * pitch;
    level(LineKind.THIN, 0, apart, "major " + show(thread.major()));
    level(LineKind.CENTRE, -below(thread.effective()), 0, "effective " + show(thread.effective()));
    level(
        LineKind.THIN,
        -below(thread.minorExternal()),
        -apart,
        "minor of screw " + show(thread.minorExternal()));
  }

  private void level(LineKind kind, double y, double shift, String words) {
    Point end = new Point(right + 0.3 * pitch, y + shift);
    double begin = kind == LineKind.CENTRE ? 0 : right - 0.25 * pitch;
    List<Point> leader = List.of(new Point(begin, y), new Point(right + 0.1 * pitch, y), end);
    items.add(new Item.Path(kind, leader, false));
    items.add(new Item.Label(end, words, Item.Side.RIGHT, false));
  }

  private void holeLevel(double depth) {
    DrillSize drill = hole.orElseThrow();
    Point left = new Point(-0.3 * pitch, -depth);
    items.add(
        new Item.Path(
            LineKind.GOVERNING, List.of(new Point(0, -depth), new Point(right, -depth)), false));
    items.add(new Item.Path(LineKind.THIN, List.of(left, new Point(0, -depth)), false));
    items.add(new Item.Label(left, drill.name(), Item.Side.LEFT, true));
    double percent = thread.percentOfThread(drill.diameter());
    double at = 1.5 * pitch;
    items.add(
        new Item.Dimension(
            new Point(at, -depth), new Point(at, 0), 0, Figures.show(percent, 0) + " %", true));
  }

  private void word(double x, double y, String word) {
    items.add(new Item.Label(new Point(x, y), word, Item.Side.CENTRE, false));
  }

  private String show(Length length) {
    return LengthFormat.show(length, unit);
  }
}
