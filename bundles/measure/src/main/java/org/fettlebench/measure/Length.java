package org.fettlebench.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A length or a signed distance, exact to one nanometre.
 *
 * @param nanometres the length in nanometres; may be negative
 */
public record Length(long nanometres) implements Comparable<Length> {

  /** Nanometres in one millimetre. */
  public static final long NM_PER_MM = 1_000_000L;

  /** Nanometres in one inch: 25.4 mm exactly (International Yard and Pound agreement, 1959). */
  public static final long NM_PER_INCH = 25_400_000L;

  /** No length at all. */
  public static final Length ZERO = new Length(0);

  /** Returns the length of {@code nanometres} nanometres. */
  public static Length ofNanometres(long nanometres) {
    return new Length(nanometres);
  }

  /**
   * Returns the length nearest to a calculated number of millimetres, rounded half up to 1 nm.
   *
   * @throws MeasureException if the value is not finite or does not fit
   */
  public static Length ofMillimetres(double millimetres) {
    return ofRounded(millimetres, NM_PER_MM, "mm");
  }

  /**
   * Returns the length nearest to a calculated number of inches, rounded half up to 1 nm.
   *
   * @throws MeasureException if the value is not finite or does not fit
   */
  public static Length ofInches(double inches) {
    return ofRounded(inches, NM_PER_INCH, "in");
  }

  /** Returns {@code numerator/denominator} inches, rounded half even to 1 nm; exact to 1/64 in. */
  public static Length ofInchFraction(long numerator, long denominator) {
    return new Length(
        BigDecimal.valueOf(Math.multiplyExact(numerator, NM_PER_INCH))
            .divide(BigDecimal.valueOf(denominator), 0, RoundingMode.HALF_EVEN)
            .longValueExact());
  }

  /** Returns a decimal number of {@code unit}, rounded half even to 1 nm. */
  public static Length of(BigDecimal value, LengthUnit unit) {
    return new Length(
        value
            .multiply(BigDecimal.valueOf(unit.nanometres()))
            .setScale(0, RoundingMode.HALF_EVEN)
            .longValueExact());
  }

  private static Length ofRounded(double value, long nanometresPerUnit, String unit) {
    double nanometres = value * nanometresPerUnit;
    if (!(Math.abs(nanometres) < Long.MAX_VALUE)) {
      throw new MeasureException(value + " " + unit + " is not a length that can be held");
    }
    return new Length(Math.round(nanometres));
  }

  /** Returns this length in millimetres. */
  public double millimetres() {
    return nanometres / (double) NM_PER_MM;
  }

  /** Returns this length in inches. */
  public double inches() {
    return nanometres / (double) NM_PER_INCH;
  }

  /** Returns this length in {@code unit}. */
  public double in(LengthUnit unit) {
    return nanometres / (double) unit.nanometres();
  }

  /** Returns the sum of the two lengths. */
  public Length plus(Length other) {
    return new Length(Math.addExact(nanometres, other.nanometres));
  }

  /** Returns this length less the other. */
  public Length minus(Length other) {
    return new Length(Math.subtractExact(nanometres, other.nanometres));
  }

  /** Returns this length {@code factor} times. */
  public Length times(long factor) {
    return new Length(Math.multiplyExact(nanometres, factor));
  }

  /** Returns this length without its sign. */
  public Length abs() {
    return new Length(Math.absExact(nanometres));
  }

  /** Returns whether this length is greater than nothing. */
  public boolean isPositive() {
    return nanometres > 0;
  }

  @Override
  public int compareTo(Length other) {
    return Long.compare(nanometres, other.nanometres);
  }

  /**
   * Returns the length in millimetres with as many digits as it needs, such as {@code 3.175 mm}.
   */
  @Override
  public String toString() {
    return BigDecimal.valueOf(nanometres, 6).stripTrailingZeros().toPlainString() + " mm";
  }
}
