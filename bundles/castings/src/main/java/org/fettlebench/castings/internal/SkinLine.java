package org.fettlebench.castings.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Spot;

/**
 * The rough skin of a flat face seen from its edge: through the spots where least metal is, since
 * those decide.
 */
final class SkinLine {
  /** Spots closer along the line than this share of the part stand behind one another. */
  private static final double BEHIND_SHARE = 0.05;

  /**
   * A corner of the line.
   *
   * @param along where on the line
   * @param place how far out along the face's axis
   */
  record Knot(double along, double place) {}

  private final List<Knot> knots = new ArrayList<>();

  SkinLine(FlatFace face, Axis line, PlacedPart part) {
    int sign = face.towards().sign();
    List<Knot> all = new ArrayList<>();
    for (Spot rough : face.rough()) {
      Spot spot = part.onDrawing(rough);
      all.add(new Knot(spot.alongMm(line), spot.alongMm(face.towards().axis())));
    }
    all.sort(Comparator.comparingDouble(Knot::along));
    double behind = BEHIND_SHARE * part.size(line);
    for (Knot next : all) {
      int last = knots.size() - 1;
      if (last < 0 || next.along() - knots.get(last).along() > behind) {
        knots.add(next);
      } else if (sign * (next.place() - knots.get(last).place()) < 0) {
        knots.set(last, next);
      }
    }
  }

  /** Returns how far out the skin is, drawn on beyond the spots at the ends. */
  double at(double along) {
    if (knots.size() == 1) {
      return knots.get(0).place();
    }
    int i = 1;
    while (i < knots.size() - 1 && along > knots.get(i).along()) {
      i++;
    }
    Knot from = knots.get(i - 1);
    Knot to = knots.get(i);
    double share = (along - from.along()) / (to.along() - from.along());
    return from.place() + share * (to.place() - from.place());
  }

  /** Returns the line from one end to the other, with the knots between. */
  List<Knot> between(double from, double to) {
    List<Knot> line = new ArrayList<>();
    line.add(new Knot(from, at(from)));
    knots.stream().filter(knot -> knot.along() > from && knot.along() < to).forEach(line::add);
    line.add(new Knot(to, at(to)));
    return line;
  }

  double first() {
    return knots.get(0).along();
  }

  double last() {
    return knots.get(knots.size() - 1).along();
  }
}
