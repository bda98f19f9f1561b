package org.fettlebench.holes.internal.correct;

import java.util.List;
import java.util.OptionalDouble;
import org.fettlebench.holes.correct.MeasuringQuestion;
import org.fettlebench.holes.correct.Reading;
import org.fettlebench.holes.correct.Reading.Edge;
import org.fettlebench.holes.correct.Reading.To;
import org.fettlebench.measure.Point;

/** A flat of 30 by 20 and what is read from its edges. */
final class Readings {
  static final Edge NEAR = new Edge("near edge", new Point(0, 0), new Point(30, 0));
  static final Edge LEFT = new Edge("left edge", new Point(0, 20), new Point(0, 0));
  static final Edge FAR = new Edge("far edge", new Point(30, 20), new Point(0, 20));
  static final Edge RIGHT = new Edge("right edge", new Point(30, 0), new Point(30, 20));

  private Readings() {}

  /** A reading within 0.02 mm, so with a standard uncertainty of 0.01 mm. */
  static Reading read(Reading.Reference from, To to, double mm) {
    return new Reading(from, to, mm, 0.02);
  }

  static MeasuringQuestion ask(double hole, double pin, Point near, Reading... readings) {
    return new MeasuringQuestion(List.of(readings), hole, OptionalDouble.of(pin), near);
  }
}
