package org.fettlebench.castings.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.CastingView;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.measure.Point;

/**
 * Draws the body of the finished part as far as it is known: bounded by its faces and bosses, and
 * broken off (thin line with a zigzag, ISO 128) where nothing was measured.
 */
final class BodyPicture {
  /** How far a break line stands out of the body, and how wide its zigzag is, of its length. */
  private static final double BREAK_SHARE = 0.04;

  private final Placing placing;
  private final PlacedPart part;
  private final CastingView view;

  BodyPicture(Placing placing, PlacedPart part, CastingView view) {
    this.placing = placing;
    this.part = part;
    this.view = view;
  }

  /** Returns the outline of the body. */
  List<Point> outline() {
    List<RoundFace> bosses =
        placing.casting().features().stream()
            .filter(RoundFace.class::isInstance)
            .map(RoundFace.class::cast)
            .filter(round -> round.kind() == RoundFace.Kind.BOSS && round.along() == view.along())
            .toList();
    if (bosses.isEmpty()) {
      return box();
    }
    List<Point> points = new ArrayList<>();
    for (RoundFace boss : bosses) {
      Spot centre = boss.finishedCentre();
      points.addAll(
          RoundPicture.ring(
              part.placed(centre.alongMm(view.across()), centre.alongMm(view.up())),
              boss.finishedDiameterMm() / 2));
    }
    for (Axis axis : List.of(view.across(), view.up())) {
      for (int sign = -1; sign <= 1; sign += 2) {
        points.addAll(faceEnds(axis, sign));
      }
    }
    return hull(points);
  }

  private List<Point> box() {
    return List.of(
        part.placed(part.low(view.across()), part.low(view.up())),
        part.placed(part.high(view.across()), part.low(view.up())),
        part.placed(part.high(view.across()), part.high(view.up())),
        part.placed(part.low(view.across()), part.high(view.up())));
  }

  private List<Point> faceEnds(Axis axis, int sign) {
    boolean faced =
        placing.casting().features().stream()
            .anyMatch(
                one ->
                    one instanceof FlatFace face
                        && face.towards().axis() == axis
                        && face.towards().sign() == sign);
    return faced ? side(axis, sign) : List.of();
  }

  private List<Point> side(Axis axis, int sign) {
    double place = sign < 0 ? part.low(axis) : part.high(axis);
    return axis == view.across()
        ? List.of(part.placed(place, part.low(view.up())), part.placed(place, part.high(view.up())))
        : List.of(
            part.placed(part.low(view.across()), place),
            part.placed(part.high(view.across()), place));
  }

  /** Returns the break lines of the sides that nothing bounds. */
  List<Item> breaks() {
    List<Item> lines = new ArrayList<>();
    for (Axis axis : List.of(view.across(), view.up())) {
      for (int sign = -1; sign <= 1; sign += 2) {
        if (!part.bounded(axis, sign)) {
          List<Point> side = side(axis, sign);
          lines.add(new Item.Path(LineKind.THIN, broken(side.get(0), side.get(1)), false));
        }
      }
    }
    return lines;
  }

  private static List<Point> broken(Point from, Point to) {
    double dx = to.xMm() - from.xMm();
    double dy = to.yMm() - from.yMm();
    double out = BREAK_SHARE;
    return List.of(
        from.moved(-2 * out * dx, -2 * out * dy),
        from.moved((0.5 - out) * dx, (0.5 - out) * dy),
        from.moved(0.5 * dx - out * dx / 2 - out * dy, 0.5 * dy - out * dy / 2 + out * dx),
        from.moved(0.5 * dx + out * dx / 2 + out * dy, 0.5 * dy + out * dy / 2 - out * dx),
        from.moved((0.5 + out) * dx, (0.5 + out) * dy),
        to.moved(2 * out * dx, 2 * out * dy));
  }

  /** Returns the convex hull, by Andrew's monotone chain. */
  private static List<Point> hull(List<Point> points) {
    List<Point> sorted =
        points.stream()
            .distinct()
            .sorted(Comparator.comparingDouble(Point::xMm).thenComparingDouble(Point::yMm))
            .toList();
    List<Point> reversed = new ArrayList<>(sorted);
    java.util.Collections.reverse(reversed);
    List<Point> hull = new ArrayList<>(chain(sorted));
    hull.addAll(chain(reversed));
    return hull;
  }

  private static List<Point> chain(List<Point> sorted) {
    List<Point> chain = new ArrayList<>();
    for (Point next : sorted) {
      while (chain.size() > 1
          && !left(chain.get(chain.size() - 2), chain.get(chain.size() - 1), next)) {
        chain.remove(chain.size() - 1);
      }
      chain.add(next);
    }
    return chain.subList(0, chain.size() - 1);
  }

  private static boolean left(Point a, Point b, Point c) {
    return (b.xMm() - a.xMm()) * (c.yMm() - a.yMm()) - (b.yMm() - a.yMm()) * (c.xMm() - a.xMm())
        > 0;
  }
}
