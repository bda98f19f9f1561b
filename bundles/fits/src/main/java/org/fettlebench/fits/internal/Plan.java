package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatAnswer.Governing.Kind;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.measure.Point;

/** Lists what a head and its hole must keep away from on a seat, and how far. */
final class Plan {
  private final Seat seat;
  private final Sweep sweep;
  private final double holeNeedMm;

  Plan(SeatQuestion question) {
    this.seat = question.seat();
    this.sweep = Sweep.of(question.head());
    this.holeNeedMm = question.holeDiameterMm() / 2 + seat.leastMetalMm();
  }

  Sweep sweep() {
    return sweep;
  }

  /** Returns what the hole needs about its centre: its radius and the metal wanted. */
  double holeNeedMm() {
    return holeNeedMm;
  }

  Room room() {
    List<Ring> rings = new ArrayList<>();
    rings.add(ring(seat.outline(), "", Kind.EDGE, true));
    // Where the head needs more than the hole all round, the hole can never govern.
    if (holeNeedMm > sweep.leastReachMm()) {
      rings.add(ring(seat.outline(), "metal to the ", Kind.METAL, true));
    }
    seat.underside()
        .ifPresent(below -> rings.add(ring(below, "metal below to the ", Kind.METAL_BELOW, true)));
    for (int i = 0; i < seat.cavities().size(); i++) {
      String prefix = seat.cavities().size() == 1 ? "hollow, " : "hollow " + (i + 1) + ", ";
      rings.add(ring(seat.cavities().get(i), prefix, Kind.CAVITY, false));
    }
    return new Room(rings, obstacles());
  }

  private List<Feature> obstacles() {
    List<Feature> obstacles = new ArrayList<>();
    for (Seat.Wall wall : seat.walls()) {
      Label label = new Label(Kind.WALL, wall.name());
      obstacles.add(sweep.grown(label, wall.from(), wall.to(), filletReachMm(wall)));
    }
    for (Seat.Neighbour neighbour : seat.neighbours()) {
      Label label = new Label(Kind.NEIGHBOUR, neighbour.name());
      obstacles.add(
          sweep.grown(label, neighbour.centre(), neighbour.centre(), neighbour.radiusMm()));
    }
    return obstacles;
  }

  /**
   * Returns how far a fillet reaches out from its wall at the level of the flat, where the head
   * bears: its radius, or less where the wall ends before the arc does, sqrt(2 r h - h h).
   */
  static double filletReachMm(Seat.Wall wall) {
    double radius = wall.filletRadiusMm();
    double height = wall.heightMm();
    return height >= radius ? radius : Math.sqrt(height * (2 * radius - height));
  }

  private Ring ring(List<Point> outline, String prefix, Kind kind, boolean keepInside) {
    boolean reversed = areaMm2(outline) < 0;
    List<Point> corners = new ArrayList<>(outline);
    if (reversed) {
      Collections.reverse(corners);
    }
    List<Bar> edges = new ArrayList<>();
    List<Feature> features = new ArrayList<>();
    int count = corners.size();
    for (int i = 0; i < count; i++) {
      int next = (i + 1) % count;
      // Corner i of the turned-round line is corner count - 1 - i as given; people count from 1.
      int first = reversed ? count - next : i + 1;
      int second = reversed ? count - i : next + 1;
      String name = prefix + "edge from corner " + first + " to corner " + second;
      Label label = new Label(kind, name);
      edges.add(new Bar(label, corners.get(i), corners.get(next), 0));
      features.add(
          kind == Kind.EDGE
              ? sweep.grown(label, corners.get(i), corners.get(next), 0)
              : new Bar(label, corners.get(i), corners.get(next), holeNeedMm));
    }
    return new Ring(edges, features, keepInside);
  }

  /** Returns the area within a closed line: positive when its corners run anticlockwise. */
  static double areaMm2(List<Point> corners) {
    double twice = 0;
    Point origin = corners.get(0);
    for (int i = 0; i < corners.size(); i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % corners.size());
      twice +=
          (a.xMm() - origin.xMm()) * (b.yMm() - origin.yMm())
              - (b.xMm() - origin.xMm()) * (a.yMm() - origin.yMm());
    }
    return twice / 2;
  }
}
