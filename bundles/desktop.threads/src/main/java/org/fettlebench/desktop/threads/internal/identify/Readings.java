package org.fettlebench.desktop.threads.internal.identify;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ThreadSide;
import org.fettlebench.threads.identify.Measured;
import org.fettlebench.threads.identify.Reading;
import org.fettlebench.threads.identify.UsualUncertainty;

/**
 * What a person typed of a thread that was measured, as typed; empty where nothing was.
 *
 * @param diameter outside diameter of a screw, bore of a nut
 * @param diameterError its standard uncertainty
 * @param pitch pitch, or threads per inch
 * @param pitchError standard uncertainty of one pitch
 * @param hexagon across the flats
 * @param hexagonError its standard uncertainty
 * @param wear by how much it may be worn
 * @param nut whether a nut or tapped hole was measured
 */
record Readings(
    String diameter,
    String diameterError,
    String pitch,
    String pitchError,
    String hexagon,
    String hexagonError,
    String wear,
    boolean nut) {
  /** Nothing typed yet. */
  static final Readings NONE = new Readings("", "", "", "", "", "", "", false);

  /** A bare figure above this many millimetres is no pitch of a thread but threads per inch. */
  private static final double COARSEST_MM = 6.5;

  private static final double COARSEST_IN = 1;

  private static final Pattern PER_INCH =
      Pattern.compile("(?i)(\\d+(?:[.,]\\d+)?|[.,]\\d+)\\s*(?:tpi|t\\.p\\.i\\.?|per inch|/in|/\")");

  private static final Pattern BARE = Pattern.compile("\\d+(?:[.,]\\d+)?|[.,]\\d+");

  /** Returns whether neither diameter nor pitch is typed yet. */
  boolean isEmpty() {
    return diameter.isBlank() && pitch.isBlank();
  }

  /**
   * Returns what was measured, with the usual uncertainty where none was typed.
   *
   * @throws MeasureException naming the field, what was typed and what would be understood
   */
  Measured measured(LengthUnit unit) {
    return new Measured(
        nut ? ThreadSide.INTERNAL : ThreadSide.EXTERNAL,
        reading("diameter", diameter, diameterError, UsualUncertainty.DIAMETER, unit),
        pitch(unit),
        reading("hexagon", hexagon, hexagonError, UsualUncertainty.HEXAGON, unit),
        length("wear", wear, unit).orElse(Length.ZERO));
  }

  private static Optional<Reading> reading(
      String name, String typed, String error, Length usual, LengthUnit unit) {
    return length(name, typed, unit)
        .map(v -> new Reading(v, length(name + "'s \u00b1", error, unit).orElse(usual)));
  }

  private Optional<Reading> pitch(LengthUnit unit) {
    if (pitch.isBlank()) {
      return Optional.empty();
    }
    Length value = pitch(pitch.strip(), unit);
    Length usual = UsualUncertainty.ofPitch(value);
    return Optional.of(
        new Reading(value, length("pitch's \u00b1", pitchError, unit).orElse(usual)));
  }

  /** Returns a pitch typed as such or as threads per inch. */
  static Length pitch(String typed, LengthUnit unit) {
    Matcher perInch = PER_INCH.matcher(typed);
    if (perInch.matches()) {
      return ofPerInch(perInch.group(1));
    }
    if (BARE.matcher(typed).matches()) {
      double bare = number(typed);
      if (bare > (unit == LengthUnit.INCH ? COARSEST_IN : COARSEST_MM)) {
        return ofPerInch(typed);
      }
    }
    return length("pitch", typed, unit)
        .orElseThrow(() -> new MeasureException("no pitch is typed; such as 0.8 mm or 32 tpi"));
  }

  private static Length ofPerInch(String typed) {
    double number = number(typed);
    if (!(number >= 1 && number <= 500)) {
      throw new MeasureException(typed + " threads per inch is outside 1 to 500");
    }
    return Length.ofInches(1 / number);
  }

  private static double number(String typed) {
    return Double.parseDouble(typed.replace(',', '.'));
  }

  private static Optional<Length> length(String name, String typed, LengthUnit unit) {
    if (typed.isBlank()) {
      return Optional.empty();
    }
    try {
      return Optional.of(LengthReader.read(typed.strip(), unit));
    } catch (MeasureException refused) {
      throw new MeasureException(name + ": " + refused.getMessage());
    }
  }

  /** Returns the fields from left to right, to be remembered. */
  List<String> fields() {
    return List.of(
        diameter,
        diameterError,
        pitch,
        pitchError,
        hexagon,
        hexagonError,
        wear,
        nut ? "nut" : "screw");
  }

  /** Returns what was remembered; nothing if it is not of this shape. */
  static Readings of(List<String> fields) {
    return fields.size() == 8
        ? new Readings(
            fields.get(0),
            fields.get(1),
            fields.get(2),
            fields.get(3),
            fields.get(4),
            fields.get(5),
            fields.get(6),
            fields.get(7).equals("nut"))
        : NONE;
  }
}
