package org.fettlebench.fits;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.Outline.Corner;
import org.fettlebench.fits.Outline.Edge;
import org.fettlebench.measure.Point;

/** Works out the pieces of a closed line from its corners. */
final class Bends {
  /** Shorter than this, what is left of an edge between two roundings is nothing. */
  private static final double NOTHING_MM = 1e-9;

  private final List<Corner> corners;
  private final List<Edge> edges = new ArrayList<>();

  private Bends(List<Corner> corners) {
    this.corners = corners;
  }

  static List<Edge> edges(List<Corner> corners) {
    Bends bends = new Bends(corners);
    for (int i = 0; i < corners.size(); i++) {
      bends.add(i);
    }
    return List.copyOf(bends.edges);
  }

  static List<Point> points(List<Edge> edges) {
    List<Point> points = new ArrayList<>();
    for (Edge edge : edges) {
      points.add(edge.from());
      edge.arc().ifPresent(arc -> points.addAll(arc.between()));
    }
    return List.copyOf(points);
  }

  /** Adds the rounding of a corner, if it has one, and the way to the next. */
  private void add(int index) {
    int next = (index + 1) % corners.size();
    Corner corner = corners.get(index);
    Point from = leave(index);
    Point to = arrive(next);
    if (corner.roundedMm() != 0) {
      edges.add(rounding(index, from));
    }
    String ends = "from corner " + (index + 1) + " to corner " + (next + 1);
    if (corner.through().isPresent()) {
      String name = "arc " + ends;
      Arc arc = Arc.through(name, from, corner.through().get(), to);
      edges.add(new Edge(name, from, to, Optional.of(arc)));
      return;
    }
    boolean nothing = corner.roundedMm() != 0 && from.distanceMm(to) < NOTHING_MM;
    if (!nothing) {
      edges.add(new Edge("edge " + ends, from, to, Optional.empty()));
    }
  }

  private Edge rounding(int index, Point leaves) {
    Corner corner = corners.get(index);
    Point arrives = arrive(index);
    Point at = corner.at();
    // The middle of the arc lies on the line from the corner to the circle's centre.
    double mx = (arrives.xMm() + leaves.xMm()) / 2 - at.xMm();
    double my = (arrives.yMm() + leaves.yMm()) / 2 - at.yMm();
    double length = Math.hypot(mx, my);
    double tangent = arrives.distanceMm(at);
    double toCentre = Math.hypot(corner.roundedMm(), tangent);
    double share = (toCentre - corner.roundedMm()) / length;
    String name = "rounding of corner " + (index + 1);
    Arc arc = Arc.through(name, arrives, at.moved(mx * share, my * share), leaves);
    return new Edge(name, arrives, leaves, Optional.of(arc));
  }

  /** Returns where the line arrives at a corner: the corner, or where its rounding begins. */
  private Point arrive(int index) {
    int before = (index + corners.size() - 1) % corners.size();
    return tangent(index, before);
  }

  private Point leave(int index) {
    return tangent(index, (index + 1) % corners.size());
  }

  /** Returns where a corner's rounding touches the edge towards a neighbour. */
  private Point tangent(int index, int neighbour) {
    Corner corner = corners.get(index);
    if (corner.roundedMm() == 0) {
      return corner.at();
    }
    double cut = cut(index);
    Point towards = corners.get(neighbour).at();
    double length = corner.at().distanceMm(towards);
    double room = length - cut(neighbour);
    if (!(cut <= room + NOTHING_MM)) {
      throw new SeatException(
          String.format(
              java.util.Locale.ROOT,
              "corner %d: a rounding of %s mm takes %.3f mm of the edge to corner %d, and %.3f mm"
                  + " are free; make it smaller",
              index + 1,
              plain(corner.roundedMm()),
              cut,
              neighbour + 1,
              Math.max(0, room)));
    }
    double share = Math.min(cut, room) / length;
    return corner
        .at()
        .moved(
            (towards.xMm() - corner.at().xMm()) * share,
            (towards.yMm() - corner.at().yMm()) * share);
  }

  /** Returns how much of its edges a corner's rounding takes: r / tan(half the angle between). */
  private double cut(int index) {
    Corner corner = corners.get(index);
    if (corner.roundedMm() == 0) {
      return 0;
    }
    String name = "corner " + (index + 1);
    if (!(corner.roundedMm() > 0 && Double.isFinite(corner.roundedMm()))) {
      throw new SeatException(
          name + ": rounding of " + plain(corner.roundedMm()) + " mm is not above 0; leave it out");
    }
    int before = (index + corners.size() - 1) % corners.size();
    if (corner.through().isPresent() || corners.get(before).through().isPresent()) {
      throw new SeatException(
          name + ": an arc ends here, so it cannot be rounded; give the rounding as an arc too");
    }
    double half = halfAngle(corners.get(before).at(), corner.at(), next(index));
    if (!(half > 1e-6 && half < Math.PI / 2 - 1e-6)) {
      throw new SeatException(
          name + ": its edges lie on one line, so there is nothing to round; leave it out");
    }
    return corner.roundedMm() / Math.tan(half);
  }

  private Point next(int index) {
    return corners.get((index + 1) % corners.size()).at();
  }

  private static double halfAngle(Point before, Point at, Point next) {
    double ax = before.xMm() - at.xMm();
    double ay = before.yMm() - at.yMm();
    double bx = next.xMm() - at.xMm();
    double by = next.yMm() - at.yMm();
    return Math.atan2(Math.abs(ax * by - ay * bx), ax * bx + ay * by) / 2;
  }

  private static String plain(double mm) {
    return mm == Math.rint(mm) && Math.abs(mm) < 1e9 ? Long.toString((long) mm) : "" + mm;
  }
}
