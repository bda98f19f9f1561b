package org.fettlebench.castings.internal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.CastingView;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.PlacingWords;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.castings.Towards;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** One view of a placed casting in the making, to scale in the rough frame. */
final class CastingPicture {
  /** Corners of skin lines that are nearly square meet within a few rounds. */
  private static final int CORNER_ROUNDS = 8;

  private static final double STEP_SHARE = 0.12;
  private static final double MARGIN_SHARE = 0.06;

  private final Placing placing;
  private final CastingView view;
  private final LengthUnit unit;
  private final PlacedPart part;
  private final List<Item> areas = new ArrayList<>();
  private final List<Item> lines = new ArrayList<>();
  private final List<Point> reached = new ArrayList<>();

  CastingPicture(Placing placing, CastingView view, LengthUnit unit) {
    this.placing = placing;
    this.view = view;
    this.unit = unit;
    this.part = new PlacedPart(placing, view);
  }

  Drawing draw() {
    List<Point> body =
        List.of(
            corner(part.low(view.across()), part.low(view.up())),
            corner(part.high(view.across()), part.low(view.up())),
            corner(part.high(view.across()), part.high(view.up())),
            corner(part.low(view.across()), part.high(view.up())));
    areas.add(new Item.Area(Tone.PART, body, List.of()));
    for (Placing.Coming one : placing.features()) {
      if (one.feature() instanceof FlatFace face && face.towards().axis() != view.along()) {
        flat(one, face);
      }
    }
    RoundPicture rounds = new RoundPicture(part, view, unit);
    for (Placing.Coming one : placing.features()) {
      if (one.feature() instanceof RoundFace round) {
        rounds.draw(one, round);
      }
    }
    areas.addAll(rounds.areas());
    lines.addAll(rounds.lines());
    reached.addAll(rounds.reached());
    List<Item> items = new ArrayList<>(areas);
    items.addAll(lines);
    return new Drawing(title(), items, frame());
  }

  private String title() {
    PlacingWords words = new PlacingWords(placing, unit);
    return placing.casting().name()
        + " "
        + view.words()
        + ": "
        + words.verdict()
        + ", "
        + words.spare();
  }

  private Point corner(double across, double up) {
    Point point = part.placed(across, up);
    reached.add(point);
    return point;
  }

  private void flat(Placing.Coming one, FlatFace face) {
    Axis line = face.towards().axis() == view.across() ? view.up() : view.across();
    SkinLine skin = new SkinLine(face, line, part);
    boolean outer =
        part.outermost(face.towards()).filter(first -> first.feature().equals(face)).isPresent();
    double step = STEP_SHARE * part.size(line);
    double low = outer ? part.low(line) : Math.min(skin.first(), skin.last() - step);
    double high = outer ? part.high(line) : Math.max(skin.last(), skin.first() + step);
    List<SkinLine.Knot> rough =
        skin.between(
            outer ? roughEnd(face, skin, line, -1) : low,
            outer ? roughEnd(face, skin, line, 1) : high);
    List<Point> roughLine = rough.stream().map(knot -> at(face, line, knot)).toList();
    List<Point> finished =
        List.of(
            at(face, line, new SkinLine.Knot(low, face.finishedMm())),
            at(face, line, new SkinLine.Knot(high, face.finishedMm())));
    List<Point> metal = new ArrayList<>(roughLine);
    metal.add(finished.get(1));
    metal.add(finished.get(0));
    areas.add(new Item.Area(Tone.WALL, metal, List.of()));
    lines.add(new Item.Path(LineKind.THIN, roughLine, false));
    lines.add(
        new Item.Path(one.governs() ? LineKind.GOVERNING : LineKind.OUTLINE, finished, false));
    for (Spot spot : face.rough()) {
      Point point = part.onPaper(spot);
      if (shown(face, line, spot, rough)) {
        lines.add(new Item.Marker(point, Item.Mark.SALTIRE));
        reached.add(point);
      }
    }
    label(one, face, roughLine, finished);
    reached.addAll(roughLine);
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

  private void label(Placing.Coming one, FlatFace face, List<Point> rough, List<Point> finished) {
    boolean across = face.towards().axis() == view.across();
    List<Point> all = new ArrayList<>(rough);
    all.addAll(finished);
    double out =
        Collections.max(
            all.stream().map(p -> face.towards().sign() * (across ? p.xMm() : p.yMm())).toList());
    double place = face.towards().sign() * out;
    double middleX = (finished.get(0).xMm() + finished.get(1).xMm()) / 2;
    double middleY = (finished.get(0).yMm() + finished.get(1).yMm()) / 2;
    Item.Side side =
        across
            ? face.towards().sign() < 0 ? Item.Side.LEFT : Item.Side.RIGHT
            : face.towards().sign() < 0 ? Item.Side.BELOW : Item.Side.ABOVE;
    lines.add(
        new Item.Label(
            across ? new Point(place, middleY) : new Point(middleX, place),
            face.name() + " " + off(one, unit),
            side,
            one.governs()));
  }

  /** Returns what comes off, short enough for a drawing. */
  static String off(Placing.Coming one, LengthUnit unit) {
    String least = LengthFormat.show(Length.ofMillimetres(one.leastMm()), unit);
    String most = LengthFormat.show(Length.ofMillimetres(one.mostMm()), unit);
    return least.equals(most)
        ? least
        : LengthFormat.number(Length.ofMillimetres(one.leastMm()), unit) + " to " + most;
  }

  private Drawing.Frame frame() {
    double minX = Collections.min(reached.stream().map(Point::xMm).toList());
    double minY = Collections.min(reached.stream().map(Point::yMm).toList());
    double maxX = Collections.max(reached.stream().map(Point::xMm).toList());
    double maxY = Collections.max(reached.stream().map(Point::yMm).toList());
    double edge = MARGIN_SHARE * Math.max(maxX - minX, maxY - minY);
    return new Drawing.Frame(minX - edge, minY - edge, maxX + edge, maxY + edge);
  }
}
