package org.fettlebench.club;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RecordsTest {
  private static Goods named(String name) {
    return new Goods(Goods.Kind.SUNDRY, name, "", "", Optional.empty(), Optional.empty(), "");
  }

  private static Goods ofLength(long nanometres) {
    return new Goods(
        Goods.Kind.SUNDRY,
        "pin",
        "",
        "",
        Optional.empty(),
        Optional.of(Length.ofNanometres(nanometres)),
        "");
  }

  private static Receipt received(String place, int quantity, Optional<Integer> lowMark) {
    return new Receipt(named("pin"), place, StockLine.Condition.GOOD, quantity, lowMark);
  }

  private static StockLine line(int quantity, int lent) {
    return new StockLine(
        1, named("pin"), "Bench", StockLine.Condition.GOOD, quantity, lent(lent), Optional.empty());
  }

  @Test
  void wordsLoseTheBlanksAroundThem() {
    assertEquals(named("pin"), named("  pin "));
    assertEquals("Bench", received(" Bench ", 1, Optional.empty()).place());
  }

  @Test
  void refusalsSayWhatIsWrongAndWhatToDo() {
    assertRefused("the name of the goods is missing; give it", () -> named(" "));
    assertRefused(
        "the name of the goods 'two?lines' must be one line, without tabs or line ends",
        () -> named("two\nlines"));
    assertRefused(
        "the name of the goods 'nnnnnnnnnnnnnnnnnnnn...' has 201 characters; at most 200 can be"
            + " kept, so shorten it",
        () -> named("n".repeat(201)));
    assertRefused(
        "the length of pin is -0.000001 mm; give one above nothing, or leave it out",
        () -> ofLength(-1));
    assertRefused(
        "the quantity of pin is 0; it must be 1 or more",
        () -> received("Bench", 0, Optional.empty()));
    assertRefused(
        "the low mark of pin is -1; it cannot be below nothing",
        () -> received("Bench", 1, Optional.of(-1)));
    assertRefused("the place of pin is missing; give it", () -> received("", 1, Optional.empty()));
    assertRefused("3 of pin are lent, but 2 belong to Bench", () -> line(2, 3));
  }

  @ParameterizedTest
  @ValueSource(longs = {0, -1, Long.MIN_VALUE})
  void aLengthIsAboveNothing(long nanometres) {
    assertThrows(ClubException.class, () -> ofLength(nanometres));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, -1, Integer.MIN_VALUE})
  void aReceiptBringsSomething(int quantity) {
    assertThrows(ClubException.class, () -> received("Bench", quantity, Optional.empty()));
  }

  @Test
  void whatIsPresentIsWhatIsNotLent() {
    assertEquals(2, line(5, 3).present());
    assertEquals(0, line(3, 3).present());
    assertThrows(ClubException.class, () -> line(-1, 0));
  }

  @Test
  void nothingMayBeNull() {
    assertThrows(NullPointerException.class, () -> named(null));
    assertThrows(
        NullPointerException.class, () -> new Movement(1, 1, null, 1, Instant.EPOCH, "", ""));
    assertThrows(
        NullPointerException.class, () -> new KitShelf.KeptKit("Pump", null, Instant.EPOCH));
  }

  private static void assertRefused(String words, Executable act) {
    assertEquals(words, assertThrows(ClubException.class, act).getMessage());
  }

  private static List<Loan> lent(int quantity) {
    return quantity == 0
        ? List.of()
        : List.of(new Loan("Ann Hall", quantity, Optional.of(LocalDate.of(2026, 5, 3))));
  }

  @Test
  void loansAreToldInWords() {
    List<Loan> loans = List.of(lent(2).get(0), new Loan(" Tom Reed ", 1, Optional.empty()));
    StockLine line =
        new StockLine(
            1, named("pin"), "Bench", StockLine.Condition.GOOD, 4, loans, Optional.empty());
    assertEquals(3, line.lent());
    assertEquals(1, line.present());
    assertEquals("Ann Hall (2) until 3 May 2026; Tom Reed", line.holder());
    assertThrows(ClubException.class, () -> new Loan(" ", 1, Optional.empty()));
    assertThrows(ClubException.class, () -> new Loan("Ann", 0, Optional.empty()));
  }

  @Test
  void aLoanIsOverdueFromTheDayAfterItIsDue() {
    Loan loan = lent(1).get(0);
    assertFalse(loan.overdue(LocalDate.of(2026, 5, 3)));
    assertTrue(loan.overdue(LocalDate.of(2026, 5, 4)));
    assertFalse(new Loan("Ann", 1, Optional.empty()).overdue(LocalDate.MAX));
  }
}
