package org.fettlebench.kits;

import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;

/**
 * A screw, bolt, stud, nut or washer by its usual description.
 *
 * @param thread designation, such as {@code 2 BA}, known to the thread series; not blank
 * @param style head, nut or washer style, such as {@code hexagon}, known to the head tables, or
 *     {@code stud}; not blank
 * @param length under the head, above nothing; empty for nuts and washers
 * @param material such as {@code steel}; empty when any will do
 */
public record Fastener(String thread, String style, Optional<Length> length, String material) {
  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if the thread or style is blank, or the length not above 0
   */
  public Fastener {
    Require.name("thread of a fastener", thread);
    Require.name("style of a fastener", style);
    length.ifPresent(value -> Require.positive("length of a fastener", value));
  }

  /** Returns the usual description, such as {@code 2 BA hexagon x 1/2 in, steel}. */
  public String title() {
    String size = length.map(value -> " x " + sizeText(value)).orElse("");
    return thread
        + " "
        + style.replace('-', ' ')
        + size
        + (material.isBlank() ? "" : ", " + material);
  }

  private static String sizeText(Length value) {
    return LengthFormat.fraction(value).map(text -> text + " in").orElse(value.toString());
  }
}
