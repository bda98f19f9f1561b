package org.fettlebench.threads;

import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Source;

/**
 * A thread of a series with its basic sizes.
 *
 * @param series id of the series, such as {@code BA}, {@code ME}, {@code M}, {@code MF}, {@code
 *     UNC}
 * @param size as the series calls it, such as {@code 2}, {@code 1/4 x 40}, {@code M6}
 * @param designation the whole usual name, such as {@code 2 BA}, {@code 1/4 x 40 ME}, {@code M6}
 * @param form profile
 * @param major basic major diameter
 * @param pitch distance from thread to thread, rounded to 1 nm; less than the major diameter
 * @param threadsPerInch where the series is defined so, as the table writes it: {@code 40}, {@code
 *     4.5}
 * @param effective basic effective (pitch) diameter, between the minor diameters and the major
 * @param minorInternal basic minor diameter of the nut thread
 * @param minorExternal basic minor diameter of the screw thread
 * @param source of the figures
 */
public record ScrewThread(
    String series,
    String size,
    String designation,
    ThreadForm form,
    Length major,
    Length pitch,
    Optional<String> threadsPerInch,
    Length effective,
    Length minorInternal,
    Length minorExternal,
    Source source) {

  /**
   * Checks that the sizes can belong to a thread.
   *
   * @throws MeasureException if a name is blank, the pitch is not above nothing, or not: 0 &lt;
   *     minor &lt; effective &lt; major
   */
  public ScrewThread {
    if (series.isBlank() || size.isBlank() || designation.isBlank()) {
      throw new MeasureException("a thread needs a series, a size and a designation");
    }
    if (!pitch.isPositive()) {
      throw new MeasureException(designation + ": pitch " + pitch + " must be above 0 mm");
    }
    inOrder(designation, "minor diameter of the nut", minorInternal, effective, major);
    inOrder(designation, "minor diameter of the screw", minorExternal, effective, major);
  }

  private static void inOrder(
      String designation, String name, Length minor, Length effective, Length major) {
    if (!(minor.isPositive() && minor.compareTo(effective) < 0 && effective.compareTo(major) < 0)) {
      throw new MeasureException(
          "%s: %s %s, effective diameter %s and major diameter %s must rise in this order"
              .formatted(designation, name, minor, effective, major));
    }
  }

  /**
   * Returns the per cent of thread that a hole leaves: 100 (major - hole) / (2 x depth x pitch),
   * with the depth of {@link ThreadForm#percentDepthPerPitch}. It is above 100 for a hole below the
   * convention's full depth, and negative for a hole above the major diameter.
   *
   * @param hole diameter of the hole
   */
  public double percentOfThread(Length hole) {
    return 100 * major.minus(hole).millimetres() / fullDepthOnDiameterMm();
  }

  /**
   * Returns the hole that leaves {@code percent} of thread, rounded to 1 nm; the inverse of {@link
   * #percentOfThread}.
   *
   * @param percent above 0 to 100
   * @throws MeasureException if it is outside that range
   */
  public Length holeFor(double percent) {
    if (!(percent > 0 && percent <= 100)) {
      throw new MeasureException(percent + " per cent of thread is outside above 0 to 100");
    }
    return Length.ofMillimetres(major.millimetres() - percent / 100 * fullDepthOnDiameterMm());
  }

  private double fullDepthOnDiameterMm() {
    return 2 * form.percentDepthPerPitch() * pitch.millimetres();
  }
}
