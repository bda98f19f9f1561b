package org.fettlebench.fits;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Point;

/**
 * A closed line of corners, joined by straight edges or by arcs, whose corners may be rounded.
 *
 * <p>Corners run in order, either way round. Figures of a seat follow the arcs themselves; {@link
 * #points()} breaks them into chords for drawing, never farther from the arc than {@link
 * #CHORD_ERROR_MM}, or a hundred-thousandth of its radius where that is more.
 */
public final class Outline {
  /** How far a chord of {@link #points()} is from its arc at most, for radii up to 50 mm. */
  public static final double CHORD_ERROR_MM = 0.0005;

  private final List<Corner> corners;
  private final List<Edge> edges;
  private final List<Point> points;

  /**
   * A corner and how the line goes on from it.
   *
   * @param at where it is; of a rounded corner, where its two edges would meet
   * @param roundedMm radius by which it is rounded off or filled in; 0 when sharp
   * @param through a place on the arc to the next corner; empty when the edge is straight
   */
  public record Corner(Point at, double roundedMm, Optional<Point> through) {
    /** Makes a sharp corner with a straight edge to the next. */
    public static Corner sharp(Point at) {
      return new Corner(at, 0, Optional.empty());
    }

    /** Returns the same corner elsewhere. */
    public Corner withAt(Point other) {
      return new Corner(other, roundedMm, through);
    }

    /** Returns the same corner rounded to another radius, in millimetres; 0 makes it sharp. */
    public Corner withRounded(double radiusMm) {
      return new Corner(at, radiusMm, through);
    }

    /** Returns the same corner with an arc to the next through a place. */
    public Corner withThrough(Point place) {
      return new Corner(at, roundedMm, Optional.of(place));
    }

    /** Returns the same corner with a straight edge to the next. */
    public Corner withStraightEdge() {
      return new Corner(at, roundedMm, Optional.empty());
    }
  }

  /**
   * One piece of the line.
   *
   * @param name for people, such as "edge from corner 2 to corner 3" or "rounding of corner 2"
   * @param from its first end
   * @param to its other end
   * @param arc of what circle it is a part; empty when straight
   */
  public record Edge(String name, Point from, Point to, Optional<Arc> arc) {}

  private Outline(List<Corner> corners) {
    this.corners = List.copyOf(corners);
    this.edges = Bends.edges(this.corners);
    this.points = bent() ? Bends.points(edges) : this.corners.stream().map(Corner::at).toList();
  }

  /** Returns the outline with straight edges between corners. */
  public static Outline of(List<Point> corners) {
    return new Outline(corners.stream().map(Corner::sharp).toList());
  }

  /**
   * Returns an outline with bends.
   *
   * @throws SeatException if a bend cannot be: its corner, what is wrong and the remedy
   */
  public static Outline ofCorners(List<Corner> corners) {
    return new Outline(corners);
  }

  /**
   * Returns a circle, as two arcs.
   *
   * @param radiusMm above 0
   */
  public static Outline circle(Point centre, double radiusMm) {
    if (!(radiusMm > 0)) {
      throw new SeatException("circle: radius " + radiusMm + " mm is not above 0; give its radius");
    }
    Corner left = Corner.sharp(centre.moved(-radiusMm, 0));
    Corner right = Corner.sharp(centre.moved(radiusMm, 0));
    return new Outline(
        List.of(
            left.withThrough(centre.moved(0, -radiusMm)),
            right.withThrough(centre.moved(0, radiusMm))));
  }

  /**
   * Returns a place on the shorter arc of a radius from one corner to the next.
   *
   * @param radiusMm at least half the distance between the two
   * @param bulgesLeft whether the arc lies to the left of the straight way from the one to the
   *     other, else to the right
   * @throws SeatException if the radius is too small, with the least that will do
   */
  public static Point throughOfRadius(Point from, Point to, double radiusMm, boolean bulgesLeft) {
    double half = from.distanceMm(to) / 2;
    if (!(half > 0 && radiusMm >= half)) {
      throw new SeatException(
          "arc radius " + radiusMm + " mm does not reach; at least " + half + " mm is needed");
    }
    double rise = radiusMm - Math.sqrt(radiusMm * radiusMm - half * half);
    double way = (bulgesLeft ? rise : -rise) / (2 * half);
    return new Point(
        (from.xMm() + to.xMm()) / 2 - (to.yMm() - from.yMm()) * way,
        (from.yMm() + to.yMm()) / 2 + (to.xMm() - from.xMm()) * way);
  }

  /** Returns the corners as given. */
  public List<Corner> corners() {
    return corners;
  }

  /** Returns the pieces of the line in order, from the first corner on. */
  public List<Edge> edges() {
    return edges;
  }

  /** Returns the line as a polygon, arcs broken into chords that end on them. */
  public List<Point> points() {
    return points;
  }

  /** Returns whether any piece of the line is an arc. */
  public boolean bent() {
    return corners.stream()
        .anyMatch(corner -> corner.through().isPresent() || corner.roundedMm() != 0);
  }

  /** Returns the same line with one corner, counted from 0, changed. */
  public Outline withCorner(int index, Corner corner) {
    List<Corner> changed = new ArrayList<>(corners);
    changed.set(index, corner);
    return new Outline(changed);
  }

  /** Returns the same line with one corner, counted from 0, moved. */
  public Outline withCornerAt(int index, Point at) {
    return withCorner(index, corners.get(index).withAt(at));
  }

  /** Returns the same line with one corner more, which then has the given place in the order. */
  public Outline withCornerAdded(int index, Corner corner) {
    List<Corner> changed = new ArrayList<>(corners);
    changed.add(index, corner);
    return new Outline(changed);
  }

  /** Returns the same line without one corner, counted from 0. */
  public Outline withoutCorner(int index) {
    List<Corner> changed = new ArrayList<>(corners);
    changed.remove(index);
    return new Outline(changed);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Outline outline && outline.corners.equals(corners);
  }

  @Override
  public int hashCode() {
    return corners.hashCode();
  }

  @Override
  public String toString() {
    return corners.toString();
  }
}
