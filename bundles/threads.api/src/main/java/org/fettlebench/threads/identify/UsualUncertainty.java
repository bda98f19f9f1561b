package org.fettlebench.threads.identify;

import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;

/**
 * The standard uncertainties of measurements in the shop, where a person gives none; to be shown as
 * {@link #SOURCE} says.
 */
public final class UsualUncertainty {
  /** Of a diameter by micrometer or calliper: 0.02 mm. */
  public static final Length DIAMETER = Length.ofMillimetres(0.02);

  /** Of a hexagon across its flats, often rough: 0.1 mm. */
  public static final Length HEXAGON = Length.ofMillimetres(0.1);

  /** Of a pitch by thread gauge, as a part of the pitch: 1 per cent. */
  public static final double PITCH_SHARE = 0.01;

  /** Of a length over a number of pitches by rule: 0.2 mm. */
  public static final Length SPAN = Length.ofMillimetres(0.2);

  /** Where all of them come from. */
  public static final Source SOURCE =
      new Source(
          "usual in the shop: calliper 0.02 mm, thread gauge 1 % of the pitch, rule 0.2 mm,"
              + " hexagon 0.1 mm",
          Standing.COMMON_PRACTICE);

  private UsualUncertainty() {}

  /** Returns that of a pitch by thread gauge. */
  public static Length ofPitch(Length pitch) {
    return Length.ofMillimetres(PITCH_SHARE * pitch.millimetres());
  }

  /** Returns that of one pitch out of a length over {@code turns} of them, 1 or more. */
  public static Length ofSpan(int turns) {
    return Length.ofMillimetres(SPAN.millimetres() / turns);
  }
}
