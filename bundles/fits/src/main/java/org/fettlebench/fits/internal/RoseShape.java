package org.fettlebench.fits.internal;

import java.util.List;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Sketch;
import org.fettlebench.fits.Reach;
import org.fettlebench.measure.Point;

/** How far the hole may be out each way: spokes that end where the allowed centres end. */
final class RoseShape {
  /** Half the length of the dash across a spoke's end, of the size of the whole. */
  private static final double DASH_SHARE = 0.006;

  private final Point centre;
  private final double size;

  RoseShape(Point centre, double size) {
    this.centre = centre;
    this.size = size;
  }

  void draw(Sketch sketch, List<Reach> rose) {
    for (Reach reach : rose) {
      reach.allowanceMm().ifPresent(mm -> spoke(sketch, reach.bearingDegrees(), mm));
    }
  }

  /** A spoke that first has to reach the allowed centres is dashed. */
  private void spoke(Sketch sketch, double degrees, double allowanceMm) {
    double ux = Math.cos(Math.toRadians(degrees));
    double uy = Math.sin(Math.toRadians(degrees));
    double far = Math.abs(allowanceMm);
    if (!(far > Tolerances.SAME_MM)) {
      return;
    }
    Point end = centre.moved(far * ux, far * uy);
    sketch.path(allowanceMm > 0 ? LineKind.THIN : LineKind.HIDDEN, List.of(centre, end), false);
    double half = Math.min(DASH_SHARE * size, far / 4);
    sketch.path(
        LineKind.THIN,
        List.of(end.moved(-uy * half, ux * half), end.moved(uy * half, -ux * half)),
        false);
  }
}
