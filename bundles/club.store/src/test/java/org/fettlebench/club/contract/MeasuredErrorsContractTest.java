package org.fettlebench.club.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.LongStream;
import org.fettlebench.club.ClubException;
import org.fettlebench.club.HoleError;
import org.fettlebench.club.MeasuredError;
import org.fettlebench.club.MeasuredErrors;
import org.fettlebench.club.store.internal.SqlMeasuredErrors;
import org.fettlebench.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What every book of measured errors must do, on any engine. */
public abstract class MeasuredErrorsContractTest extends StoreContract {
  private MeasuredErrors book() {
    return new SqlMeasuredErrors(database());
  }

  private static HoleError error(String member, double xMm, double yMm) {
    return new HoleError(
        "scribe-and-dot",
        Length.ofMillimetres(xMm),
        Length.ofMillimetres(yMm),
        LocalDate.of(2030, 2, 28),
        member,
        "bench drill",
        "steam chest");
  }

  @Test
  void anEmptyBookIsEmpty() {
    assertEquals(List.of(), book().all());
    assertEquals(List.of(), book().enter(List.of()));
  }

  @Test
  void whatWasMeasuredComesBackExactly() {
    HoleError inch =
        new HoleError(
            "jig",
            Length.ofInchFraction(-1, 64),
            Length.ZERO,
            LocalDate.of(1999, 12, 31),
            "",
            "",
            "");
    List<MeasuredError> entered = book().enter(List.of(error("Ann Turner", 0.12, -0.05), inch));
    reopen();

    assertEquals(entered, book().all());
    assertEquals(List.of(1L, 2L), entered.stream().map(MeasuredError::id).toList());
    assertEquals(error("Ann Turner", 0.12, -0.05), entered.get(0).error());
    assertEquals(-396_875, entered.get(1).error().x().nanometres());
    assertEquals(3L, book().enter(List.of(error("Ann Turner", 0, 0))).get(0).id());
  }

  @Test
  void aStruckEntryStaysInTheBookWithItsReason() throws SQLException {
    book().enter(List.of(error("Ann", 0.1, 0), error("Ann", 9, 0), error("Bob", 0, 0.1)));

    MeasuredError struck = book().strike(2, "Bob", " measured from the wrong edge ");
    reopen();

    assertEquals("measured from the wrong edge", struck.struck().orElseThrow().reason());
    assertEquals(3, number("SELECT count(*) FROM measured_error"));
    assertEquals(struck, book().all().get(1));
    assertEquals(List.of(1L, 3L), book().counting().stream().map(MeasuredError::id).toList());
  }

  @Test
  void whatCannotBeStruckOutIsRefusedAndNothingChanges() {
    book().enter(List.of(error("Ann", 0.1, 0)));

    refused("there is no measured error 7", () -> book().strike(7, "", "wrong"));
    refused("the reason for striking an error out is missing", () -> book().strike(1, "", " "));
    assertTrue(book().all().get(0).counts());
    book().strike(1, "", "wrong edge");
    refused("struck out already: wrong edge", () -> book().strike(1, "", "again"));
  }

  @Test
  void whatCannotBeAnErrorIsRefused() {
    refused("the error along x, 25.4 mm, is more than 25 mm", () -> error("", 25.4, 0));
    refused("the error along y, -30.0 mm", () -> error("", 0, -30));
    refused("the member", () -> error("m".repeat(121), 0, 0));
    refused(
        "the method is missing",
        () -> new HoleError(" ", Length.ZERO, Length.ZERO, LocalDate.of(2030, 1, 1), "", "", ""));
    assertEquals(List.of(), book().all());
  }

  private static void refused(String words, Executable call) {
    String said = assertThrows(ClubException.class, call).getMessage();
    assertTrue(said.contains(words), said);
  }

  @Test
  void writersAtTheSameTimeGetNumbersOfTheirOwn() {
    List<CompletableFuture<Void>> writers = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      String member = "member " + i;
      writers.add(
          CompletableFuture.runAsync(
              () -> {
                for (int n = 0; n < 10; n++) {
                  book().enter(List.of(error(member, 0.1, 0.1)));
                }
              }));
    }
    writers.forEach(CompletableFuture::join);

    assertEquals(
        LongStream.rangeClosed(1, 40).boxed().toList(),
        book().all().stream().map(MeasuredError::id).toList());
  }
}
