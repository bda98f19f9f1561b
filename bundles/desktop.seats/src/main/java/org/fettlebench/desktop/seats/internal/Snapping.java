package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.desktop.seats.internal.Edges.Foot;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** Draws a dragged thing to corners, edges, centre lines and whole steps of the unit. */
final class Snapping {
  /** Steps of the millimetre grid, mm; the inch grid has tenths of them in inches. */
  private static final double[] STEPS = {0.01, 0.05, 0.1, 0.5, 1, 5, 10, 50, 100};

  /** A step is no finer on the screen than this, pixels. */
  private static final double LEAST_PIXELS = 4;

  private Snapping() {}

  /**
   * Where something lands.
   *
   * @param at the place
   * @param onX whether it stands in line with something above or below it
   * @param onY whether it stands in line with something beside it
   * @param words what it was drawn to, for people; empty when to the grid only
   */
  record Snapped(Point at, boolean onX, boolean onY, String words) {}

  /** Returns the step of the grid at a zoom, mm. */
  static double stepMm(LengthUnit unit, double pixelsPerMm) {
    double unitMm = unit.nanometres() / (double) Length.NM_PER_MM;
    double share = unit == LengthUnit.INCH ? 0.1 : 1;
    for (double step : STEPS) {
      if (step * share * unitMm * pixelsPerMm >= LEAST_PIXELS) {
        return step * share * unitMm;
      }
    }
    return STEPS[STEPS.length - 1] * share * unitMm;
  }

  /**
   * Returns where a handle lands that the pointer has at a place.
   *
   * @param reachMm how far corners, edges and lines draw
   * @param stepMm step of the grid
   */
  static Snapped snap(Sketch sketch, Handle moving, Point place, double reachMm, double stepMm) {
    Optional<Point> corner =
        targets(sketch, moving).stream()
            .filter(each -> each.distanceMm(place) <= reachMm)
            .min((a, b) -> Double.compare(a.distanceMm(place), b.distanceMm(place)));
    if (corner.isPresent()) {
      return new Snapped(corner.get(), true, true, "on a corner or centre");
    }
    Optional<Foot> edge =
        moving.kind() == Handle.Kind.CORNER
            ? Optional.empty()
            : Edges.nearest(sketch.shape().corners(), place)
                .filter(foot -> foot.distanceMm() <= reachMm);
    if (edge.isPresent()) {
      return new Snapped(edge.get().at(), false, false, "on the edge");
    }
    return lines(sketch, moving, place, new double[] {reachMm, stepMm});
  }

  private static Snapped lines(Sketch sketch, Handle moving, Point place, double[] reachAndStep) {
    List<Point> lines = new ArrayList<>(targets(sketch, moving));
    lines.add(new Point(0, 0));
    double[] x = line(lines.stream().map(Point::xMm).toList(), place.xMm(), reachAndStep);
    double[] y = line(lines.stream().map(Point::yMm).toList(), place.yMm(), reachAndStep);
    boolean onX = x[1] > 0;
    boolean onY = y[1] > 0;
    return new Snapped(
        new Point(x[0], y[0]), onX, onY, onX || onY ? "in line with a corner or centre" : "");
  }

  /** Returns the nearest line within reach and 1, else the nearest step and 0. */
  private static double[] line(List<Double> lines, double at, double[] reachAndStep) {
    double best = Double.NaN;
    for (double line : lines) {
      boolean nearer = !(Math.abs(best - at) <= Math.abs(line - at));
      best = Math.abs(line - at) <= reachAndStep[0] && nearer ? line : best;
    }
    double step = reachAndStep[1];
    // The grid counts in whole nanometres, so that 0.3 is 0.3 and not a little more.
    double onGrid = Length.ofMillimetres(Math.round(at / step) * step).millimetres();
    return Double.isNaN(best) ? new double[] {onGrid, 0} : new double[] {best, 1};
  }

  /** Returns the corners and centres that are not the moved thing's own. */
  private static List<Point> targets(Sketch sketch, Handle moving) {
    List<Point> targets = new ArrayList<>();
    for (Handles.Placed each : Handles.of(sketch)) {
      boolean ends = each.handle().kind() != Handle.Kind.WALL;
      if (ends && !own(each.handle(), moving)) {
        targets.add(each.at());
      }
    }
    if (moving.kind() != Handle.Kind.CORNER) {
      // While a corner moves, the middle moves with it and is nothing to go by.
      sketch.shape().middle().ifPresent(targets::add);
    }
    return targets;
  }

  private static boolean own(Handle handle, Handle moving) {
    boolean wall = wall(handle) && wall(moving);
    boolean middle = handle.kind() == Handle.Kind.CENTRE && moving.kind() == Handle.Kind.CORNER;
    return handle.equals(moving) || wall && handle.index() == moving.index() || middle;
  }

  private static boolean wall(Handle handle) {
    return handle.kind() == Handle.Kind.WALL
        || handle.kind() == Handle.Kind.WALL_FROM
        || handle.kind() == Handle.Kind.WALL_TO;
  }
}
