package org.fettlebench.desktop.widgets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ListModelTest {
  private static final List<String> STOCK =
      List.of(
          "2 BA hexagon\nsteel", "4 BA cheese\nbrass", "12 BA hexagon\nbrass", "M3 socket\nsteel");

  @ParameterizedTest
  @CsvSource({
    "'',4",
    "ba,3",
    "HEXAGON brass,1",
    "brass hexagon,1",
    "2ba,2",
    "'  steel   m3 ',1",
    "steelm3,0",
    "aluminium,0"
  })
  void everyWordMustOccurSomewhere(String typed, int rows) {
    assertEquals(rows, ListModel.of(STOCK, item -> item).filtered(typed).size());
  }

  @Test
  void wordsDoNotRunFromOneCellIntoTheNext() {
    assertEquals(0, ListModel.of(STOCK, item -> item).filtered("hexagonsteel").size());
  }

  @Test
  void rowsFollowTheOrderAndKeepTheFilter() {
    ListModel<String> model =
        ListModel.of(STOCK, item -> item)
            .filtered("ba")
            .sorted(Comparator.comparing(item -> item, Figures::compareNaturally));
    assertEquals(
        List.of("2 BA hexagon\nsteel", "4 BA cheese\nbrass", "12 BA hexagon\nbrass"),
        model.shown());
    assertEquals(OptionalInt.of(2), model.rowOf(item -> item.startsWith("12")));
    assertEquals(OptionalInt.empty(), model.rowOf(item -> item.startsWith("M3")));
  }

  @Test
  void otherItemsTakeOverFilterAndOrder() {
    ListModel<String> model =
        ListModel.of(STOCK, item -> item)
            .sorted(Comparator.reverseOrder())
            .filtered("b")
            .items(List.of("a", "b1", "b3", "b2"));
    assertEquals(List.of("b3", "b2", "b1"), model.shown());
    assertEquals(4, model.total());
  }

  @Test
  void unorderedReturnsToTheOrderGiven() {
    ListModel<String> sorted = ListModel.of(STOCK, item -> item).sorted(Comparator.reverseOrder());
    assertEquals(STOCK, sorted.sorted(ListModel.unordered()).shown());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void typingLetterByLetterEndsWhereTypingAtOnceDoes(long seed) {
    Random random = new Random(seed);
    List<String> items =
        IntStream.range(0, 500).mapToObj(i -> Long.toString(random.nextLong(), 5)).toList();
    String typed = Integer.toString(random.nextInt(125), 5) + " " + random.nextInt(5);
    ListModel<String> slowly = ListModel.of(items, item -> item);
    for (int end = 1; end <= typed.length(); end++) {
      slowly = slowly.filtered(typed.substring(0, end));
    }
    // And a slip of the finger, taken back.
    slowly = slowly.filtered(typed + "3").filtered(typed);
    List<String> plain =
        items.stream()
            .filter(item -> List.of(typed.split(" ")).stream().allMatch(item::contains))
            .toList();
    assertEquals(plain, slowly.shown(), "seed " + seed);
    assertTrue(slowly.size() > 0, "the law says nothing when nothing fits, seed " + seed);
  }
}
