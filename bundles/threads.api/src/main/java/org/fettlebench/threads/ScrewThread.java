package org.fettlebench.threads;

import java.util.Optional;
import org.fettlebench.measure.Length;
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
 * @param pitch distance from thread to thread, rounded to 1 nm
 * @param threadsPerInch where the series is defined so
 * @param effective basic effective (pitch) diameter
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
   * Returns the per cent of thread that a hole leaves: 100 (major - hole) / (2 x depth of form).
   *
   * @param hole diameter of the hole
   */
  public double percentOfThread(Length hole) {
    return 100
        * major.minus(hole).millimetres()
        / (2 * form.percentDepthPerPitch() * pitch.millimetres());
  }

  /** Returns the hole that leaves {@code percent} of thread, rounded to 1 nm. */
  public Length holeFor(double percent) {
    return Length.ofMillimetres(
        major.millimetres()
            - percent / 100 * 2 * form.percentDepthPerPitch() * pitch.millimetres());
  }
}
