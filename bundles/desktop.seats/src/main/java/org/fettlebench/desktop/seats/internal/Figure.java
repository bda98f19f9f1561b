package org.fettlebench.desktop.seats.internal;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;

/** Writes figures into fields: as many digits as were measured, no more than mean something. */
final class Figure {
  private Figure() {}

  /** Returns a figure to 0.001 mm or 0.0001 in, without the noughts behind. */
  static String write(Length length, LengthUnit unit) {
    int decimals = unit == LengthUnit.INCH ? 4 : 3;
    BigDecimal value =
        BigDecimal.valueOf(length.nanometres())
            .divide(BigDecimal.valueOf(unit.nanometres()), decimals, RoundingMode.HALF_UP)
            .stripTrailingZeros();
    return value.signum() == 0 ? "0" : value.toPlainString();
  }
}
