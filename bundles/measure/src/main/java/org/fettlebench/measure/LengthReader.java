package org.fettlebench.measure;

/** Reads lengths as they are typed in a workshop. */
public final class LengthReader {
  private LengthReader() {}

  /**
   * Reads a length that must carry its unit, or be an inch fraction.
   *
   * <p>Understood: {@code 3.97 mm}, {@code 5/32}, {@code 1 3/8 in}, {@code 1-3/8"}, {@code 0.375"},
   * {@code 10 thou}, {@code 25 um}, each with an optional sign. A bare fraction is inches (common
   * practice, no source). A bare decimal is refused.
   *
   * @throws MeasureException if the text is no length, or has no unit and is no fraction
   */
  public static Length read(String text) {
    throw new MeasureException(text);
  }

  /**
   * Reads a length, taking {@code bare} as the unit of a number that carries none.
   *
   * @throws MeasureException if the text is no length
   */
  public static Length read(String text, LengthUnit bare) {
    throw new MeasureException(text + bare);
  }
}
