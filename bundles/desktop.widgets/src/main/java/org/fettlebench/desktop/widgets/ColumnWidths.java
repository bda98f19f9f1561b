package org.fettlebench.desktop.widgets;

import java.util.List;

/** Shares a list's width out among its columns. */
final class ColumnWidths {
  private ColumnWidths() {}

  /**
   * A column's wish, in pixels.
   *
   * @param least what it gets in any case
   * @param most what it may grow to
   */
  record Wish(int least, int most) {}

  /** Returns the widths: the least ones, with what is to spare shared out to those that grow. */
  static int[] share(List<Wish> wishes, int width) {
    int least = wishes.stream().mapToInt(Wish::least).sum();
    int more = wishes.stream().mapToInt(wish -> wish.most() - wish.least()).sum();
    double share = more == 0 ? 0 : Math.max(0, Math.min(1, (width - least) / (double) more));
    return wishes.stream()
        .mapToInt(wish -> wish.least() + (int) (share * (wish.most() - wish.least())))
        .toArray();
  }
}
