package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.fettlebench.fits.Arc;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatAnswer.Governing.Kind;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Spanner;
import org.fettlebench.measure.Point;

/** Lists what a head and its hole must keep away from on a seat, and how far. */
final class Plan {
  /** Directions tried for an open spanner: every 15 degrees. */
  private static final int DIRECTIONS = 24;

  private final Seat seat;
  private final Tiers tiers;
  private final double holeNeedMm;
  private final List<Feature> obstacles;
  private final OptionalDouble spannerFromDegrees;

  Plan(SeatQuestion question) {
    this.seat = question.seat();
    this.holeNeedMm = question.holeDiameterMm() / 2 + seat.leastMetalMm();
    SeatedHead head = question.head();
    boolean open =
        head.acrossFlatsMm().isPresent()
            && head.spanner().filter(each -> each.kind() == Spanner.Kind.OPEN).isPresent();
    this.spannerFromDegrees = open ? OptionalDouble.of(freest(head)) : OptionalDouble.empty();
    this.tiers = Tiers.of(head, Math.toRadians(spannerFromDegrees.orElse(0)));
    this.obstacles = obstacles(tiers);
  }

  /** Returns the direction from which an open spanner has most room at the intended centre. */
  private double freest(SeatedHead head) {
    double best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < DIRECTIONS; i++) {
      double degrees = i * 360.0 / DIRECTIONS;
      double room = Double.MAX_VALUE;
      for (Feature each : obstacles(Tiers.of(head, Math.toRadians(degrees)))) {
        room = Math.min(room, each.room(seat.intended().xMm(), seat.intended().yMm()));
      }
      if (room > most + Tolerances.SAME_MM) {
        most = room;
        best = degrees;
      }
    }
    return best;
  }

  /** Returns the direction from which an open spanner comes; empty without one. */
  OptionalDouble spannerFromDegrees() {
    return spannerFromDegrees;
  }

  Sweep bearing() {
    return tiers.bearing().sweep();
  }

  /** Returns what the hole needs about its centre: its radius and the metal wanted. */
  double holeNeedMm() {
    return holeNeedMm;
  }

  /** Returns what stands on the flat. */
  List<Feature> obstacles() {
    return obstacles;
  }

  Room room() {
    List<Ring> rings = new ArrayList<>();
    rings.add(bearingRing());
    // Where what bears needs more than the hole all round, the hole can never govern.
    if (holeNeedMm > bearing().leastReachMm()) {
      rings.add(ring(seat.outline(), new Label(Kind.METAL, "metal to the ", "", "hole"), true));
    }
    seat.underside()
        .ifPresent(
            below -> {
              Label label = new Label(Kind.METAL_BELOW, "metal below to the ", "", "hole");
              rings.add(ring(below, label, true));
            });
    for (int i = 0; i < seat.cavities().size(); i++) {
      String prefix = seat.cavities().size() == 1 ? "hollow, " : "hollow " + (i + 1) + ", ";
      Label label = new Label(Kind.CAVITY, prefix, "", "hole");
      rings.add(ring(seat.cavities().get(i), label, false));
    }
    return new Room(rings, obstacles);
  }

  private List<Feature> obstacles(Tiers of) {
    List<Feature> found = new ArrayList<>();
    for (Seat.Wall wall : seat.walls()) {
      for (Tiers.Tier tier : of.meeting(wall)) {
        Label label = new Label(Kind.WALL, wall.name(), tier.words());
        found.add(tier.sweep().grown(label, wall.from(), wall.to(), tier.off(wall)));
      }
    }
    for (Seat.Neighbour other : seat.neighbours()) {
      for (Tiers.Tier tier : of.meeting(other)) {
        Label label = new Label(Kind.NEIGHBOUR, other.name(), tier.words());
        found.add(tier.sweep().grown(label, other.centre(), other.centre(), other.radiusMm()));
      }
    }
    return found;
  }

  /** Returns the flat's edge as what bears must keep within it. */
  Ring bearingRing() {
    Label label = new Label(Kind.EDGE, "", tiers.bearing().words());
    if (bearing().round()) {
      List<Side> sides = sides(seat.outline(), label, bearing().radiusMm());
      return new Ring(sides, sides, true);
    }
    List<Side> sides = new ArrayList<>();
    List<Feature> hulls = new ArrayList<>();
    for (Side side : sides(seat.outline(), label, 0)) {
      List<Point> line = side.line();
      for (int i = 0; i + 1 < line.size(); i++) {
        sides.add(new Bar(side.label(), line.get(i), line.get(i + 1), 0));
        hulls.add(bearing().grown(side.label(), line.get(i), line.get(i + 1), 0));
      }
    }
    return new Ring(sides, hulls, true);
  }

  private Ring ring(Outline outline, Label label, boolean keepInside) {
    List<Side> sides = sides(outline, label, holeNeedMm);
    return new Ring(sides, sides, keepInside);
  }

  /** Returns the sides of a line, anticlockwise. */
  private static List<Side> sides(Outline outline, Label label, double needMm) {
    boolean reversed = areaMm2(outline.points()) < 0;
    List<Side> sides = new ArrayList<>(outline.edges().size());
    for (Outline.Edge edge : outline.edges()) {
      Label named = new Label(label.kind(), label.prefix(), edge.name(), label.meets());
      if (edge.arc().isPresent()) {
        bows(named, edge, reversed, needMm, sides);
      } else if (reversed) {
        sides.add(new Bar(named, edge.to(), edge.from(), needMm));
      } else {
        sides.add(new Bar(named, edge.from(), edge.to(), needMm));
      }
    }
    if (reversed) {
      Collections.reverse(sides);
    }
    return sides;
  }

  /** Adds an arc in parts of less than half a turn. */
  private static void bows(
      Label label, Outline.Edge edge, boolean reversed, double needMm, List<Side> sides) {
    Arc arc = edge.arc().orElseThrow();
    int parts = (int) Math.ceil(Math.abs(arc.sweepRadians()) / 3);
    for (int i = 0; i < parts; i++) {
      Arc part = arc.part((double) i / parts, (double) (i + 1) / parts);
      List<Point> line = new ArrayList<>(part.points());
      if (i == 0) {
        line.set(0, edge.from());
      }
      if (i == parts - 1) {
        line.set(line.size() - 1, edge.to());
      }
      if (reversed) {
        Collections.reverse(line);
      }
      sides.add(new Bow(label, line, reversed ? part.reversed() : part, needMm));
    }
  }

  /** Returns the area within a closed line: positive when its corners run anticlockwise. */
  static double areaMm2(List<Point> corners) {
    double twice = 0;
    Point origin = corners.get(0);
    Point a = corners.get(corners.size() - 1);
    for (Point b : corners) {
      twice +=
          (a.xMm() - origin.xMm()) * (b.yMm() - origin.yMm())
              - (b.xMm() - origin.xMm()) * (a.yMm() - origin.yMm());
      a = b;
    }
    return twice / 2;
  }
}
