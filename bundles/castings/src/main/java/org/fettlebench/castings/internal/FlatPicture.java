package org.fettlebench.castings.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.CastingView;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.Spot;
import org.fettlebench.castings.Towards;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** Draws flat faces from their edge: rough skin, finished line, hatched what comes off between. */
final class FlatPicture {
  /** Corners of skin lines that are nearly square meet within a few rounds. */
  private static final int CORNER_ROUNDS = 8;

  /** An inner face is drawn at least so long, of the part. */
  private static final double STEP_SHARE = 0.12;

  /** An inner face of which it is not known where it was measured is drawn so long. */
  private static final double UNKNOWN_SHARE = 0.5;

  private final PlacedPart part;
  private final CastingView view;
  private final LengthUnit unit;
  private final Set<Feature> named;
  private final List<Item> areas = new ArrayList<>();
  private final List<Item> lines = new ArrayList<>();
  private final List<Point> reached = new ArrayList<>();
  private int inner;

  FlatPicture(PlacedPart part, CastingView view, LengthUnit unit, Set<Feature> named) {
    this.named = named;
    this.part = part;
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

  /** From where to where along a face something is drawn. */
  private record Stretch(double low, double high) {}

  void draw(Placing.Coming one, FlatFace face) {
    Axis line = face.towards().axis() == view.across() ? view.up() : view.across();
    SkinLine skin = new SkinLine(face, line, part);
    boolean outer =
        part.outermost(face.towards()).filter(first -> first.feature().equals(face)).isPresent();
    Stretch stretch =
        outer ? new Stretch(part.low(line), part.high(line)) : innerStretch(face, skin, line);
    List<SkinLine.Knot> rough =
        skin.between(
            outer ? roughEnd(face, skin, line, -1) : stretch.low(),
            outer ? roughEnd(face, skin, line, 1) : stretch.high());
    List<Point> roughLine = rough.stream().map(knot -> at(face, line, knot)).toList();
    List<Point> finished =
        List.of(
            at(face, line, new SkinLine.Knot(stretch.low(), face.finishedMm())),
            at(face, line, new SkinLine.Knot(stretch.high(), face.finishedMm())));
    List<Point> metal = new ArrayList<>(roughLine);
    metal.add(finished.get(1));
    metal.add(finished.get(0));
    areas.add(new Item.Area(Tone.WALL, metal, List.of()));
    lines.add(new Item.Path(LineKind.THIN, roughLine, false));
    lines.add(
        new Item.Path(one.governs() ? LineKind.GOVERNING : LineKind.OUTLINE, finished, false));
    for (Spot spot : face.rough()) {
      if (shown(face, line, spot, rough)) {
        lines.add(new Item.Marker(part.onPaper(spot), Item.Mark.SPOT));
        reached.add(part.onPaper(spot));
      }
    }
    inner += outer ? 0 : 1;
    reached.addAll(roughLine);
    if (named.contains(face)) {
      name(one, face, outer, stretch, skin);
    }
  }

  private void name(
      Placing.Coming one, FlatFace face, boolean outer, Stretch stretch, SkinLine skin) {
    Axis line = face.towards().axis() == view.across() ? view.up() : view.across();
    FaceLabel label = new FaceLabel(part, face, line);
    double place = outer ? label.clearOfSpots(stretch.low(), stretch.high()) : aside(stretch);
    double out =
        face.towards().sign() * Math.max(sign(face, face.finishedMm()), sign(face, skin.at(place)));
    lines.add(
        label.at(
            at(face, line, new SkinLine.Knot(place, out)),
            CastingPicture.off(one, unit),
            view,
            one.governs()));
  }

  private static double sign(FlatFace face, double place) {
    return face.towards().sign() * place;
  }

  /** Names of inner faces that look at each other stand at different heights. */
  private double aside(Stretch stretch) {
    double share = inner % 2 == 1 ? 0.84 : 0.16;
    return stretch.low() + share * (stretch.high() - stretch.low());
  }

  private Stretch innerStretch(FlatFace face, SkinLine skin, Axis line) {
    double size = part.size(line);
    double step = STEP_SHARE * size;
    double low = Math.min(skin.first(), skin.last() - step);
    double high = Math.max(skin.last(), skin.first() + step);
    boolean known = face.rough().size() > 1 || low > part.low(line) && high < part.high(line);
    double middle = part.low(line) + size / 2;
    double half = UNKNOWN_SHARE * size / 2;
    return known ? new Stretch(low, high) : new Stretch(middle - half, middle + half);
  }

  /** A single size says nothing of where along the face it was measured. */
  private boolean shown(FlatFace face, Axis line, Spot spot, List<SkinLine.Knot> rough) {
    double along = part.onDrawing(spot).alongMm(line);
    return face.rough().size() > 1
        && along >= rough.get(0).along()
        && along <= rough.get(rough.size() - 1).along();
  }

  /** Returns where the rough skin of an outermost face meets that of its neighbour. */
  private double roughEnd(FlatFace face, SkinLine skin, Axis line, int sign) {
    double end = sign < 0 ? part.low(line) : part.high(line);
    Optional<FlatFace> next =
        part.outermost(towards(line, sign)).map(one -> (FlatFace) one.feature());
    if (next.isEmpty()) {
      return end;
    }
    SkinLine other = new SkinLine(next.get(), face.towards().axis(), part);
    for (int i = 0; i < CORNER_ROUNDS; i++) {
      end = other.at(skin.at(end));
    }
    return end;
  }

  private static Towards towards(Axis axis, int sign) {
    for (Towards one : Towards.values()) {
      if (one.axis() == axis && one.sign() == sign) {
        return one;
      }
    }
    throw new IllegalStateException("every axis has two ways");
  }

  private Point at(FlatFace face, Axis line, SkinLine.Knot knot) {
    return line == view.across()
        ? part.placed(knot.along(), knot.place())
        : part.placed(knot.place(), knot.along());
  }
}
