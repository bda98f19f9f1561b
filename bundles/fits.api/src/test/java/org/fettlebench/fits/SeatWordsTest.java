package org.fettlebench.fits;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeatWordsTest {
  private static SeatAnswer answer(double allowanceMm) {
    Seat seat =
        Seat.flat(
            "lug of the pump",
            Outline.of(List.of(new Point(0, 0), new Point(12, 0), new Point(12, 9.525))),
            new Point(6, 4));
    SeatedHead head =
        new SeatedHead(
            "2 BA hexagon",
            9.5,
            OptionalDouble.of(8.2296),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            "from memory");
    return new SeatAnswer(
        new SeatQuestion(seat, head, 4.9, 0.1, "a test"),
        allowanceMm < 0 ? Verdict.FOULS : Verdict.TIGHT,
        new SeatAnswer.Figures(new Point(6.2, 4), 0.1, allowanceMm, OptionalDouble.empty()),
        new SeatAnswer.Governing(
            SeatAnswer.Governing.Kind.EDGE,
            "edge from corner 1 to corner 2",
            "washer",
            List.of(new Point(0, 0), new Point(12, 0)),
            new Point(6, 0),
            4,
            4.75),
        List.of("hollow 1 is odd"),
        List::of);
  }

  /** Inches by 25.4 mm to the inch, by hand: 0.05 mm is 0.00197 in, 4.9 mm is 0.1929 in. */
  @Test
  void saysTheVerdictFirstAndTheNameAsGiven() {
    List<String> lines =
        SeatWords.lines(
            answer(0.05),
            OptionalDouble.of(0.9997),
            List.of(
                new Reach(0, OptionalDouble.of(1.27)),
                new Reach(90, OptionalDouble.of(-0.254)),
                new Reach(225, OptionalDouble.empty())),
            LengthUnit.MILLIMETRE);
    assertEquals("lug of the pump: 2 BA hexagon tight", lines.get(0));
    assertEquals("The hole may be out 0.050 mm (0.002 in).", lines.get(1));
    assertEquals("Expected within 0.10 mm (0.004 in) (radius): a test.", lines.get(2));
    assertEquals("Chance of success above 99.9 %.", lines.get(3));
    assertEquals(
        "Edge from corner 1 to corner 2 governs: 4.00 mm away, 4.75 mm needed by the washer.",
        lines.get(4));
    assertEquals(
        "The hole may be out: right 1.27 mm, away only after 0.25 mm, left and near nowhere.",
        lines.get(6));
    assertEquals(
        "Head: 2 BA hexagon, across flats 8.23 mm (0.324 in), sweeps 9.50 mm (0.374 in), from"
            + " memory.",
        lines.get(7));
    assertEquals("Hollow 1 is odd.", lines.get(8));
  }

  @Test
  void whatIsNotKnownIsNotSaid() {
    assertEquals(
        7,
        SeatWords.lines(answer(-0.2), OptionalDouble.empty(), List.of(), LengthUnit.INCH).size());
    assertEquals(
        "Lacks 0.008 in (0.20 mm) even with the hole just right.",
        SeatWords.allowance(answer(-0.2), LengthUnit.INCH));
    assertEquals("x 0.236 in, y 0.157 in", SeatWords.place(new Point(6, 4), LengthUnit.INCH));
  }

  @ParameterizedTest
  @CsvSource({
    "1, above 99.9 %",
    "0.9996, above 99.9 %",
    "0.9949, 99.5 %",
    "0.97, 97 %",
    "0.0049, 0.5 %",
    "0.0001, below 0.1 %"
  })
  void neverSaysThatAChanceIsSurerThanItIs(double chance, String words) {
    assertEquals(words, SeatWords.percent(chance));
  }

  @Test
  void saysWhatIsLackingAndWhatComesOfAChange() {
    assertEquals(
        "Even with the hole just right it lacks 0.20 mm (0.008 in); the method is expected within"
            + " 0.10 mm (0.004 in).",
        SeatWords.room(answer(-0.2), LengthUnit.MILLIMETRE));
    assertEquals(
        "The hole may be out 0.050 mm (0.002 in); the method is expected within 0.10 mm (0.004"
            + " in).",
        SeatWords.room(answer(0.05), LengthUnit.MILLIMETRE));
    assertEquals("then tight, 0.050 mm", SeatWords.then(answer(0.05), LengthUnit.MILLIMETRE));
    assertEquals("", SeatWords.upper(""));
    SeatCure cure = new SeatCure(SeatCure.Kind.WASHER_OFF, "leave the washer off", answer(0.05));
    assertEquals("Leave the washer off.", SeatWords.cure(cure, LengthUnit.MILLIMETRE));
  }

  @ParameterizedTest
  @CsvSource({
    "0.9995, above 99.9 %",
    "0.9994, 99.9 %",
    "0.99, 99.0 %",
    "0.01, 1 %",
    "0.0006, 0.1 %",
    "0.0004, below 0.1 %"
  })
  void chancesCloseToTheEndsHaveTenths(double chance, String words) {
    assertEquals(words, SeatWords.percent(chance));
  }
}
