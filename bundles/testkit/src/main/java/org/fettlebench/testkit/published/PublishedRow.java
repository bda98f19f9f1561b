package org.fettlebench.testkit.published;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;

/** A row of a published table. Cells that are empty are not printed, and are passed over. */
public final class PublishedRow {
  /** What doubles add behind the figures. */
  private static final double NOISE = 1e-9;

  private final Map<String, String> cells;
  private final Set<String> held = new HashSet<>();
  private final Set<String> read = new HashSet<>();
  private final List<String> faults = new ArrayList<>();

  PublishedRow(Map<String, String> cells) {
    this.cells = cells;
  }

  /**
   * Returns a cell as printed; it then counts as looked at.
   *
   * @throws IllegalArgumentException if there is no such column
   */
  public String cell(String column) {
    read.add(column);
    return raw(column);
  }

  /** Tells whether a cell is printed. */
  public boolean has(String column) {
    return !raw(column).isEmpty();
  }

  /** Returns a printed number, fraction or mixed number; the cell then counts as looked at. */
  public double number(String column) {
    return number(column, cell(column));
  }

  /** Holds a figure to half a unit of the last printed digit. */
  public void check(String column, double calculated) {
    within(column, calculated, half(column));
  }

  /**
   * Holds a figure to half a unit of a decimal place, where the list drops noughts behind the
   * point.
   */
  public void checkTo(String column, int places, double calculated) {
    within(column, calculated, 0.5 * Math.pow(10, -places));
  }

  /**
   * Holds a figure to more than half a unit of its last digit.
   *
   * @param why the list is no closer
   */
  public void checkWithin(String column, double calculated, double tolerance, String why) {
    reason(why);
    within(column, calculated, tolerance);
  }

  /**
   * Refuses a printed figure. Fails if it agrees with what is taken instead to half a unit of its
   * last digit: then there is nothing to refuse.
   *
   * @param taken what the suite gives
   * @param why it is not followed
   */
  public void refuse(String column, double taken, String why) {
    refuseBeyond(column, taken, half(column), why);
  }

  /** Refuses a figure of a list that drops noughts: by half a unit of a decimal place. */
  public void refuseTo(String column, int places, double taken, String why) {
    refuseBeyond(column, taken, 0.5 * Math.pow(10, -places), why);
  }

  private void refuseBeyond(String column, double taken, double tolerance, String why) {
    reason(why);
    if (has(column)) {
      held.add(column);
      if (Math.abs(number(column) - taken) <= tolerance + NOISE) {
        faults.add(name(column) + " agrees with " + taken + " and need not be refused: " + why);
      }
    }
  }

  /** Holds or refuses a figure by what is said of the row. */
  public void checkUnless(boolean refused, String column, double calculated, String why) {
    if (refused) {
      refuse(column, calculated, why);
    } else {
      check(column, calculated);
    }
  }

  /** Holds what a cell says in another way; passed over where nothing is printed. */
  public void that(String column, BooleanSupplier holds, String says) {
    if (has(column)) {
      held.add(column);
      if (!holds.getAsBoolean()) {
        faults.add(name(column) + ": " + says);
      }
    }
  }

  /**
   * Passes over a cell of this row which nothing can be held against.
   *
   * @param why it cannot
   */
  public void passOver(String column, String why) {
    reason(why);
    read.add(column);
  }

  /** Tells what a cell is called in a list of faults. */
  String name(String column) {
    return column + " = " + raw(column) + " of " + this;
  }

  List<String> faults() {
    return faults;
  }

  int heldCells() {
    return held.size();
  }

  List<String> unread(Collection<String> columns) {
    return columns.stream()
        .filter(this::has)
        .filter(column -> !held.contains(column) && !read.contains(column))
        .toList();
  }

  private void within(String column, double calculated, double tolerance) {
    if (has(column)) {
      held.add(column);
      double printed = number(column);
      // In the positive form, so that not-a-number fails.
      if (!(Math.abs(printed - calculated) <= tolerance + NOISE)) {
        faults.add(
            String.format(
                Locale.UK,
                "%s: calculated %.8g, within %.2g",
                name(column),
                calculated,
                tolerance));
      }
    }
  }

  private double half(String column) {
    String printed = raw(column);
    int point = printed.indexOf('.');
    return 0.5 * Math.pow(10, point < 0 ? 0 : point + 1 - printed.length());
  }

  private String raw(String column) {
    String cell = cells.get(column);
    if (cell == null) {
      throw new IllegalArgumentException("no column " + column);
    }
    return cell;
  }

  private static double number(String column, String printed) {
    try {
      double sum = 0;
      for (String part : printed.strip().split("[ +-]+(?=\\d+/)")) {
        String[] fraction = part.split("/");
        sum +=
            fraction.length == 1
                ? Double.parseDouble(part)
                : Double.parseDouble(fraction[0]) / Double.parseDouble(fraction[1]);
      }
      return sum;
    } catch (NumberFormatException none) {
      throw new IllegalArgumentException(column + " is no number: " + printed, none);
    }
  }

  private static void reason(String why) {
    if (why.isBlank()) {
      throw new IllegalArgumentException("a reason must be given");
    }
  }

  @Override
  public String toString() {
    return cells.toString();
  }
}
