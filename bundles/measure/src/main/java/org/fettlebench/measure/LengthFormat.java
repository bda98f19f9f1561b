package org.fettlebench.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Writes lengths for people: never more digits than mean something, always with the unit, always
 * with a decimal point whatever the machine's language. Halves are rounded away from nothing; what
 * rounds to nothing carries no sign.
 */
public final class LengthFormat {
  private static final long NM_PER_64TH = Length.NM_PER_INCH / 64;
  private static final Length ONE_THOU = Length.ofNanometres(Length.NM_PER_INCH / 1000);
  private static final Length TENTH_MM = Length.ofNanometres(Length.NM_PER_MM / 10);

  private static final String FIGURE = "-?\\d+(?:\\.\\d+)? ";
  private static final Pattern MILLIMETRES_FIRST =
      Pattern.compile("(" + FIGURE + "mm) \\((" + FIGURE + "(?:in|thou))\\)");
  private static final Pattern INCHES_FIRST =
      Pattern.compile("(" + FIGURE + "(?:in|thou)) \\((" + FIGURE + "mm)\\)");

  private LengthFormat() {}

  /** Returns a size in the unit asked: {@code 3.97 mm} to 0.01 mm, {@code 0.156 in} to 0.001 in. */
  public static String show(Length length, LengthUnit unit) {
    return show(length, unit, usualDecimals(unit));
  }

  /**
   * Returns a size with as many decimals as asked, such as {@code 3.969 mm}.
   *
   * @param decimals digits behind the point, 0 to 9
   * @throws MeasureException if {@code decimals} is outside 0 to 9
   */
  public static String show(Length length, LengthUnit unit, int decimals) {
    return number(length, unit, decimals) + " " + unit.symbol();
  }

  /**
   * Returns the figure alone, for columns that carry the unit in their heading.
   *
   * @param decimals digits behind the point, 0 to 9
   * @throws MeasureException if {@code decimals} is outside 0 to 9
   */
  public static String number(Length length, LengthUnit unit, int decimals) {
    return number(length, unit.nanometres(), decimals);
  }

  /** Returns the figure alone, to 0.01 mm or 0.001 in. */
  public static String number(Length length, LengthUnit unit) {
    return number(length, unit, usualDecimals(unit));
  }

  /** Returns a size both ways: {@code 3.97 mm (0.156 in)}, the asked unit first. */
  public static String showBoth(Length length, LengthUnit first) {
    return show(length, first) + " (" + show(length, other(first)) + ")";
  }

  /**
   * Returns an allowance, an error or a shortfall as the trade says it: {@code 0.24 mm}, under a
   * tenth of a millimetre {@code 0.011 mm}; {@code -0.012 in}, under a thousandth {@code 0.4 thou}.
   */
  public static String allowance(Length length, LengthUnit unit) {
    if (length.nanometres() == 0) {
      return show(length, unit);
    }
    if (unit == LengthUnit.INCH) {
      return length.abs().compareTo(ONE_THOU) < 0
          ? number(length, ONE_THOU.nanometres(), 1) + " thou"
          : show(length, unit);
    }
    return show(length, unit, length.abs().compareTo(TENTH_MM) < 0 ? 3 : 2);
  }

  /** Returns an allowance both ways: {@code 0.24 mm (0.009 in)}, the asked unit first. */
  public static String allowanceBoth(Length length, LengthUnit first) {
    return allowance(length, first) + " (" + allowance(length, other(first)) + ")";
  }

  /**
   * Returns a sentence with the asked unit first wherever a length stands in it both ways, as
   * {@link #showBoth} and {@link #allowanceBoth} write it; all else stays.
   */
  public static String turned(String sentence, LengthUnit first) {
    return first == LengthUnit.INCH
        ? MILLIMETRES_FIRST.matcher(sentence).replaceAll("$2 ($1)")
        : INCHES_FIRST.matcher(sentence).replaceAll("$2 ($1)");
  }

  /**
   * Returns the inch fraction to 1/64 in, such as {@code 5/32} or {@code -1 3/8}, if the length is
   * exactly one; a whole number of inches is {@code 2}.
   */
  public static Optional<String> fraction(Length length) {
    if (length.nanometres() % NM_PER_64TH != 0) {
      return Optional.empty();
    }
    long sixtyFourths = Math.abs(length.nanometres() / NM_PER_64TH);
    long wholes = sixtyFourths / 64;
    long over = sixtyFourths % 64;
    String sign = length.nanometres() < 0 ? "-" : "";
    if (over == 0) {
      return Optional.of(sign + wholes);
    }
    long divisor = Long.lowestOneBit(over);
    String part = over / divisor + "/" + 64 / divisor;
    return Optional.of(sign + (wholes == 0 ? part : wholes + " " + part));
  }

  private static String number(Length length, long nanometresPerUnit, int decimals) {
    if (!(decimals >= 0 && decimals <= 9)) {
      throw new MeasureException(decimals + " decimals is outside 0 to 9");
    }
    return BigDecimal.valueOf(length.nanometres())
        .divide(BigDecimal.valueOf(nanometresPerUnit), decimals, RoundingMode.HALF_UP)
        .toPlainString();
  }

  private static int usualDecimals(LengthUnit unit) {
    return unit == LengthUnit.MILLIMETRE ? 2 : 3;
  }

  private static LengthUnit other(LengthUnit unit) {
    return unit == LengthUnit.MILLIMETRE ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
  }
}
