package org.fettlebench.castings.internal;

import java.util.List;
import java.util.Set;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Casting;
import org.fettlebench.castings.CastingView;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Freedom;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.castings.Towards;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** Castings that are drawn, and what is measured of their drawings. */
final class TrialDrawings {
  private TrialDrawings() {}

  static FlatFace face(String name, Towards towards, double finished, Spot... rough) {
    return new FlatFace(name, towards, finished, 0.5, List.of(rough), 0);
  }

  static RoundFace round(RoundFace.Kind kind, double x, double z, double finished, double rough) {
    return new RoundFace(
        kind.word(),
        kind,
        Axis.Y,
        new Spot(x, 0, z),
        finished,
        0.5,
        List.of(new RoundFace.Rough(new Spot(x, 0, z), rough)),
        0);
  }

  static Placing place(Feature... features) {
    List<Feature> all = List.of(features);
    return new CastingPlacer()
        .place(new Casting("trial", all, new Freedom(Freedom.held(all), Set.of(), 1)));
  }

  static Drawing draw(Placing placing, CastingView view) {
    return new CastingPainter().draw(placing, view, LengthUnit.MILLIMETRE);
  }

  static <T extends Item> List<T> all(Drawing drawing, Class<T> kind) {
    return drawing.items().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  static List<List<Point>> lines(Drawing drawing, LineKind kind) {
    return all(drawing, Item.Path.class).stream()
        .filter(path -> path.line() == kind)
        .map(Item.Path::points)
        .toList();
  }

  /** Returns the area of everything of a tone, in square millimetres of the real thing. */
  static double area(Drawing drawing, Tone tone) {
    return all(drawing, Item.Area.class).stream()
        .filter(each -> each.tone() == tone)
        .mapToDouble(each -> area(each.shell()))
        .sum();
  }

  /** By the shoelace formula. */
  private static double area(List<Point> shell) {
    double twice = 0;
    for (int i = 0; i < shell.size(); i++) {
      Point from = shell.get(i);
      Point to = shell.get((i + 1) % shell.size());
      twice += from.xMm() * to.yMm() - to.xMm() * from.yMm();
    }
    return Math.abs(twice) / 2;
  }

  static Item.Label label(Drawing drawing, String begins) {
    return all(drawing, Item.Label.class).stream()
        .filter(each -> each.words().startsWith(begins))
        .findFirst()
        .orElseThrow();
  }
}
