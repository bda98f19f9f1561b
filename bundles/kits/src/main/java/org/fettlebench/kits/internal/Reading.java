package org.fettlebench.kits.internal;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import org.fettlebench.kits.internal.FaultList.At;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.MeasureException;

/** What holds for one file while it is read: its faults, and the unit of its bare numbers. */
final class Reading {
  /** Beyond this no bench reaches; it also keeps geometry far from the limits of its numbers. */
  private static final Length LONGEST = Length.ofNanometres(100_000 * Length.NM_PER_MM);

  private static final String REMEDY = "Write a length with its unit, such as \"3.97 mm\"";

  private final FaultList faults;
  private Optional<LengthUnit> bare = Optional.empty();

  Reading(FaultList faults) {
    this.faults = faults;
  }

  FaultList faults() {
    return faults;
  }

  /** Reads the key {@code unit} of the table that heads the file. */
  void unit(Section head) {
    Optional<String> symbol = head.text("unit");
    for (LengthUnit unit : LengthUnit.values()) {
      if (symbol.filter(unit.symbol()::equals).isPresent()) {
        bare = Optional.of(unit);
      }
    }
    if (symbol.isPresent() && bare.isEmpty()) {
      head.fault("unit", "is no unit of length here", "Write unit = \"mm\" or unit = \"in\"");
    }
    if (head.has("unit") && bare.isEmpty()) {
      // The file is refused; what else is wrong with it shows in any unit.
      bare = Optional.of(LengthUnit.MILLIMETRE);
    }
  }

  Optional<Length> length(At at, String name, Object value) {
    try {
      Length length = lengthOf(value);
      if (length.abs().compareTo(LONGEST) <= 0) {
        return Optional.of(length);
      }
      faults.add(at, value, name + " is beyond 100 m", "Check the unit");
    } catch (MeasureException refused) {
      String[] said = refused.getMessage().split("; ", 2);
      // The value stands before the message already.
      String wrong = said[0].replaceFirst("^'" + Pattern.quote(shown(value)) + "' ", "");
      faults.add(at, shown(value), name + " " + wrong, said.length > 1 ? said[1] : REMEDY);
    }
    return Optional.empty();
  }

  private static String shown(Object value) {
    return Section.shown(value).strip();
  }

  private Length lengthOf(Object value) {
    if (value instanceof String text) {
      return bare.isPresent() ? LengthReader.read(text, bare.get()) : LengthReader.read(text);
    }
    if (!(value instanceof Number number)) {
      throw new MeasureException("must be a length, not " + Section.kind(value) + "; " + REMEDY);
    }
    if (!Double.isFinite(number.doubleValue())) {
      throw new MeasureException("is no finite number; " + REMEDY);
    }
    if (bare.isEmpty()) {
      throw new MeasureException(
          "has no unit; Write \""
              + number
              + " mm\" or \""
              + number
              + " in\", or say unit = \"mm\" or \"in\" once at the head of the file");
    }
    if (!(Math.abs(number.doubleValue()) < 1e9)) {
      throw new MeasureException("is too large for a length; " + REMEDY);
    }
    return Length.of(new BigDecimal(number.toString()), bare.get());
  }
}
