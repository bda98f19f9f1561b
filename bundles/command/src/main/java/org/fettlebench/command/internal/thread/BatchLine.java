package org.fettlebench.command.internal.thread;

import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;

/** A line of comma-separated values (RFC 4180) in the making; one is used for all lines. */
final class BatchLine {
  private static final long[] TENS = {
    1L, 10L, 100L, 1_000L, 10_000L, 100_000L, 1_000_000L, 10_000_000L, 100_000_000L
  };

  private final StringBuilder text = new StringBuilder();
  private final LengthUnit unit;
  private boolean begun;

  /** Writes lengths in {@code unit}. */
  BatchLine(LengthUnit unit) {
    this.unit = unit;
  }

  LengthUnit unit() {
    return unit;
  }

  /** Adds a text, in quotes where it needs them. */
  BatchLine text(String cell) {
    next();
    if (needsQuotes(cell)) {
      text.append('"').append(cell.replace("\"", "\"\"")).append('"');
    } else {
      text.append(cell);
    }
    return this;
  }

  private static boolean needsQuotes(String cell) {
    for (int i = 0; i < cell.length(); i++) {
      char sign = cell.charAt(i);
      if (sign == ',' || sign == '"' || sign == '\n' || sign == '\r') {
        return true;
      }
    }
    // A space at an end would be lost in many programs.
    return !cell.isEmpty() && (cell.charAt(0) <= ' ' || cell.charAt(cell.length() - 1) <= ' ');
  }

  /** Adds a whole number. */
  BatchLine whole(long number) {
    next();
    text.append(number);
    return this;
  }

  /** Adds a length in the line's unit: exactly in millimetres, to seven places in inches. */
  BatchLine length(Length length) {
    next();
    if (unit == LengthUnit.MILLIMETRE) {
      decimal(length.nanometres(), 6);
    } else {
      // 1e-7 in is 2.54 nm.
      decimal(Math.floorDiv(Math.addExact(length.nanometres() * 100, 127), 254), 7);
    }
    return this;
  }

  /** Adds a length, or an empty cell. */
  BatchLine length(Optional<Length> length) {
    return length.isPresent() ? length(length.get()) : empty(1);
  }

  /** Adds a number to some places, 0 to 8, without needless noughts. */
  BatchLine number(double value, int places) {
    next();
    decimal(Math.round(value * TENS[places]), places);
    return this;
  }

  private void decimal(long units, int places) {
    if (units < 0) {
      text.append('-');
    }
    long size = Math.abs(units);
    text.append(size / TENS[places]);
    long rest = size % TENS[places];
    if (rest == 0) {
      return;
    }
    text.append('.');
    for (int place = places - 1; rest != 0; place--) {
      text.append((char) ('0' + rest / TENS[place]));
      rest %= TENS[place];
    }
  }

  /** Adds empty cells. */
  BatchLine empty(int count) {
    for (int i = 0; i < count; i++) {
      next();
    }
    return this;
  }

  private void next() {
    if (begun) {
      text.append(',');
    }
    begun = true;
  }

  /** Returns how far it is, for {@link #back}. */
  int mark() {
    return text.length();
  }

  /** Takes off what was added since a mark, which was not at the beginning. */
  void back(int mark) {
    text.setLength(mark);
  }

  /** Moves the finished line with its end to {@code out} and begins anew. */
  void to(StringBuilder out) {
    out.append(text).append('\n');
    text.setLength(0);
    begun = false;
  }
}
