package org.fettlebench.desktop.widgets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * The rows of a long list: which items are shown, in which order. Immutable; each change returns
 * another model, so that a slow one can be made on another thread and taken over when it is ready.
 *
 * <p>Filtering: every word typed must occur somewhere in an item's words, whatever the case. Spaces
 * inside an item's words do not count, so that {@code 2ba} finds {@code 2 BA}. Sorting is stable:
 * items that compare equal keep the order in which they were given.
 *
 * @param <T> what a row stands for
 */
public final class ListModel<T> {
  private final List<T> items;
  private final Function<? super T, String> words;
  private final String[] haystack;
  private final Comparator<? super T> order;
  private final int[] sorted;
  private final String filter;
  private final int[] rows;

  private ListModel(ListModel<T> base, Comparator<? super T> order, int[] sorted, String filter) {
    this.items = base.items;
    this.words = base.words;
    this.haystack = base.haystack;
    this.order = order;
    this.sorted = sorted;
    this.filter = filter;
    boolean narrowing = base.sorted == sorted && filter.startsWith(base.filter);
    this.rows = keep(narrowing ? base.rows : sorted, filter);
  }

  private ListModel(List<T> items, Function<? super T, String> words) {
    this.items = List.copyOf(items);
    this.words = words;
    this.haystack = new String[items.size()];
    this.order = unordered();
    this.sorted = ascending(items.size());
    this.filter = "";
    this.rows = sorted;
  }

  /**
   * Returns a model that shows all items in the order given.
   *
   * @param items none of them null
   * @param words what the filter searches in an item; parts that must not run into each other are
   *     separated by a line feed
   */
  public static <T> ListModel<T> of(List<T> items, Function<? super T, String> words) {
    return new ListModel<>(items, words);
  }

  /** Returns a model of other items, sorted and filtered as this one. */
  public ListModel<T> items(List<T> others) {
    return new ListModel<T>(others, words).like(this);
  }

  /** Returns a model with the items in another order. */
  public ListModel<T> sorted(Comparator<? super T> newOrder) {
    int[] indexes =
        newOrder == unordered() ? ascending(items.size()) : sortedIndexes(items, newOrder);
    return new ListModel<>(this, newOrder, indexes, filter);
  }

  /** Returns a model that shows only the items with all words of {@code typed} in them. */
  public ListModel<T> filtered(String typed) {
    return new ListModel<>(this, order, sorted, squeezed(typed));
  }

  /** Returns how many rows are shown. */
  public int size() {
    return rows.length;
  }

  /** Returns how many items there are, shown or not. */
  public int total() {
    return items.size();
  }

  /** Returns the item shown in a row, counted from 0. */
  public T get(int row) {
    return items.get(rows[row]);
  }

  /** Returns the shown items from the top down. */
  public List<T> shown() {
    List<T> all = new ArrayList<>(rows.length);
    for (int index : rows) {
      all.add(items.get(index));
    }
    return all;
  }

  /** Returns all items in the order given, shown or not. */
  public List<T> all() {
    return items;
  }

  /** Returns this model sorted and filtered as another one. */
  public ListModel<T> like(ListModel<T> other) {
    return sorted(other.order).filtered(other.filter);
  }

  /** Returns the first row whose item is wanted, if one is shown. */
  public OptionalInt rowOf(Predicate<? super T> wanted) {
    for (int row = 0; row < rows.length; row++) {
      if (wanted.test(get(row))) {
        return OptionalInt.of(row);
      }
    }
    return OptionalInt.empty();
  }

  private int[] keep(int[] candidates, String wanted) {
    if (wanted.isEmpty()) {
      return candidates;
    }
    String[] parts = wanted.split(" ");
    return Arrays.stream(candidates).filter(index -> holdsAll(index, parts)).toArray();
  }

  private boolean holdsAll(int index, String[] parts) {
    // Made when first needed; two threads at worst make the same text twice.
    String hay = haystack[index];
    if (hay == null) {
      hay = words.apply(items.get(index)).toLowerCase(Locale.ROOT).replace(" ", "");
      haystack[index] = hay;
    }
    for (String part : parts) {
      if (!hay.contains(part)) {
        return false;
      }
    }
    return true;
  }

  private static String squeezed(String typed) {
    return typed.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
  }

  private static int[] ascending(int count) {
    int[] indexes = new int[count];
    Arrays.setAll(indexes, index -> index);
    return indexes;
  }

  private static <T> int[] sortedIndexes(List<T> items, Comparator<? super T> order) {
    Integer[] indexes = new Integer[items.size()];
    Arrays.setAll(indexes, index -> index);
    Arrays.sort(indexes, (left, right) -> order.compare(items.get(left), items.get(right)));
    return Arrays.stream(indexes).mapToInt(Integer::intValue).toArray();
  }

  /** Returns the order of a list that keeps its items as they were given. */
  public static Comparator<Object> unordered() {
    return AsGiven.ORDER;
  }

  /** One object, so that "as given" is recognised and costs no sorting. */
  private enum AsGiven implements Comparator<Object> {
    ORDER;

    @Override
    public int compare(Object left, Object right) {
      return 0;
    }
  }
}
