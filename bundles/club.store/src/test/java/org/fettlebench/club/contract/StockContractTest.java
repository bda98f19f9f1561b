package org.fettlebench.club.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fettlebench.club.ClubException;
import org.fettlebench.club.Goods;
import org.fettlebench.club.Movement;
import org.fettlebench.club.Receipt;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What every stock must do, on any engine. */
public abstract class StockContractTest extends StoreContract {
  private static final String SCREW = "2 BA hexagon screw x 1/2 in";

  @Test
  void anEmptyStockIsEmpty() {
    assertEquals(List.of(), stock().lines());
    assertEquals(Optional.empty(), stock().line(1));
    assertEquals(List.of(), stock().movements(1));
    assertEquals(List.of(), stock().movementsAfter(0, 10));
    assertEquals(List.of(), stock().members());
    assertEquals(List.of(), stock().places());
    assertEquals(List.of(), stock().receive(List.of(), "", ""));
  }

  @Test
  void everySixtyFourthOfAnInchComesBackExactly() {
    List<Receipt> drills =
        java.util.stream.IntStream.rangeClosed(1, 64)
            .mapToObj(n -> receipt(drill(n, 64), DRAWER, 1))
            .toList();
    stock().receive(drills, "", "");
    reopen();
    List<StockLine> lines = stock().lines();
    assertEquals(64, lines.size());
    for (StockLine line : lines) {
      long numerator = Long.parseLong(line.goods().name().split("/")[0]);
      // 1/64 in is 0.396875 mm, since an inch is 25.4 mm.
      assertEquals(numerator * 396_875, line.goods().diameter().orElseThrow().nanometres());
      assertEquals(drill(numerator, 64), line.goods());
    }
  }

  @Test
  void whatIsReceivedComesBackAsItWasGiven() {
    Goods tap =
        new Goods(
            Goods.Kind.TAP,
            "M6 second tap, Müller's",
            "M6",
            "second",
            Optional.empty(),
            Optional.of(Length.ofNanometres(1)),
            "high-speed steel");
    Receipt receipt = new Receipt(tap, "Bench / Rack", StockLine.Condition.WORN, 3, Optional.of(2));
    Movement movement = stock().receive(List.of(receipt), "Ann Turner", "from the fair").get(0);
    reopen();
    StockLine line = stock().line(movement.lineId()).orElseThrow();
    assertEquals(
        new StockLine(
            movement.lineId(),
            tap,
            "Bench / Rack",
            StockLine.Condition.WORN,
            3,
            List.of(),
            Optional.of(2)),
        line);
    assertEquals(List.of(line), stock().lines());
    assertEquals(List.of(movement), stock().movements(line.id()));
    assertEquals("from the fair", movement.note());
    assertEquals(List.of("Ann Turner"), stock().members());
    assertEquals(List.of("Bench / Rack"), stock().places());
  }

  @Test
  void severalMovementsAreUndoneTogetherOrNotAtAll() {
    Stock stock = stock();
    List<Movement> both =
        stock.receive(
            List.of(receipt(screw(SCREW), DRAWER, 4), receipt(screw("other " + SCREW), DRAWER, 3)),
            "",
            "");
    List<Long> ids = both.stream().map(Movement::id).toList();
    stock.take(both.get(1).lineId(), 1, "", "");
    assertThrows(ClubException.class, () -> stock.undoAll(ids, "Ann"));
    assertEquals(4, stock.line(both.get(0).lineId()).orElseThrow().quantity());
    stock.putBack(both.get(1).lineId(), 1, "", "");
    List<Movement> undone = stock.undoAll(ids, "Ann");
    assertEquals(List.of(-4, -3), undone.stream().map(Movement::quantity).toList());
    assertTrue(stock.lines().stream().allMatch(line -> line.quantity() == 0));
  }

  @Test
  void equalGoodsInOnePlaceAndConditionAreOneLine() {
    Stock stock = stock();
    Goods screw = screw(SCREW);
    List<Movement> both =
        stock.receive(List.of(receipt(screw, DRAWER, 4), receipt(screw, DRAWER, 3)), "", "");
    stock.receive(List.of(receipt(screw, DRAWER, 2)), "", "");
    stock.receive(List.of(receipt(screw, "Cabinet / Drawer 4", 1)), "", "");
    stock.receive(
        List.of(new Receipt(screw, DRAWER, StockLine.Condition.WORN, 5, Optional.empty())), "", "");
    assertEquals(both.get(0).lineId(), both.get(1).lineId());
    assertEquals(9, stock.line(both.get(0).lineId()).orElseThrow().quantity());
    assertEquals(3, stock.lines().size());
  }

  @Test
  void goodsThatDifferInOneThingAreTwoLines() {
    Goods plain =
        new Goods(Goods.Kind.SUNDRY, "pin", "", "", Optional.empty(), Optional.empty(), "");
    Optional<Length> millimetre = Optional.of(Length.ofMillimetres(1));
    List<Goods> others =
        List.of(
            new Goods(Goods.Kind.FASTENER, "pin", "", "", Optional.empty(), Optional.empty(), ""),
            new Goods(Goods.Kind.SUNDRY, "pins", "", "", Optional.empty(), Optional.empty(), ""),
            new Goods(Goods.Kind.SUNDRY, "pin", "M2", "", Optional.empty(), Optional.empty(), ""),
            new Goods(Goods.Kind.SUNDRY, "pin", "", "stud", Optional.empty(), Optional.empty(), ""),
            new Goods(Goods.Kind.SUNDRY, "pin", "", "", millimetre, Optional.empty(), ""),
            new Goods(Goods.Kind.SUNDRY, "pin", "", "", Optional.empty(), millimetre, ""),
            new Goods(Goods.Kind.SUNDRY, "pin", "", "", Optional.empty(), Optional.empty(), "tin"));
    stock().receive(List.of(receipt(plain, DRAWER, 1)), "", "");
    for (Goods other : others) {
      stock().receive(List.of(receipt(other, DRAWER, 1)), "", "");
    }
    assertEquals(1 + others.size(), stock().lines().size());
    stock().receive(List.of(receipt(plain, DRAWER, 1)), "", "");
    assertEquals(1 + others.size(), stock().lines().size());
  }

  @Test
  void aLowMarkStaysUntilAReceiptGivesAnother() {
    Stock stock = stock();
    Goods screw = screw(SCREW);
    stock.receive(
        List.of(new Receipt(screw, DRAWER, StockLine.Condition.GOOD, 1, Optional.of(0))), "", "");
    stock.receive(List.of(receipt(screw, DRAWER, 1)), "", "");
    assertEquals(Optional.of(0), stock.lines().get(0).lowMark());
    stock.receive(
        List.of(new Receipt(screw, DRAWER, StockLine.Condition.GOOD, 1, Optional.of(12))), "", "");
    assertEquals(Optional.of(12), stock.lines().get(0).lowMark());
  }

  @Test
  void linesComeByKindThreadNameAndPlace() {
    Goods m2 =
        new Goods(Goods.Kind.FASTENER, "screw", "M2", "", Optional.empty(), Optional.empty(), "");
    stock()
        .receive(
            List.of(
                receipt(drill(1, 8), DRAWER, 1),
                receipt(m2, DRAWER, 1),
                receipt(screw("b"), DRAWER, 1),
                receipt(screw("a"), "Z", 1),
                receipt(screw("a"), "A", 1)),
            "",
            "");
    List<String> order =
        stock().lines().stream().map(line -> line.goods().name() + "@" + line.place()).toList();
    assertEquals(
        List.of("a@A", "a@Z", "b@" + DRAWER, "screw@" + DRAWER, "1/8 in@" + DRAWER), order);
  }

  @Test
  void takingPuttingBackScrappingAndCountingAddUp() {
    Stock stock = stock();
    long line = screws(stock, 10);
    assertEquals(-4, stock.take(line, 4, "Ann Turner", "pump").quantity());
    assertEquals(1, stock.putBack(line, 1, "Ann Turner", "").quantity());
    assertEquals(-2, stock.scrap(line, 2, "", "rusty").quantity());
    assertEquals(3, stock.count(line, 8, "Bill Planer", "").quantity());
    assertEquals(0, stock.count(line, 8, "", "").quantity());
    assertEquals(8, stock.line(line).orElseThrow().quantity());
    List<Movement> newestFirst = stock.movements(line);
    assertEquals(
        List.of(
            Movement.Kind.COUNTED,
            Movement.Kind.COUNTED,
            Movement.Kind.SCRAPPED,
            Movement.Kind.RETURNED,
            Movement.Kind.TAKEN,
            Movement.Kind.RECEIVED),
        newestFirst.stream().map(Movement::kind).toList());
    assertEquals(8, newestFirst.stream().mapToInt(Movement::quantity).sum());
    assertEquals("pump", newestFirst.get(4).note());
    assertEquals(List.of("Ann Turner", "Bill Planer"), stock.members());
  }

  @Test
  void allCanBeTakenButNotOneMore() {
    Stock stock = stock();
    long line = screws(stock, 4);
    assertRefused(
        "Cabinet / Drawer 3 holds 4 of 2 BA hexagon screw x 1/2 in, not 6; take 4, or count what is"
            + " there",
        () -> stock.take(line, 6, "", ""));
    stock.take(line, 4, "", "");
    assertRefused(
        "Cabinet / Drawer 3 holds none of 2 BA hexagon screw x 1/2 in, not 1; look in another"
            + " place, or count what is there",
        () -> stock.take(line, 1, "", ""));
    assertEquals(0, stock.line(line).orElseThrow().quantity());
    assertEquals(2, stock.movements(line).size());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, -1, Integer.MIN_VALUE})
  void nothingOrLessIsNotAQuantity(int quantity) {
    Stock stock = stock();
    long line = screws(stock, 4);
    long before = stock.revision();
    assertThrows(ClubException.class, () -> stock.take(line, quantity, "", ""));
    assertThrows(ClubException.class, () -> stock.putBack(line, quantity, "", ""));
    assertThrows(ClubException.class, () -> stock.scrap(line, quantity, "", ""));
    assertThrows(ClubException.class, () -> stock.lend(line, quantity, "Ann", Optional.empty()));
    assertThrows(ClubException.class, () -> stock.giveBack(line, quantity, "Ann"));
    if (quantity < 0) {
      assertThrows(ClubException.class, () -> stock.count(line, quantity, "", ""));
    }
    assertEquals(1, stock.movements(line).size());
    assertEquals(before, stock.revision());
  }

  @Test
  void whatIsNotThereIsRefusedByItsNumber() {
    Stock stock = stock();
    assertRefused(
        "there is no stock line 77; look it up in the list of stock",
        () -> stock.take(77, 1, "", ""));
    assertThrows(ClubException.class, () -> stock.putBack(77, 1, "", ""));
    assertThrows(ClubException.class, () -> stock.scrap(77, 1, "", ""));
    assertThrows(ClubException.class, () -> stock.count(77, 1, "", ""));
    assertThrows(ClubException.class, () -> stock.lend(77, 1, "Ann", Optional.empty()));
    assertThrows(ClubException.class, () -> stock.giveBack(77, 1, "Ann"));
    assertRefused(
        "there is no movement 5; look it up in the line's history", () -> stock.undo(5, ""));
  }

  @Test
  void aReceiptThatCannotBeCountedLeavesTheOthersOutToo() {
    Stock stock = stock();
    Goods screw = screw(SCREW);
    List<Receipt> tooMany =
        List.of(
            receipt(drill(1, 8), "Drill stand", 1),
            receipt(screw, DRAWER, Integer.MAX_VALUE),
            receipt(screw, DRAWER, 1));
    assertThrows(ClubException.class, () -> stock.receive(tooMany, "Ann Turner", ""));
    assertEquals(List.of(), stock.lines());
    assertEquals(List.of(), stock.movementsAfter(0, 10));
    assertEquals(List.of(), stock.members());
    assertEquals(List.of(), stock.places());
    assertEquals(0, stock.revision());
  }

  @Test
  void aWordThatDoesNotFitIsRefusedBeforeAnythingIsKept() {
    Stock stock = stock();
    long line = screws(stock, 4);
    String tooLong = "n".repeat(501);
    assertThrows(ClubException.class, () -> stock.take(line, 1, "", tooLong));
    assertThrows(ClubException.class, () -> stock.take(line, 1, "m".repeat(121), ""));
    assertThrows(ClubException.class, () -> stock.take(line, 1, "two\nlines", ""));
    stock.take(line, 1, "m".repeat(120), "n".repeat(500));
    assertEquals(3, stock.line(line).orElseThrow().quantity());
  }

  @Test
  void aMovementIsUndoneOnceAndTheUndoingCanBeUndone() {
    Stock stock = stock();
    long line = screws(stock, 10);
    Movement taken = stock.take(line, 4, "", "");
    Movement undone = stock.undo(taken.id(), "Ann Turner");
    assertEquals(4, undone.quantity());
    assertEquals(Movement.Kind.UNDONE, undone.kind());
    assertEquals("undoes movement " + taken.id(), undone.note());
    assertRefused(
        "movement "
            + taken.id()
            + " was undone already; to have it back, undo the entry that undid it",
        () -> stock.undo(taken.id(), ""));
    assertEquals(10, stock.line(line).orElseThrow().quantity());
    stock.undo(undone.id(), "");
    assertEquals(6, stock.line(line).orElseThrow().quantity());
    assertEquals(4, stock.movements(line).size());
  }

  @Test
  void aReceiptCannotBeUndoneWhenTooFewAreLeft() {
    Stock stock = stock();
    long line = screws(stock, 10);
    Movement received = stock.movements(line).get(0);
    stock.take(line, 6, "", "");
    assertRefused(
        "Cabinet / Drawer 3 holds 4 of 2 BA hexagon screw x 1/2 in, too few to take away the 10"
            + " that came in; count what is there",
        () -> stock.undo(received.id(), ""));
    assertEquals(4, stock.line(line).orElseThrow().quantity());
  }

  @Test
  void aCountThatFoundNoDifferenceHasNothingToUndo() {
    Stock stock = stock();
    long line = screws(stock, 10);
    Movement counted = stock.count(line, 10, "", "");
    assertThrows(ClubException.class, () -> stock.undo(counted.id(), ""));
  }

  @Test
  void whatIsLentBelongsHereButIsNotPresent() {
    Stock stock = stock();
    long line = screws(stock, 10);
    stock.lend(line, 3, "Ann Turner", Optional.of(LocalDate.of(2030, 12, 3)));
    stock.lend(line, 1, "Bill Planer", Optional.empty());
    StockLine lent = stock.line(line).orElseThrow();
    assertEquals(10, lent.quantity());
    assertEquals(4, lent.lent());
    assertEquals(6, lent.present());
    assertEquals("Ann Turner (3) until 3 December 2030; Bill Planer", lent.holder());
    assertEquals(List.of(lent), stock.lines());
    assertRefused(
        "Cabinet / Drawer 3 holds 6 of 2 BA hexagon screw x 1/2 in (4 more on loan), not 7; take 6,"
            + " or count what is there",
        () -> stock.take(line, 7, "", ""));
    assertThrows(ClubException.class, () -> stock.lend(line, 7, "Ann", Optional.empty()));
    assertRefused(
        "nobody is named to lend to; name who", () -> stock.lend(line, 1, " ", Optional.empty()));
    // Six lie in the drawer, as they should: the four on loan are not missing.
    assertEquals(0, stock.count(line, 6, "", "").quantity());
  }

  @Test
  void aLoanComesBackInPartsAndNotTwice() throws SQLException {
    Stock stock = stock();
    long line = screws(stock, 10);
    stock.lend(line, 3, "Ann Turner", Optional.of(LocalDate.of(2030, 12, 3)));
    stock.lend(line, 2, "Ann Turner", Optional.of(LocalDate.of(2030, 11, 1)));
    stock.giveBack(line, 4, "Ann Turner");
    assertEquals("Ann Turner until 3 December 2030", stock.line(line).orElseThrow().holder());
    assertRefused(
        "Ann Turner has 1 of 2 BA hexagon screw x 1/2 in on loan, not 2; check the name and the"
            + " quantity",
        () -> stock.giveBack(line, 2, "Ann Turner"));
    assertThrows(ClubException.class, () -> stock.giveBack(line, 1, "Bill Planer"));
    stock.giveBack(line, 1, "Ann Turner");
    StockLine back = stock.line(line).orElseThrow();
    assertEquals(10, back.present());
    assertEquals("", back.holder());
    assertEquals(5, number("SELECT sum(quantity) FROM loan WHERE returned_ms IS NOT NULL"));
    assertEquals(1, stock.movements(line).size());
  }

  @Test
  void movementsAreReadOnFromTheLastOneSeen() {
    Stock stock = stock();
    long line = screws(stock, 10);
    stock.take(line, 1, "", "");
    stock.take(line, 2, "", "");
    List<Movement> first = stock.movementsAfter(0, 2);
    assertEquals(List.of(10, -1), first.stream().map(Movement::quantity).toList());
    List<Movement> rest = stock.movementsAfter(first.get(1).id(), 2);
    assertEquals(List.of(-2), rest.stream().map(Movement::quantity).toList());
    assertThrows(IllegalArgumentException.class, () -> stock.movementsAfter(0, 0));
  }

  @Test
  void theRevisionRisesWithEveryChangeAndOnlyThen() {
    Stock stock = stock();
    long line = screws(stock, 10);
    long before = stock.revision();
    stock.lines();
    assertThrows(ClubException.class, () -> stock.take(line, 11, "", ""));
    assertEquals(before, stock.revision());
    stock.take(line, 1, "", "");
    assertTrue(stock.revision() > before);
    long taken = stock.revision();
    stock.lend(line, 1, "Ann Turner", Optional.empty());
    assertTrue(stock.revision() > taken);
    assertFalse(stock.lines().isEmpty());
  }

  private static void assertRefused(String words, org.junit.jupiter.api.function.Executable act) {
    assertEquals(words, assertThrows(ClubException.class, act).getMessage());
  }
}
