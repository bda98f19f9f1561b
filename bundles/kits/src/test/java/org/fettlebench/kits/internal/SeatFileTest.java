package org.fettlebench.kits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.kits.FaultyFileException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeatFileTest {
  private static final String SEAT =
      """
      [seat]
      name = "land"
      unit = "mm"
      outline = [[0, 0], [20, 0], [20, 12], [0, 12.5]]
      centre = [10, 6]
      """;

  private static List<String> faults(String text) {
    return assertThrows(FaultyFileException.class, () -> Bench.FILES.readSeat("a", text))
        .faults()
        .stream()
        .map(fault -> fault.line() + ":" + fault.column() + " " + fault.wrong())
        .toList();
  }

  @Test
  void aHeadAsMeasuredIsTaken() {
    SeatQuestion question =
        Bench.FILES.readSeat(
            "a",
            SEAT
                + """
                [head]
                title = "filed hexagon"
                across-flats = 8
                height = "1/8"
                flats-along-degrees = 30
                [hole]
                diameter = 4.8
                method = "jig"
                confidence = 0.99
                """);
    assertEquals(12.5, question.seat().outline().points().get(3).yMm());
    // A hexagon's corners: 8 / cos 30 = 9.2376.
    assertEquals(9.2376, question.head().sweepDiameterMm(), 0.00005);
    assertEquals(3.175, question.head().heightMm().orElseThrow());
    assertEquals(30, question.head().flatsAlongDegrees().orElseThrow());
    // 0.05 mm per axis in a jig; Rayleigh's 99 % radius is sqrt(-2 ln 0.01) = 3.0349 of it.
    assertEquals(0.15174, question.expectedErrorMm(), 0.000005);
  }

  @Test
  void everyFaultIsTold() {
    assertEquals(
        List.of(
            "1:1 the file has no hole",
            "6:1 [head] has neither thread and style nor a measured size"),
        faults(SEAT + "[head]\nheight = 3\n"));
    assertEquals(
        List.of(
            "7:1 is no thread of a known series",
            "8:1 is no known head, nut or washer",
            "9:1 is no key that [head] has",
            "11:1 diameter must be above 0 mm",
            "12:1 is no known way of placing a hole",
            "13:1 confidence must be a number above 0 and below 1"),
        faults(
            SEAT
                + """
                [head]
                thread = "2 BX"
                style = "pentagon"
                size = 3
                [hole]
                diameter = 0
                method = "guess"
                confidence = 2
                """));
  }

  @ParameterizedTest
  @CsvSource({
    "across-corners = §7 mm§, 7:1 has no meaning for a round head",
    "across-flats = §8 mm§\\nacross-corners = §7 mm§, 7:1 is less than across-flats"
  })
  void headsThatCannotBeAreTold(String size, String told) {
    String text =
        """
        [seat]
        name = "boss"
        outline = [["0 mm", "0 mm"], ["9 mm", "0 mm"], ["9 mm", "9 mm"]]
        centre = ["6 mm", "3 mm"]
        [head]
        %s
        flats-along-degrees = 30
        [hole]
        diameter = "3 mm"
        method = "jig"
        """
            .formatted(size.replace("\\n", "\n").replace('§', '"'));
    FaultyFileException refused =
        assertThrows(FaultyFileException.class, () -> Bench.FILES.readSeat("a.seat.toml", text));
    FaultyFileException.Fault first = refused.faults().get(0);
    String said = first.line() + ":" + first.column() + " " + first.wrong();
    assertTrue(said.startsWith(told), said);
  }

  @ParameterizedTest
  @CsvSource({
    "across-flats = 8, across-flats = -8, 7:1 across-flats must be above 0 mm",
    "across-flats = 8, across-flats = nan, 7:1 across-flats is no finite number",
    "across-flats = 8, across-corners = 0, 7:1 across-corners must be above 0 mm",
    "unit = §mm§, unit = §cm§, 3:1 is no unit of length here",
    "unit = §mm§, unit = 25.4, '3:1 unit must be a text, not a number'",
    "'[20, 12],', '[20, 12, 3],', 4:29 is no point: it has 3 figures",
    "'[20, 12],', '[20],', 4:29 is no point: it has 1 figure",
    "'[20, 12],', '[],', 4:29 is no point: it has 0 figures",
  })
  void oneSlipIsOneFault(String right, String slip, String told) {
    String good = SEAT + "[head]\nacross-flats = 8\n" + HOLE;
    String text = good.replace(right.replace('§', '"'), slip.replace('§', '"'));
    assertEquals(8, Bench.FILES.readSeat("a", good).head().acrossFlatsMm().orElseThrow());
    assertEquals(List.of(told), faults(text));
  }

  private static final String WHOLE =
      """
      [seat]
      name = "lug \\"A\\" \\\\ near"
      stations = [
        { at = "0", near = "0.2 in", far = "5/32" },
        { at = "11.113 mm", near = "-0.1 mm", far = "4.04 mm" },
        { at = "1 in", near = "4 mm", far = "5 mm" },
      ]
      underside = [["0 mm", "-3 mm"], ["25.4 mm", "-3 mm"], ["25 mm", "5 mm"], ["0 mm", "4 mm"]]
      cavities = [[["1 mm", "0.1 mm"], ["2 mm", "0.1 mm"], ["2 mm", "1 mm"]]]
      centre = ["0.40001 in", "1/64"]
      least-metal = "1.2 mm"
      [[seat.wall]]
      name = "barrel"
      from = ["0 mm", "5 mm"]
      to = ["25 mm", "5.1 mm"]
      height = "9 mm"
      fillet = "0.8 mm"
      [[seat.neighbour]]
      name = "oiler"
      centre = ["30 mm", "4 mm"]
      sweep = "8.001 mm"
      """;

  private static final String LISTED =
      """
      [head]
      thread = "2 BA"
      style = "small-hexagon"
      flats-along-degrees = 12.5
      """;

  private static final String DRESSED =
      """
      [head]
      thread = "M4"
      style = "hexagon"
      washer = "washer"
      spanner = "ring"
      """;

  private static final String MEASURED =
      """
      [head]
      title = "filed down"
      across-flats = "0.3 in"
      across-corners = "8.5 mm"
      height = "3 mm"
      washer-face = "7.1 mm"
      washer = { title = "thick \\"one\\"", diameter = "3/8", thickness = "20 thou" }
      spanner = { kind = "socket", diameter = "12 mm", height = "9 mm", lift = "0.5 mm" }
      """;

  private static final String HOLE =
      """
      [hole]
      diameter = "3/16"
      method = "jig"
      confidence = 0.9
      drilled-at = ["10.3 mm", "0.5 mm"]
      drilled = "4.1 mm"
      drilled-within = "0.05 mm"
      """;

  @ParameterizedTest
  @org.junit.jupiter.params.provider.EnumSource
  void whatIsWrittenReadsBackAsTheSame(org.fettlebench.measure.LengthUnit unit) {
    for (String head : List.of(LISTED, DRESSED, MEASURED)) {
      var first =
          Bench.FILES.readSeatFile("a", WHOLE.replace("at = \"0\"", "at = \"0 mm\"") + head + HOLE);
      String written = Bench.FILES.writeSeat(first, unit);
      assertEquals(first, Bench.FILES.readSeatFile("b", written), written);
      assertEquals(3, first.stations().size());
      assertEquals(4.1, first.hole().drilled().orElseThrow().diameterMm());
      assertTrue(written.contains(unit.symbol() + "\""), written);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "across-flats = 8, spanner = §tongs§, 9:1 is no kind of spanner",
    "across-flats = 0.1, spanner = §socket§, 9:1 is in no table for",
    "across-corners = 8, spanner = §ring§, 9:1 has no meaning for a head without flats",
    "across-flats = 8, spanner = 3, 9:1 spanner must be a text",
    "across-flats = 8, spanner = { kind = §ring§ }, has no diameter",
    "across-flats = 8, washer = §washer§, 9:1 is no washer that a table lists",
  })
  void partsThatCannotBeAreTold(String size, String part, String told) {
    String head = "[head]\n" + size + "\n\n" + part.replace('§', '"') + "\n";
    List<String> faults = faults(SEAT + head + HOLE);
    assertEquals(1, faults.size(), faults.toString());
    assertTrue(faults.get(0).contains(told), faults.toString());
  }

  @Test
  void aDrilledHoleNeedsItsPlaceAndSize() {
    assertEquals(
        List.of("12:1 [hole] has no drilled-at"),
        faults(SEAT + LISTED + "[hole]\ndiameter = 4.8\nmethod = \"jig\"\ndrilled = 3\n").stream()
            .map(fault -> fault.replaceAll("^\\d+:", "12:"))
            .toList());
  }
}
