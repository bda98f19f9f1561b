package org.fettlebench.command.internal;

import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.tables.Source;

/** Figures as the command line shows them where a workshop's two places are too few. */
public final class Figures {
  private Figures() {}

  /** Returns a figure of geometry without its unit: to 0.001 mm or 0.0001 in. */
  public static String fine(Length length, LengthUnit unit) {
    return LengthFormat.number(length, unit, unit == LengthUnit.MILLIMETRE ? 3 : 4);
  }

  /** Returns a calculated number of millimetres both ways, as an allowance. */
  public static String allowance(double millimetres, LengthUnit first) {
    return LengthFormat.allowanceBoth(Length.ofMillimetres(millimetres), first);
  }

  /** Returns a calculated number of millimetres both ways, as a size. */
  public static String size(double millimetres, LengthUnit first) {
    return LengthFormat.showBoth(Length.ofMillimetres(millimetres), first);
  }

  /** Returns the unit that is not shown first. */
  public static LengthUnit other(LengthUnit unit) {
    return unit == LengthUnit.MILLIMETRE ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
  }

  /** Returns a source and how far it may be trusted, without saying the same twice. */
  public static String source(Source source) {
    String standing = source.standing().words();
    return source.citation().contains(standing)
        ? source.citation()
        : source.citation() + " (" + standing + ")";
  }

  /** Returns a source as data. */
  public static Object sourceData(Source source) {
    return Data.of("citation", source.citation(), "standing", source.standing().words());
  }

  /**
   * Returns a whole number of things with their name, such as {@code 1 drill} or {@code 3 drills}.
   */
  public static String count(int number, String one) {
    return number + " " + one + (number == 1 ? "" : "s");
  }
}
