package org.fettlebench.fasteners;

import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;

/**
 * The head, nut or washer of a fastener, as large as it may be.
 *
 * @param style id of the style, such as {@code hexagon}, {@code small-hexagon}, {@code socket-cap},
 *     {@code cheese}, {@code countersunk}, {@code hexagon-nut}, {@code washer}
 * @param title for people, such as {@code 2 BA hexagon}
 * @param thread designation of the thread it belongs to
 * @param acrossFlats of a hexagon (largest), or empty when round
 * @param acrossCorners of a hexagon (sharp), or the diameter when round: the circle it sweeps
 * @param height of the head or nut, or thickness of the washer, where known
 * @param washerFace diameter of the washer face, where there is one
 * @param source of the figures
 * @param note what a person should know about them; may be empty
 * @param countersunkDegrees included angle of the cone under a countersunk head; empty for all
 *     other heads
 */
public record Head(
    String style,
    String title,
    String thread,
    Optional<Length> acrossFlats,
    Length acrossCorners,
    Optional<Length> height,
    Optional<Length> washerFace,
    Source source,
    String note,
    Optional<Double> countersunkDegrees) {
  /** Makes a head that is not countersunk. */
  @SuppressWarnings("checkstyle:ParameterNumber")
  public Head(
      String style,
      String title,
      String thread,
      Optional<Length> acrossFlats,
      Length acrossCorners,
      Optional<Length> height,
      Optional<Length> washerFace,
      Source source,
      String note) {
    this(
        style,
        title,
        thread,
        acrossFlats,
        acrossCorners,
        height,
        washerFace,
        source,
        note,
        Optional.empty());
  }
}
