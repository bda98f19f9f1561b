package org.fettlebench.desktop.widgets;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import org.fettlebench.desktop.Desk;
import org.fettlebench.measure.Length;

/**
 * A column of a long list.
 *
 * @param <T> what a row stands for
 * @param id name that never changes, under which the width is remembered
 * @param head text of the head with the unit of the figures; asked anew when the unit changes
 * @param text what stands in the cell
 * @param order how rows are sorted by this column, least first
 * @param characters width in average characters
 * @param roomy width it grows to where the list has room to spare; not less than characters
 * @param figures whether cells hold figures: then they stand right, decimal under decimal
 * @param mark verdict shape before the text, where there is one
 */
public record Column<T>(
    String id,
    Supplier<String> head,
    Function<? super T, String> text,
    Comparator<? super T> order,
    int characters,
    int roomy,
    boolean figures,
    Function<? super T, Optional<VerdictMark>> mark) {

  /** Makes a column that does not grow. */
  public Column(
      String id,
      Supplier<String> head,
      Function<? super T, String> text,
      Comparator<? super T> order,
      int characters,
      boolean figures,
      Function<? super T, Optional<VerdictMark>> mark) {
    this(id, head, text, order, characters, characters, figures, mark);
  }

  /** Returns a column of words, sorted as a person would: figures inside the words by value. */
  public static <T> Column<T> words(String head, int characters, Function<? super T, String> text) {
    Comparator<T> natural = Comparator.comparing(text::apply, Figures::compareNaturally);
    return new Column<>(
        head, () -> head, text, natural, characters, false, item -> Optional.empty());
  }

  /**
   * Returns a column of figures with a fixed number of decimals; an empty one shows nothing and
   * sorts last.
   *
   * @param unit unit written in the head, empty for plain numbers
   */
  public static <T> Column<T> figures(
      String head, String unit, int decimals, Function<? super T, OptionalDouble> figure) {
    Function<T, String> text =
        item -> {
          OptionalDouble value = figure.apply(item);
          return value.isPresent() ? Figures.show(value.getAsDouble(), decimals) : "";
        };
    Comparator<T> order =
        Comparator.comparingDouble(item -> figure.apply(item).orElse(Double.POSITIVE_INFINITY));
    String whole = Figures.head(head, unit);
    return new Column<>(head, () -> whole, text, order, 9, true, item -> Optional.empty());
  }

  /** Returns a column of lengths, in the unit that the person chose, which stands in the head. */
  public static <T> Column<T> lengths(
      String head, Desk desk, Function<? super T, Optional<Length>> length) {
    Function<T, String> text =
        item -> length.apply(item).map(l -> Figures.figure(l, desk.unit())).orElse("");
    Comparator<T> order =
        Comparator.comparing(
            item -> length.apply(item).map(Length::nanometres).orElse(Long.MAX_VALUE));
    Supplier<String> whole = () -> Figures.head(head, desk.unit().symbol());
    return new Column<>(head, whole, text, order, 11, true, item -> Optional.empty());
  }

  /** Returns the column with another width, in average characters. */
  public Column<T> wide(int newCharacters) {
    return new Column<>(id, head, text, order, newCharacters, figures, mark);
  }

  /** Returns the column growing to another width, in average characters, where there is room. */
  public Column<T> upTo(int newRoomy) {
    return new Column<>(id, head, text, order, characters, newRoomy, figures, mark);
  }

  /** Returns the column sorted in another way. */
  public Column<T> orderedBy(Comparator<? super T> newOrder) {
    return new Column<>(id, head, text, newOrder, characters, roomy, figures, mark);
  }

  /** Returns the column with a verdict's shape before the text. */
  public Column<T> marked(Function<? super T, Optional<VerdictMark>> newMark) {
    return new Column<>(id, head, text, order, characters, roomy, figures, newMark);
  }
}
