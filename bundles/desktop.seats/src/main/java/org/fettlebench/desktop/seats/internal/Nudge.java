package org.fettlebench.desktop.seats.internal;

import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** Moves a handle by steps of the keyboard. */
final class Nudge {
  private static final Length THOU = Length.ofNanometres(Length.NM_PER_INCH / 1000);

  private Nudge() {}

  /** Returns a step: 0.1 mm or 5 thou, finer 0.01 mm or half a thou. */
  static double stepMm(LengthUnit unit, boolean fine) {
    if (unit == LengthUnit.INCH) {
      return fine ? THOU.millimetres() / 2 : THOU.millimetres() * 5;
    }
    return fine ? 0.01 : 0.1;
  }

  /** Returns the sketch with a handle moved; many steps do not add up what rounding leaves. */
  static Sketch moved(Sketch sketch, Handle handle, double dxMm, double dyMm) {
    return Handles.at(sketch, handle)
        .map(at -> Handles.moved(sketch, handle, exact(at.moved(dxMm, dyMm))))
        .orElse(sketch);
  }

  private static Point exact(Point at) {
    return new Point(
        Length.ofMillimetres(at.xMm()).millimetres(), Length.ofMillimetres(at.yMm()).millimetres());
  }
}
