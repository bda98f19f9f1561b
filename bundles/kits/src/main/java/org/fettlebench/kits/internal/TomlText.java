package org.fettlebench.kits.internal;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;

/** A TOML file in the making: keys, and values that read back as the same, to the nanometre. */
abstract class TomlText {
  private final LengthUnit unit;
  private final StringBuilder text = new StringBuilder();

  TomlText(LengthUnit unit) {
    this.unit = unit;
  }

  /** Returns what was written so far. */
  final String written() {
    return text.toString();
  }

  final void line(String words) {
    text.append(words).append('\n');
  }

  final void key(String name, String value) {
    line(name + " = " + value);
  }

  /** A fraction where it is one, as a person would write it; else as many digits as it takes. */
  final String length(double mm) {
    Length length = Length.ofMillimetres(mm);
    if (unit == LengthUnit.MILLIMETRE) {
      return "\"" + length + "\"";
    }
    String inches = LengthFormat.fraction(length).orElseGet(() -> decimal(length));
    return "\"" + inches + " in\"";
  }

  /** A hundred-millionth of an inch is finer than the nanometre to which lengths are exact. */
  private static String decimal(Length length) {
    return BigDecimal.valueOf(length.nanometres())
        .divide(BigDecimal.valueOf(Length.NM_PER_INCH), 8, RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }

  static String number(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  /** A text of TOML: what could end or bend it is written by its number. */
  static String quoted(String words) {
    StringBuilder quoted = new StringBuilder("\"");
    for (char sign : words.toCharArray()) {
      if (sign == '"' || sign == '\\') {
        quoted.append('\\').append(sign);
      } else if (sign < ' ' || sign == 0x7f) {
        quoted.append(String.format("\\u%04x", (int) sign));
      } else {
        quoted.append(sign);
      }
    }
    return quoted.append('"').toString();
  }
}
