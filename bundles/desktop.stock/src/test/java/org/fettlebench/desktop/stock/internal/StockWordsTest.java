package org.fettlebench.desktop.stock.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fettlebench.club.StockLine;
import org.fettlebench.measure.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StockWordsTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

  private final PaperStock stock = Bench.holding(Bench.LIST);
  private final StockDeeds deeds = new StockDeeds(stock, () -> TODAY);

  private StockRow row(int id) {
    return new StockRow(stock.line(id).orElseThrow(), TODAY);
  }

  private Order order(Deed deed, String quantity, String member, String due) {
    return new Order(deed, stock.line(1).orElseThrow(), quantity, member, due, "");
  }

  @ParameterizedTest
  @CsvSource({
    "1, 2 BA, hexagon screw, 1/2 in",
    "3, M5, socket cap screw, 16 mm",
    "4, No 22, 'drill, 3.99 mm', ''",
    "6, 2 BA, taper tap, ''",
    "7, '', Cutting oil, ''"
  })
  void aRowSpeaksTheWordsOfTheTrade(int id, String size, String what, String length) {
    assertEquals(size, row(id).size());
    assertEquals(what, row(id).what(LengthUnit.MILLIMETRE));
    assertEquals(length, row(id).length());
  }

  @Test
  void whatPressesMostComesFirst() {
    assertEquals("good", row(1).state());
    assertEquals("low", row(2).state(), "nine, and ten should be there");
    assertEquals("worn", row(6).state());
    stock.lend(6, 1, "Tom Reed", Optional.of(TODAY.minusDays(1)));
    assertEquals("overdue, worn", row(6).state());
    stock.lend(4, 1, "Tom Reed", Optional.of(TODAY));
    assertEquals("out", row(4).state(), "what is due today is not overdue");
    stock.take(7, 3, "", "");
    assertEquals("none left", row(7).state());
  }

  @ParameterizedTest
  @CsvSource({
    "2 weeks, 2026-12-09",
    "10 days, 2026-12-05",
    "24 Dec, 2026-12-24",
    "3 may, 2027-05-03",
    "2026-12-24, 2026-12-24",
    "24/12/2026, 2026-12-24"
  })
  void daysAreReadAsTheyAreTyped(String typed, LocalDate day) {
    assertEquals(Optional.of(day), DueDate.read(typed, TODAY));
  }

  @ParameterizedTest
  @ValueSource(strings = {"soon", "2026-11-24", "31 31", "-3 days"})
  void noDayAndThePastAreRefusedWithARemedy(String typed) {
    var refused = assertThrows(IllegalArgumentException.class, () -> DueDate.read(typed, TODAY));
    assertTrue(refused.getMessage().contains("write"), refused.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "x", "1.5", "-2", "0", "99999999999"})
  void aQuantityThatIsNoneChangesNothing(String typed) {
    Outcome.Refused refused =
        assertInstanceOf(
            Outcome.Refused.class, deeds.perform(order(Deed.TAKE, typed, "Ann Hall", "")));
    assertEquals(Outcome.Field.QUANTITY, refused.field());
    assertEquals(12, stock.line(1).orElseThrow().quantity());
  }

  @Test
  void aCountMayFindNothingAndSaysTheDifference() {
    Outcome.Done done =
        assertInstanceOf(Outcome.Done.class, deeds.perform(order(Deed.COUNT, "0", "Ann Hall", "")));
    assertTrue(done.sentence().contains("12 fewer than in the book"), done.sentence());
    Outcome.Done same =
        assertInstanceOf(Outcome.Done.class, deeds.perform(order(Deed.COUNT, "0", "Ann Hall", "")));
    assertTrue(same.undo().isEmpty(), "what changed nothing cannot be undone");
  }

  @Test
  void everyDeedIsUndoneToWhatWasThere() throws Exception {
    StockLine before = stock.line(1).orElseThrow();
    for (Deed deed : List.of(Deed.TAKE, Deed.PUT_BACK, Deed.COUNT, Deed.SCRAP, Deed.LEND)) {
      Outcome.Done done =
          assertInstanceOf(
              Outcome.Done.class, deeds.perform(order(deed, "5", "Ann Hall", "2 weeks")));
      assertTrue(!before.equals(stock.line(1).orElseThrow()), deed + " does something");
      done.undo().orElseThrow().call();
      assertEquals(before, stock.line(1).orElseThrow(), deed + " is undone");
    }
  }

  @Test
  void undoingAReturnKeepsTheDay() throws Exception {
    deeds.perform(order(Deed.LEND, "2", "Ann Hall", "2 weeks"));
    StockLine lent = stock.line(1).orElseThrow();
    Outcome.Done done =
        assertInstanceOf(
            Outcome.Done.class, deeds.perform(order(Deed.GIVE_BACK, "2", "Ann Hall", "")));
    assertEquals(0, stock.line(1).orElseThrow().lent());
    done.undo().orElseThrow().call();
    assertEquals(lent, stock.line(1).orElseThrow());
  }

  @Test
  void nobodyBorrowsWithoutAName() {
    Outcome.Refused refused =
        assertInstanceOf(Outcome.Refused.class, deeds.perform(order(Deed.LEND, "1", " ", "")));
    assertEquals(Outcome.Field.MEMBER, refused.field());
  }

  @Test
  void aPlaceHoldsWhatLiesInsideItAndNoNeighbour() {
    Places all = Places.of(List.of(row(1), row(2), row(3), row(4), row(5), row(6), row(7)));
    assertEquals(
        List.of("Cabinet", "Drill stand", "Metric", "Shelf 1", "Tap box"),
        all.listed().stream().map(Places::name).toList());
    Narrowing cabinet = Narrowing.NONE.place("Cabinet");
    assertTrue(cabinet.takes(row(1)));
    assertTrue(!Narrowing.NONE.place("Cab").takes(row(1)), "a place is not its beginning");
  }

  @Test
  void aChangeOfOnesOwnRereadsItsLineOnly() {
    StockBook book = new StockBook(stock, () -> TODAY);
    StockBook.Reading before = book.read();
    stock.take(1, 5, "", "");
    int readings = stock.readings;
    StockBook.Reading after = book.after(before, List.of(1L));
    assertEquals(readings, stock.readings);
    assertEquals(7, after.rows().get(0).line().quantity());
    stock.take(1, 1, "", "");
    stock.take(2, 1, "", "");
    assertEquals(8, book.after(after, List.of(1L)).rows().get(1).line().quantity());
    assertEquals(readings + 1, stock.readings, "another's change has everything read");
  }

  @Test
  void theLedgerSaysWhatWasHeldThen() {
    stock.take(1, 4, "", "");
    stock.count(1, 10, "", "");
    List<LedgerRow> ledger = LedgerRow.of(stock.movements(1), 10);
    assertEquals(List.of(10, 8, 12), ledger.stream().map(LedgerRow::held).toList());
    assertEquals(List.of("+2", "\u22124", "+12"), ledger.stream().map(LedgerRow::change).toList());
  }

  @Test
  void whatIsBegunIsCompleted() {
    List<String> known = List.of("Cabinet / Drawer 1", "Drill stand");
    assertEquals(Optional.of("drill stand"), Completion.of(known, "dri").map(String::toLowerCase));
    assertEquals(Optional.empty(), Completion.of(known, ""));
    assertEquals(Optional.empty(), Completion.of(known, "Drill stand"));
  }
}
