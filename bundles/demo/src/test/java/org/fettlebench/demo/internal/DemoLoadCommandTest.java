package org.fettlebench.demo.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.never;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.fettlebench.club.Goods;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.command.Call;
import org.fettlebench.command.CommandException;
import org.fettlebench.kits.DemoClub;
import org.junit.jupiter.api.Test;

class DemoLoadCommandTest {
  private static final StockLine LINE =
      new StockLine(
          1,
          new Goods(Goods.Kind.SUNDRY, "oil", "", "", Optional.empty(), Optional.empty(), ""),
          "shelf",
          StockLine.Condition.GOOD,
          1,
          List.of(),
          Optional.empty());

  private final DemoClub demo = mock(DemoClub.class);
  private final Stock stock = mock(Stock.class);
  private final Call call = mock(Call.class);
  private final DemoLoadCommand command = new DemoLoadCommand(demo, stock);

  private void ownLines(int count) {
    when(stock.lines()).thenReturn(Collections.nCopies(count, LINE));
    when(demo.kitName()).thenReturn("a pump");
  }

  @Test
  void aClubWithStockOfItsOwnIsNotMixedUp() {
    ownLines(3);
    CommandException refused = assertThrows(CommandException.class, () -> command.run(call));
    assertTrue(refused.getMessage().startsWith("the club has 3 stock lines of its own"));
    assertTrue(refused.getMessage().endsWith("say --beside to mix them"), refused.getMessage());
    verify(demo, never()).load();
  }

  @Test
  void whoSaysSoMayMixThem() {
    ownLines(3);
    when(call.on("--beside")).thenReturn(true);
    assertTrue(command.run(call).text().startsWith("The demo is loaded"));
    verify(demo).load();
  }

  @Test
  void anEmptyClubAndOneThatHasItAlreadyTakeIt() {
    ownLines(0);
    assertTrue(command.run(call).text().startsWith("The demo is loaded"));
    ownLines(413);
    when(demo.loaded()).thenReturn(true);
    assertEquals("The demo is there already: kit a pump.", command.run(call).text());
  }
}
