package org.fettlebench.desktop.threads.internal.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;

/**
 * A small table of figures: a name, then a cell for each head. Knows no window.
 *
 * @param heads above the cells, without one above the names
 * @param rows from the top down
 */
public record FigureTable(List<String> heads, List<Row> rows) {
  /** Copies what could change. */
  public FigureTable {
    heads = List.copyOf(heads);
    rows = List.copyOf(rows);
  }

  /**
   * A row.
   *
   * @param name what the figures are
   * @param cells as many as there are heads, or fewer
   * @param strong whether it is the one to be seen first
   */
  public record Row(String name, List<String> cells, boolean strong) {
    /** Copies what could change. */
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /** A table without rows. */
  public static final FigureTable EMPTY = new FigureTable(List.of(), List.of());

  /** Returns the table with tabs between cells, for the clipboard. */
  public String asText() {
    Stream<String> head =
        heads.stream().allMatch(String::isBlank)
            ? Stream.of()
            : Stream.of("\t" + String.join("\t", heads));
    Stream<String> body =
        rows.stream()
            .map(row -> row.cells().isEmpty() ? row.name() : row.name() + "\t" + join(row.cells()));
    return Stream.concat(head, body).collect(Collectors.joining("\n", "", "\n"));
  }

  private static String join(List<String> cells) {
    return String.join("\t", cells);
  }

  /** Returns a maker of a table of plain cells. */
  public static Maker of(String... heads) {
    return new Maker(List.of(heads), Optional.empty());
  }

  /** Returns a maker of a table of lengths in both units, the asked one first. */
  public static Maker ofLengths(LengthUnit first) {
    return new Maker(List.of(first.symbol(), other(first).symbol()), Optional.of(first));
  }

  /** Returns a maker of a table of least and most in both units, the asked one first. */
  public static Maker ofRanges(LengthUnit first) {
    String other = other(first).symbol();
    return new Maker(
        List.of("least " + first.symbol(), "most", "least " + other, "most"), Optional.of(first));
  }

  /** Returns the other of the two units that stand side by side. */
  public static LengthUnit other(LengthUnit unit) {
    return unit == LengthUnit.INCH ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
  }

  /** Returns a size as finely as threads are measured: to a micron, to a tenth of a thou. */
  public static String fine(Length length, LengthUnit unit) {
    return LengthFormat.number(length, unit, unit == LengthUnit.INCH ? 4 : 3);
  }

  /** Makes a table row by row. */
  public static final class Maker {
    private final List<String> heads;
    private final Optional<LengthUnit> unit;
    private final List<Row> rows = new ArrayList<>();

    private Maker(List<String> heads, Optional<LengthUnit> unit) {
      this.heads = heads;
      this.unit = unit;
    }

    /** Adds a row of plain cells. */
    public Maker row(String name, String... cells) {
      rows.add(new Row(name, List.of(cells), false));
      return this;
    }

    /** Adds a row to be seen first. */
    public Maker strong(String name, String... cells) {
      rows.add(new Row(name, List.of(cells), true));
      return this;
    }

    /** Adds a length in both units. */
    public Maker length(String name, Length length) {
      LengthUnit first = unit.orElseThrow();
      return row(name, fine(length, first), fine(length, other(first)));
    }

    /** Adds least and most in both units; an open end is a dash. */
    public Maker range(String name, Optional<Length> least, Optional<Length> most) {
      LengthUnit first = unit.orElseThrow();
      LengthUnit second = other(first);
      return row(
          name, open(least, first), open(most, first), open(least, second), open(most, second));
    }

    private static String open(Optional<Length> length, LengthUnit unit) {
      return length.map(l -> fine(l, unit)).orElse("\u2013");
    }

    /** Returns what was made. */
    public FigureTable made() {
      return new FigureTable(heads, rows);
    }
  }
}
