package org.fettlebench.kits.internal;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;

/** Puts tables' figures into seat questions, with what is less than certain about them. */
final class Expected {
  private Expected() {}

  /** Returns where an expected error comes from, in words. */
  static String means(HoleMethod method, double confidence) {
    return method.errorMeans(confidence);
  }

  /** Returns a head of the tables as it will sit. */
  static SeatedHead seated(Head head, OptionalDouble flatsAlongDegrees) {
    return new SeatedHead(
        head.title(),
        head.acrossCorners().millimetres(),
        optional(head.acrossFlats()),
        optional(head.height()),
        flatsAlongDegrees,
        optional(head.washerFace()),
        Optional.empty(),
        Optional.empty(),
        doubt(head.source()).orElse(""));
  }

  /** Returns the words of a standing that is less than published, by rule or measured. */
  static Optional<String> doubt(Source source) {
    return source.doubt();
  }

  /** Returns 0.95 as 95 %, 0.999 as 99.9 %. */
  static String percent(double chance) {
    return BigDecimal.valueOf(chance).movePointRight(2).stripTrailingZeros().toPlainString() + " %";
  }

  private static OptionalDouble optional(Optional<Length> length) {
    return SeatFileReader.optional(length);
  }
}
