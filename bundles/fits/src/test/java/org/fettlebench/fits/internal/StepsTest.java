package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.fettlebench.fits.SeatAnswer.Governing.Kind;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.distance.DistanceOp;

/** The two small linear problems against a library's simplex and a library's polygons. */
class StepsTest {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private static final Label LABEL = new Label(Kind.EDGE, "edge", "head");
  private static final double CLOSE = 1e-7;
  private static final double FAR = 1_000;

  static IntStream seeds() {
    return IntStream.range(0, 60);
  }

  /** Long straight edges all round the origin, so many and so far away. */
  private static List<Touch> around(Random random, int count, double need) {
    List<Touch> touches = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / count;
      touches.add(edge(angle, 2 + 6 * random.nextDouble(), need));
    }
    return touches;
  }

  /** An edge square to a direction. */
  private static Touch edge(double angle, double away, double need) {
    Point foot = new Point(away * Math.cos(angle), away * Math.sin(angle));
    Point along = new Point(-FAR * Math.sin(angle), FAR * Math.cos(angle));
    return new Bar(
            LABEL,
            foot.moved(along.xMm(), along.yMm()),
            foot.moved(-along.xMm(), -along.yMm()),
            need)
        .touch(0, 0);
  }

  private static double room(List<Touch> touches, Steps.Step step) {
    return touches.stream()
        .mapToDouble(t -> t.roomMm() + t.riseX() * step.dx() + t.riseY() * step.dy())
        .min()
        .orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void raisesAsFarAsTheSimplexDoes(int seed) {
    Random random = new Random(seed);
    List<Touch> touches = around(random, 1 + seed % 12, 1);
    double most = 0.2 + 8 * random.nextDouble();

    Steps.Step step = Steps.raise(touches, most);

    List<LinearConstraint> bounds = new ArrayList<>();
    for (Touch touch : touches) {
      bounds.add(
          new LinearConstraint(
              new double[] {touch.riseX(), touch.riseY(), -1}, Relationship.GEQ, -touch.roomMm()));
    }
    for (int axis = 0; axis < 2; axis++) {
      double[] unit = {axis == 0 ? 1 : 0, axis == 1 ? 1 : 0, 0};
      bounds.add(new LinearConstraint(unit, Relationship.LEQ, most));
      bounds.add(new LinearConstraint(unit, Relationship.GEQ, -most));
    }
    double best =
        new SimplexSolver()
            .optimize(
                new LinearObjectiveFunction(new double[] {0, 0, 1}, 0),
                new LinearConstraintSet(bounds),
                GoalType.MAXIMIZE,
                new NonNegativeConstraint(false))
            .getValue();
    assertEquals(best, step.roomMm(), CLOSE);
    assertEquals(best, room(touches, step), CLOSE);
    assertTrue(Math.abs(step.dx()) <= most + CLOSE && Math.abs(step.dy()) <= most + CLOSE);
  }

  /** The plane where no edge fails, cut out of a large square by the library. */
  private static Geometry allowed(List<Touch> touches, double leaving) {
    Geometry allowed = GEOMETRY.toGeometry(new Envelope(-FAR, FAR, -FAR, FAR));
    for (Touch touch : touches) {
      // The half plane where less room is left, as a long wide rectangle.
      double x = (leaving - touch.roomMm()) * touch.riseX();
      double y = (leaving - touch.roomMm()) * touch.riseY();
      double alongX = -3 * FAR * touch.riseY();
      double alongY = 3 * FAR * touch.riseX();
      double backX = -6 * FAR * touch.riseX();
      double backY = -6 * FAR * touch.riseY();
      Coordinate[] ring = {
        new Coordinate(x + alongX, y + alongY),
        new Coordinate(x - alongX, y - alongY),
        new Coordinate(x - alongX + backX, y - alongY + backY),
        new Coordinate(x + alongX + backX, y + alongY + backY),
        new Coordinate(x + alongX, y + alongY)
      };
      allowed = allowed.difference(GEOMETRY.createPolygon(ring));
    }
    return allowed;
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void approachesToTheNearestPlaceThatTheLibraryFinds(int seed) {
    Random random = new Random(1000 + seed);
    List<Touch> touches = around(random, 3 + seed % 9, 1.5);
    double targetX = 24 * random.nextDouble() - 12;
    double targetY = 24 * random.nextDouble() - 12;
    double leaving = seed % 2 == 0 ? 0 : 0.4;

    Steps.Step step = Steps.approach(touches, targetX, targetY, leaving);

    Coordinate nearest =
        DistanceOp.nearestPoints(
            allowed(touches, leaving), GEOMETRY.createPoint(new Coordinate(targetX, targetY)))[0];
    assertEquals(nearest.x, step.dx(), 1e-6);
    assertEquals(nearest.y, step.dy(), 1e-6);
    assertEquals(Math.hypot(step.dx(), step.dy()), step.length(), 1e-12);
  }

  @Test
  void atAnAllowedTargetNothingIsGivenUp() {
    Steps.Step step = Steps.approach(around(new Random(1), 7, 0.5), 0.3, -0.2, 0);

    assertEquals(0.3, step.dx());
    assertEquals(-0.2, step.dy());
  }

  /** Between two parallel edges every place half way is as good: the nearest one is taken. */
  @Test
  void ofEquallyGoodShiftsTheShortestIsTaken() {
    for (double angle = 0.1; angle < 6; angle += 0.7) {
      List<Touch> slot = List.of(edge(angle, 3, 1), edge(angle + Math.PI, 5, 1));
      Steps.Step step = Steps.raise(slot, 4);
      assertEquals(3, step.roomMm(), CLOSE);
      assertEquals(-Math.cos(angle), step.dx(), CLOSE);
      assertEquals(-Math.sin(angle), step.dy(), CLOSE);
    }
  }

  /** Two edges that face each other with less between them than the head needs. */
  @Test
  void whereNothingIsAllowedThereIsNoPlaceToApproach() {
    List<Touch> narrow = List.of(edge(0, 1, 3), edge(Math.PI, 1, 3));

    assertEquals(Double.NEGATIVE_INFINITY, Steps.approach(narrow, 5, 0, 0).roomMm());
    assertEquals(0, Steps.approach(narrow, 5, 0, 0).length());
  }
}
