package org.fettlebench.castings.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.CastingView;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** Draws bores and bosses: circles from the end, hidden or visible sides from beside. */
final class RoundPicture {
  private static final int CHORDS = 96;

  /** How far a centre line stands out of its circle, as a share of the radius. */
  private static final double BEYOND = 1.25;

  private final PlacedPart part;
  private final CastingView view;
  private final LengthUnit unit;
  private final LeaderSlots slots;
  private final List<Item> areas = new ArrayList<>();
  private final List<Item> lines = new ArrayList<>();
  private final List<Point> reached = new ArrayList<>();

  RoundPicture(PlacedPart part, CastingView view, LengthUnit unit, LeaderSlots slots) {
    this.part = part;
    this.slots = slots;
    this.view = view;
    this.unit = unit;
  }

  List<Item> areas() {
    return areas;
  }

  List<Item> lines() {
    return lines;
  }

  /** Returns what the drawing must have room for. */
  List<Point> reached() {
    return reached;
  }

  void draw(Placing.Coming one, RoundFace round) {
    if (round.along() == view.along()) {
      fromTheEnd(one, round);
    } else {
      fromBeside(one, round);
    }
  }

  private void fromTheEnd(Placing.Coming one, RoundFace round) {
    Spot drawn = round.finishedCentre();
    Point centre = part.placed(drawn.alongMm(view.across()), drawn.alongMm(view.up()));
    double radius = round.finishedDiameterMm() / 2;
    boolean bore = round.kind() == RoundFace.Kind.BORE;
    for (RoundFace.Rough rough : round.rough()) {
      Point place = part.onPaper(rough.centre());
      double roughRadius = rough.diameterMm() / 2;
      if (bore) {
        areas.add(new Item.Area(Tone.WALL, ring(centre, radius), List.of()));
        areas.add(new Item.Area(Tone.EMPTY, ring(place, roughRadius), List.of()));
      } else {
        areas.add(new Item.Area(Tone.WALL, ring(place, roughRadius), List.of()));
        areas.add(new Item.Area(Tone.PART, ring(centre, radius), List.of()));
      }
      lines.add(new Item.Circle(LineKind.THIN, place, roughRadius));
      lines.add(new Item.Marker(place, Item.Mark.SPOT));
      box(place, roughRadius);
    }
    lines.add(
        new Item.Circle(one.governs() ? LineKind.GOVERNING : LineKind.OUTLINE, centre, radius));
    double arm = BEYOND * radius;
    centreLine(centre.moved(-arm, 0), centre.moved(arm, 0));
    centreLine(centre.moved(0, -arm), centre.moved(0, arm));
    String words =
        FaceLabel.wrapped(round.name()) + "\n" + CastingPicture.off(one, unit) + " per side";
    lines.addAll(slots.label(round, centre, words, one.governs()));
    box(centre, arm);
  }

  private void fromBeside(Placing.Coming one, RoundFace round) {
    Axis along = round.along();
    boolean lying = along == view.across();
    double middle = round.finishedCentre().alongMm(lying ? view.up() : view.across());
    double radius = round.finishedDiameterMm() / 2;
    double low = part.low(along);
    double high = part.high(along);
    boolean bore = round.kind() == RoundFace.Kind.BORE;
    // What lies inside stays dashed, also when it governs: its own view says so.
    LineKind kind = bore ? LineKind.HIDDEN : one.governs() ? LineKind.GOVERNING : LineKind.OUTLINE;
    for (int side = -1; side <= 1; side += 2) {
      Point from = at(lying, low, middle + side * radius);
      Point to = at(lying, high, middle + side * radius);
      if (!bore) {
        skin(round, lying, side, List.of(to, from));
      }
      lines.add(new Item.Path(kind, List.of(from, to), false));
      reached.add(from);
      reached.add(to);
    }
    double beyond = 0.05 * (high - low);
    centreLine(at(lying, low - beyond, middle), at(lying, high + beyond, middle));
  }

  /** Draws the rough side of a boss from end to end, hatched between it and the finished one. */
  private void skin(RoundFace round, boolean lying, int side, List<Point> finished) {
    Axis along = round.along();
    Axis across = lying ? view.up() : view.across();
    List<Point> rough = new ArrayList<>();
    double[] ends = {part.low(along), part.high(along)};
    for (double end : ends) {
      RoundFace.Rough nearest =
          round.rough().stream()
              .min(
                  Comparator.comparingDouble(
                      each -> Math.abs(part.onDrawing(each.centre()).alongMm(along) - end)))
              .orElseThrow();
      double centre = part.onDrawing(nearest.centre()).alongMm(across);
      rough.add(at(lying, end, centre + side * nearest.diameterMm() / 2));
    }
    List<Point> metal = new ArrayList<>(rough);
    metal.addAll(finished);
    areas.add(new Item.Area(Tone.WALL, metal, List.of()));
    lines.add(new Item.Path(LineKind.THIN, rough, false));
    reached.addAll(rough);
  }

  private Point at(boolean lying, double along, double across) {
    return lying ? part.placed(along, across) : part.placed(across, along);
  }

  private void centreLine(Point from, Point to) {
    lines.add(new Item.Path(LineKind.CENTRE, List.of(from, to), false));
  }

  private void box(Point centre, double radius) {
    reached.add(centre.moved(-radius, -radius));
    reached.add(centre.moved(radius, radius));
  }

  static List<Point> ring(Point centre, double radius) {
    List<Point> ring = new ArrayList<>();
    for (int i = 0; i < CHORDS; i++) {
      double angle = 2 * Math.PI * i / CHORDS;
      ring.add(centre.moved(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    return ring;
  }
}
