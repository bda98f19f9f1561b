package org.fettlebench.desktop.threads.internal.identify;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.MeasureException;

/**
 * Reads measurements written in one line: {@code 4.68 x 0.81}, {@code 0.186 in 31 tpi hex 0.324
 * in}, {@code bore 3.8 mm 32 tpi nut}.
 */
public final class MeasuredLine {
  private static final String LENGTH =
      "(?:\\d+[ -])?\\d+/\\d+\\s*(?:in|\")?|(?:\\d+(?:[.,]\\d+)?|[.,]\\d+)\\s*(?:mm|in|inch|\"|thou)?";

  private static final String PER_INCH = "(?:\\d+(?:[.,]\\d+)?)\\s*(?:tpi|per inch)";

  private static final Pattern LINE =
      Pattern.compile(
          "(?i)\\s*(?:(bore|hole|nut)\\s+)?("
              + LENGTH
              + ")\\s*(?:[x\u00d7,;]|\\s)\\s*("
              + PER_INCH
              + "|"
              + LENGTH
              + ")(?:\\s*[x\u00d7,;]?\\s*(?:hex(?:agon)?|af)\\s*("
              + LENGTH
              + "))?(?:\\s*[,;]?\\s*(nut|bore|screw))?\\s*");

  private MeasuredLine() {}

  /** Returns what was measured, if the line reads as diameter and pitch, and a hexagon if any. */
  static Optional<Readings> read(String typed, LengthUnit unit) {
    Matcher line = LINE.matcher(typed);
    if (!line.matches()) {
      return Optional.empty();
    }
    boolean nut =
        line.group(1) != null || line.group(5) != null && !line.group(5).equalsIgnoreCase("screw");
    Readings readings =
        new Readings(
            line.group(2).strip(),
            "",
            line.group(3).strip(),
            "",
            line.group(4) == null ? "" : line.group(4).strip(),
            "",
            "",
            nut);
    try {
      readings.measured(unit);
      return Optional.of(readings);
    } catch (MeasureException refused) {
      // The line only looked like measurements.
      return Optional.empty();
    }
  }

  /** Returns whether a line reads as measurements. */
  public static boolean isOne(String typed, LengthUnit unit) {
    return read(typed, unit).isPresent();
  }
}
