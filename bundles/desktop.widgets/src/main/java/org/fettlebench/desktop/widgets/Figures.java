package org.fettlebench.desktop.widgets;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;

/** Writes figures and counts the same way on every page. */
public final class Figures {
  private Figures() {}

  /** Returns a number with so many decimals and a true minus sign; nothing for not-a-number. */
  public static String show(double value, int decimals) {
    if (Double.isNaN(value)) {
      return "";
    }
    String text = String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(value));
    boolean zero = text.chars().noneMatch(digit -> digit >= '1' && digit <= '9');
    return value < 0 && !zero ? "\u2212" + text : text;
  }

  /** Returns the figure of a length without its unit: hundredths of a millimetre, thou. */
  public static String figure(Length length, LengthUnit unit) {
    return show(length.in(unit), decimals(unit));
  }

  /**
   * Returns a figure as it stands in a field to be typed over: to 0.001 mm or 0.0001 in, without
   * noughts behind and without its unit.
   */
  public static String typed(Length length, LengthUnit unit) {
    int decimals = unit == LengthUnit.INCH ? 4 : 3;
    BigDecimal value =
        BigDecimal.valueOf(length.nanometres())
            .divide(BigDecimal.valueOf(unit.nanometres()), decimals, RoundingMode.HALF_UP)
            .stripTrailingZeros();
    return value.signum() == 0 ? "0" : value.toPlainString();
  }

  /** Returns a calculated number of millimetres in the unit, with its symbol. */
  public static String length(double millimetres, LengthUnit unit) {
    double value = millimetres * Length.NM_PER_MM / unit.nanometres();
    return show(value, decimals(unit)) + " " + unit.symbol();
  }

  /** Returns how many decimals mean something in a workshop: 2 for mm, 3 for inches. */
  public static int decimals(LengthUnit unit) {
    return unit == LengthUnit.INCH ? 3 : 2;
  }

  /** Returns a column head or field name with its unit: {@code Allowance, mm}. */
  public static String head(String name, String unit) {
    return unit.isEmpty() ? name : name + ", " + unit;
  }

  /** Returns a count with its word: {@code 1 joint}, {@code 12 joints}. */
  public static String count(long number, String one, String many) {
    return number + " " + (number == 1 ? one : many);
  }

  /** Compares texts as a person would: {@code M4} before {@code M10}, whatever the case. */
  public static int compareNaturally(String left, String right) {
    int i = 0;
    int j = 0;
    while (i < left.length() && j < right.length()) {
      int leftEnd = endOfRun(left, i);
      int rightEnd = endOfRun(right, j);
      int compared = compareRuns(left.substring(i, leftEnd), right.substring(j, rightEnd));
      if (compared != 0) {
        return compared;
      }
      i = leftEnd;
      j = rightEnd;
    }
    return Integer.compare(left.length() - i, right.length() - j);
  }

  private static int endOfRun(String text, int start) {
    int end = start + 1;
    if (isDigit(text.charAt(start))) {
      while (end < text.length() && isDigit(text.charAt(end))) {
        end++;
      }
    }
    return end;
  }

  private static int compareRuns(String left, String right) {
    if (isDigit(left.charAt(0)) && isDigit(right.charAt(0))) {
      String shortLeft = left.replaceFirst("^0+(?=.)", "");
      String shortRight = right.replaceFirst("^0+(?=.)", "");
      int byLength = Integer.compare(shortLeft.length(), shortRight.length());
      return byLength != 0 ? byLength : shortLeft.compareTo(shortRight);
    }
    return left.compareToIgnoreCase(right);
  }

  private static boolean isDigit(char character) {
    return character >= '0' && character <= '9';
  }
}
