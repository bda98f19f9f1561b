package org.fettlebench.desktop.castings.internal;

import java.util.Optional;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.MeasureException;

/**
 * What stands in a field: a length, nothing yet, or words that are no length, which are kept.
 *
 * @param length what was understood
 * @param typed what stands there while it is no length; else empty
 * @param trouble why it is none; else empty
 */
record Entry(Optional<Length> length, String typed, String trouble) {
  static final Entry BLANK = new Entry(Optional.empty(), "", "");

  static Entry of(Length length) {
    return new Entry(Optional.of(length), "", "");
  }

  static Entry ofMillimetres(double millimetres) {
    return of(Length.ofMillimetres(millimetres));
  }

  /** Reads what is typed; a bare number is taken in the unit. */
  static Entry read(String words, LengthUnit unit) {
    if (words.isBlank()) {
      return BLANK;
    }
    try {
      return of(LengthReader.read(words, unit));
    } catch (MeasureException refused) {
      return new Entry(Optional.empty(), words, refused.getMessage());
    }
  }

  boolean blank() {
    return equals(BLANK);
  }

  boolean wrong() {
    return !trouble.isEmpty();
  }

  double millimetres() {
    return length.orElseThrow().millimetres();
  }

  /** Returns what a field shows. */
  String shown(LengthUnit unit) {
    return length.map(each -> Figures.typed(each, unit)).orElse(typed);
  }
}
