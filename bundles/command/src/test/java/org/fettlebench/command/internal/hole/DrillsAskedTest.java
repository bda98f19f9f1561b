package org.fettlebench.command.internal.hole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.util.List;
import java.util.Optional;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.club.StockLine.Condition;
import org.fettlebench.command.internal.FreshClub;
import org.fettlebench.command.internal.Session;
import org.fettlebench.command.internal.Session.Answer;
import org.fettlebench.testkit.trade.RealTrade;
import org.junit.jupiter.api.Test;

/** Where a plan takes its drills from: what the stock holds, or the catalogue. */
class DrillsAskedTest {
  private static Answer plan(List<StockLine> lines, String... flags) {
    Stock stock = mock(Stock.class);
    when(stock.lines()).thenReturn(lines);
    Session session =
        new Session(new HolePlan(RealTrade.THREADS, RealTrade.DRILLS, RealTrade.HOLES, stock));
    String[] words = new String[4 + flags.length];
    System.arraycopy(new String[] {"hole", "plan", "2", "BA"}, 0, words, 0, 4);
    System.arraycopy(flags, 0, words, 4, flags.length);
    return session.type(words);
  }

  private static StockLine drill(Condition condition) {
    return new StockLine(
        1, FreshClub.drill("4.0 mm", 4.0), "Stand", condition, 1, List.of(), Optional.empty());
  }

  @Test
  void aStockWithoutAnyDrillLeavesTheChoiceToTheCatalogueAndSaysSo() {
    Answer answer = plan(List.of());
    assertEquals(0, answer.status());
    // Common practice, no source: the tapping drill for 2 BA is 5/32 in.
    assertTrue(answer.out().contains("Tap through 5/32 in"), answer.out());
    assertTrue(
        answer
            .out()
            .contains("from the whole catalogue, since no drill is entered in the stock, best"),
        answer.out());
    assertTrue(plan(List.of(), "--json").out().contains("\"drillsInStock\" : false"));
  }

  @Test
  void aDrillThatIsEnteredButWornKeepsTheChoiceToTheStock() {
    Answer answer = plan(List.of(drill(Condition.WORN)));
    assertEquals(1, answer.status());
    assertTrue(answer.out().contains("no drill that leaves a usable thread"), answer.out());
    assertTrue(answer.out().contains("drills in their place"), answer.out());
  }

  @Test
  void heldMeansHeldEvenIfNothingIs() {
    assertEquals(1, plan(List.of(), "--held").status());
    Answer both = plan(List.of(), "--held", "--catalogue");
    assertEquals("say --held or --catalogue, not both", both.err().strip());
  }
}
