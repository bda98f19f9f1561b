package org.fettlebench.holes.correct;

import java.util.List;
import java.util.OptionalDouble;
import org.fettlebench.measure.Point;

/**
 * Where is the hole that was drilled?
 *
 * @param readings what was read, at least two
 * @param holeDiameterMm the hole as it is; above 0
 * @param pinDiameterMm the pin that stood in it; needed by readings over or to a pin, and not
 *     greater than the hole
 * @param near about where the hole is: says on which side of an edge it lies, and which of two
 *     possible places is meant; the intended centre will do
 */
public record MeasuringQuestion(
    List<Reading> readings, double holeDiameterMm, OptionalDouble pinDiameterMm, Point near) {
  /**
   * Copies what could change.
   *
   * @throws HoleException if a diameter is not above 0, the pin does not go in, or it is missing
   */
  public MeasuringQuestion {
    readings = List.copyOf(readings);
    Require.positive("hole diameter", holeDiameterMm);
    if (pinDiameterMm.isPresent()) {
      double pin = pinDiameterMm.getAsDouble();
      Require.positive("pin diameter", pin);
      if (!(pin <= holeDiameterMm)) {
        throw new HoleException(
            "a pin of "
                + pin
                + " mm does not go into a hole of "
                + holeDiameterMm
                + " mm; measure both again");
      }
    } else if (readings.stream().map(Reading::to).anyMatch(MeasuringQuestion::byPin)) {
      throw new HoleException("a reading at a pin needs the pin's diameter; measure the pin");
    }
  }

  private static boolean byPin(Reading.To to) {
    return to == Reading.To.OVER_PIN || to == Reading.To.TO_PIN;
  }
}
