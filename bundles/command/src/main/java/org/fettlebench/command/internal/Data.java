package org.fettlebench.command.internal;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.measure.Length;

/** Makes data for machines: maps that keep their order, numbers without needless digits. */
public final class Data {
  private Data() {}

  /** Returns a map of the given keys and values in order; what is absent is left out. */
  public static Map<String, Object> of(Object... keysAndValues) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (int i = 0; i < keysAndValues.length; i += 2) {
      Object value = keysAndValues[i + 1];
      if (value instanceof Optional<?> maybe) {
        value = maybe.orElse(null);
      }
      if (value != null) {
        map.put((String) keysAndValues[i], value);
      }
    }
    return map;
  }

  /** Returns a text, absent when it is empty. */
  public static Optional<String> said(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }

  /** Returns a length in millimetres, exactly. */
  public static BigDecimal mm(Length length) {
    return plain(BigDecimal.valueOf(length.nanometres(), 6));
  }

  /** Returns a calculated number of millimetres to 1 nm, which is finer than any shop can tell. */
  public static BigDecimal mm(double millimetres) {
    return rounded(millimetres, 6);
  }

  /** Returns a length in inches to seven significant places behind the point. */
  public static BigDecimal in(Length length) {
    return plain(
        BigDecimal.valueOf(length.nanometres())
            .divide(BigDecimal.valueOf(Length.NM_PER_INCH), 7, RoundingMode.HALF_EVEN));
  }

  /**
   * Returns a finite number rounded to so many places.
   *
   * @throws ArithmeticException if the number is not finite
   */
  public static BigDecimal rounded(double value, int places) {
    if (!Double.isFinite(value)) {
      throw new ArithmeticException(value + " is not a number that can be told");
    }
    return plain(
        new BigDecimal(value, MathContext.DECIMAL64).setScale(places, RoundingMode.HALF_EVEN));
  }

  private static BigDecimal plain(BigDecimal value) {
    BigDecimal stripped = value.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }
}
