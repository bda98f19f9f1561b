package org.fettlebench.command.internal.thread;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.command.CommandException;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.MeasureException;

/**
 * A row that came in.
 *
 * @param places where each column stands, by its name
 * @param cells as they came
 */
record BatchRow(Map<String, Integer> places, List<String> cells) {
  /** Returns a cell without spaces around it; empty if there is no such column or nothing in it. */
  Optional<String> cell(String column) {
    Integer place = places.get(column);
    return place == null
        ? Optional.empty()
        : Optional.of(cells.get(place).strip()).filter(text -> !text.isEmpty());
  }

  /**
   * Returns a length out of the column that ends in {@code _mm} or the one that ends in {@code
   * _in}.
   */
  Optional<Length> length(String name) {
    Optional<Length> metric = length(name + "_mm", LengthUnit.MILLIMETRE);
    Optional<Length> inches = length(name + "_in", LengthUnit.INCH);
    if (metric.isPresent() && inches.isPresent()) {
      throw new CommandException("give " + name + "_mm or " + name + "_in, not both");
    }
    return metric.or(() -> inches);
  }

  private Optional<Length> length(String column, LengthUnit unit) {
    return cell(column)
        .map(
            text -> {
              try {
                return LengthReader.read(text, unit);
              } catch (MeasureException refused) {
                throw new CommandException("column " + column + ": " + refused.getMessage());
              }
            });
  }

  /** Returns a number above {@code above} and up to {@code most}. */
  Optional<Double> number(String column, double above, double most) {
    return cell(column)
        .map(
            text -> {
              double value = text.matches("\\d{1,9}(\\.\\d{1,9})?") ? Double.parseDouble(text) : -1;
              if (!(value > above && value <= most)) {
                throw new CommandException(
                    String.format(
                        Locale.ROOT,
                        "column %s: \"%s\" is no number above %s and up to %s",
                        column,
                        text,
                        above,
                        most));
              }
              return value;
            });
  }
}
