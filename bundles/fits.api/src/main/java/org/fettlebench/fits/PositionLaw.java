package org.fettlebench.fits;

import java.util.List;
import java.util.OptionalDouble;
import org.fettlebench.measure.Point;
import org.fettlebench.tables.Source;

/**
 * Where the centre of a hole lands, seen from where it was aimed: the sum of independent errors and
 * of an offset that is always the same. Along x and y as the seat has them.
 *
 * <p>Chances and radii are integrated, good to 1e-6 (a circle among the parts: to 2e-4); nothing is
 * simulated.
 *
 * @param offsetXMm what the hole is always out along x; usually 0
 * @param offsetYMm what the hole is always out along y; usually 0
 * @param parts the errors that add up; at least one, at most six that are bounded and one in a
 *     circle
 */
public record PositionLaw(double offsetXMm, double offsetYMm, List<Part> parts) {
  /** Largest error taken: as large as the largest seat. */
  static final double LARGEST_MM = 100_000;

  private static final int MOST_BOUNDED = 6;

  /**
   * One error of the sum.
   *
   * @param cause the step that brings it, in words
   * @param law how it lies
   * @param source where its figures come from
   */
  public record Part(String cause, ErrorLaw law, Source source) {}

  /** Copies what could change, refuses what cannot be added up. */
  public PositionLaw {
    parts = List.copyOf(parts);
    if (!(Math.abs(offsetXMm) <= LARGEST_MM && Math.abs(offsetYMm) <= LARGEST_MM)) {
      throw new SeatException(
          "offset x " + offsetXMm + " mm, y " + offsetYMm + " mm is outside " + LARGEST_MM + " mm");
    }
    if (parts.isEmpty()) {
      throw new SeatException("no step has a law of error; give at least one");
    }
    refuseMore("bounded laws", ErrorLaw.Bounded.class, parts, MOST_BOUNDED);
    refuseMore("laws in a circle", ErrorLaw.Circle.class, parts, 1);
  }

  private static void refuseMore(
      String what, Class<? extends ErrorLaw> kind, List<Part> parts, int most) {
    long count = parts.stream().map(Part::law).filter(kind::isInstance).count();
    if (count > most) {
      throw new SeatException(
          count + " " + what + " are more than the " + most + " that can be added; join some");
    }
  }

  /** Makes a law of one normal error, the same along x and y. */
  public static PositionLaw round(String cause, double sigmaMm, Source source) {
    return new PositionLaw(0, 0, List.of(new Part(cause, ErrorLaw.Normal.round(sigmaMm), source)));
  }

  /** Returns the standard deviation along x, without the offset. */
  public double sigmaXMm() {
    return Math.sqrt(parts.stream().mapToDouble(part -> part.law().varianceXMm2()).sum());
  }

  /** Returns the standard deviation along y, without the offset. */
  public double sigmaYMm() {
    return Math.sqrt(parts.stream().mapToDouble(part -> part.law().varianceYMm2()).sum());
  }

  /** Returns the root of the mean of both variances, without the offset. */
  public double sigmaPerAxisMm() {
    if (parts.size() == 1 && roundSigmaMm().isPresent()) {
      return roundSigmaMm().getAsDouble();
    }
    double x = sigmaXMm();
    double y = sigmaYMm();
    return x == y ? x : Math.sqrt((x * x + y * y) / 2);
  }

  /**
   * Returns the standard deviation along x and y when the sum is a normal error that is the same
   * both ways and has no offset; empty when it is not so plain.
   */
  public OptionalDouble roundSigmaMm() {
    boolean round =
        offsetXMm == 0
            && offsetYMm == 0
            && parts.stream()
                .allMatch(
                    part ->
                        part.law() instanceof ErrorLaw.Normal normal
                            && normal.sigmaXMm() == normal.sigmaYMm());
    if (!round) {
      return OptionalDouble.empty();
    }
    return parts.size() == 1 && parts.get(0).law() instanceof ErrorLaw.Normal normal
        ? OptionalDouble.of(normal.sigmaXMm())
        : OptionalDouble.of(sigmaXMm());
  }

  /**
   * Returns the radius of position error not exceeded at a confidence. For a round normal error it
   * is sigma sqrt(-2 ln(1 - c)), the Rayleigh quantile; else it is found by integration.
   *
   * @param confidence between 0 and 1, both excluded
   * @throws SeatException if the confidence is outside
   */
  public double radiusMm(double confidence) {
    if (!(confidence > 0 && confidence < 1)) {
      throw new SeatException("confidence " + confidence + " is outside 0 to 1");
    }
    OptionalDouble sigma = roundSigmaMm();
    return sigma.isPresent()
        ? sigma.getAsDouble() * Math.sqrt(-2 * Math.log1p(-confidence))
        : RadiusSearch.radiusMm(Mixture.of(this), confidence);
  }

  /**
   * Returns the chance that the radius of position error is no more than this.
   *
   * @param radiusMm 0 or more
   * @throws SeatException if the radius is negative or not a number
   */
  public double chanceWithinRadius(double radiusMm) {
    if (!(radiusMm >= 0)) {
      throw new SeatException("radius " + radiusMm + " mm is not 0 or more");
    }
    OptionalDouble sigma = roundSigmaMm();
    return sigma.isPresent()
        ? -Math.expm1(-0.5 * Math.pow(radiusMm / sigma.getAsDouble(), 2))
        : Mixture.of(this).chance(CircleIntegral.of(radiusMm));
  }

  /**
   * Returns the chance that a hole aimed at a point lands in a region. Quick enough to follow a
   * pointer: well under a millisecond for the region of a seat and normal errors.
   *
   * @param region parts of the plane that do not overlap, such as {@link SeatAnswer#allowed()};
   *     none gives 0
   * @param aimed where the hole is aimed at
   */
  public double chanceWithin(List<SeatAnswer.Region> region, Point aimed) {
    return Mixture.of(this).chance(RegionIntegral.of(region, aimed));
  }
}
