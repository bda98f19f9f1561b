package org.fettlebench.kits.internal;

import java.util.Locale;
import org.fettlebench.kits.Finding.Figure;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;

/** Figures as findings say them: both units, no more digits than mean something. */
final class Say {
  static final String COMMON_PRACTICE = "common practice, no source";

  private Say() {}

  static String size(Length length) {
    return LengthFormat.showBoth(length, LengthUnit.MILLIMETRE);
  }

  static String sizeMm(double millimetres) {
    return size(Length.ofMillimetres(millimetres));
  }

  static String allowanceMm(double millimetres) {
    return LengthFormat.allowanceBoth(Length.ofMillimetres(millimetres), LengthUnit.MILLIMETRE);
  }

  static String percent(double percent) {
    return String.format(Locale.ROOT, "%.0f %%", percent);
  }

  static String times(double factor) {
    return String.format(Locale.ROOT, "%.1f", factor);
  }

  static Figure mm(String name, Length length) {
    return new Figure(name + "Mm", length.millimetres());
  }

  static Figure mm(String name, double millimetres) {
    return new Figure(name + "Mm", millimetres);
  }
}
