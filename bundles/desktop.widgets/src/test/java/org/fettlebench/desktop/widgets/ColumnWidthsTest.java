package org.fettlebench.desktop.widgets;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.util.List;
import org.fettlebench.desktop.widgets.ColumnWidths.Wish;
import org.junit.jupiter.api.Test;

class ColumnWidthsTest {
  private static final List<Wish> WISHES =
      List.of(new Wish(50, 50), new Wish(100, 140), new Wish(100, 160));

  @Test
  void whatIsToSpareIsSharedByTheColumnsThatGrow() {
    assertArrayEquals(new int[] {50, 120, 130}, ColumnWidths.share(WISHES, 300));
  }

  @Test
  void noColumnGrowsPastItsWishOrShrinksBelowItsLeast() {
    assertArrayEquals(new int[] {50, 140, 160}, ColumnWidths.share(WISHES, 2000));
    assertArrayEquals(new int[] {50, 100, 100}, ColumnWidths.share(WISHES, 120));
    assertArrayEquals(
        new int[] {40, 60}, ColumnWidths.share(List.of(new Wish(40, 40), new Wish(60, 60)), 500));
  }
}
