package org.fettlebench.fits;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.fettlebench.fits.PositionLaw.Part;

/**
 * A law of position as a weighted list of laws whose errors along x and y are independent. Without
 * a circle it is a single one. An error evenly spread in a circle of radius a is mixed of bars: at
 * x = u, y is bounded by sqrt(a^2 - u^2), and u has the density 2 sqrt(a^2 - u^2) / (pi a^2), whose
 * integrals Gauss and Chebyshev's rule of the second kind gives: u = a cos(i pi / (n + 1)) with the
 * weight 2 sin^2(i pi / (n + 1)) / (n + 1).
 */
final class Mixture {
  /** Bars that do for a smooth sum, for one with corners, and for a circle alone. */
  private static final int FEWEST = 24;

  private static final int MANY = 128;
  private static final int ALONE = 1000;

  private final List<Component> components;

  /** One of the laws, moved by an offset. */
  record Component(double weight, double offsetX, double offsetY, AxisLaw x, AxisLaw y) {}

  /** Asks one of the laws for a chance. */
  interface Integral {
    double chance(Component law);
  }

  private Mixture(List<Component> components) {
    this.components = components;
  }

  static Mixture of(PositionLaw law) {
    double sigmaX = 0;
    double sigmaY = 0;
    List<Double> boundsX = new ArrayList<>();
    List<Double> boundsY = new ArrayList<>();
    double circle = 0;
    for (Part part : law.parts()) {
      if (part.law() instanceof ErrorLaw.Normal normal) {
        sigmaX = Math.hypot(sigmaX, normal.sigmaXMm());
        sigmaY = Math.hypot(sigmaY, normal.sigmaYMm());
      } else if (part.law() instanceof ErrorLaw.Bounded bounded) {
        boundsX.add(bounded.halfXMm());
        boundsY.add(bounded.halfYMm());
      } else if (part.law() instanceof ErrorLaw.Circle round) {
        circle = round.radiusMm();
      }
    }
    AxisLaw x = new AxisLaw(sigmaX, array(boundsX, 0));
    if (circle == 0) {
      AxisLaw y = new AxisLaw(sigmaY, array(boundsY, 0));
      return new Mixture(List.of(new Component(1, law.offsetXMm(), law.offsetYMm(), x, y)));
    }
    List<Component> bars = new ArrayList<>();
    int count = bars(circle, sigmaX, x);
    for (int i = 1; i <= count; i++) {
      double angle = i * Math.PI / (count + 1);
      AxisLaw y = new AxisLaw(sigmaY, array(boundsY, circle * Math.sin(angle)));
      double weight = 2 * Math.pow(Math.sin(angle), 2) / (count + 1);
      double offsetX = law.offsetXMm() + circle * Math.cos(angle);
      bars.add(new Component(weight, offsetX, law.offsetYMm(), x, y));
    }
    return new Mixture(bars);
  }

  private static int bars(double circle, double sigmaX, AxisLaw x) {
    if (x.exact()) {
      return ALONE;
    }
    double smooth = FEWEST * Math.max(1, circle / sigmaX);
    return (int) Math.min(MANY, smooth);
  }

  private static double[] array(List<Double> bounds, double more) {
    double[] array = new double[bounds.size() + (more > 0 ? 1 : 0)];
    for (int i = 0; i < bounds.size(); i++) {
      array[i] = bounds.get(i);
    }
    if (more > 0) {
      array[array.length - 1] = more;
    }
    return Arrays.stream(array).filter(bound -> bound > 0).toArray();
  }

  double chance(Integral integral) {
    double sum = 0;
    for (Component law : components) {
      sum += law.weight() * integral.chance(law);
    }
    return Math.min(1, Math.max(0, sum));
  }

  /** Returns a radius beyond which nothing is left. */
  double reach() {
    return components.stream()
        .mapToDouble(
            law ->
                Math.hypot(
                    Math.abs(law.offsetX()) + law.x().reach(),
                    Math.abs(law.offsetY()) + law.y().reach()))
        .max()
        .orElseThrow();
  }
}
