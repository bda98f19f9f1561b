package org.fettlebench.desktop.seats.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.club.HoleError;
import org.fettlebench.club.MeasuredError;
import org.fettlebench.club.MeasuredErrors;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.Verdict;
import org.fettlebench.holes.internal.chance.EstimateService;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.kits.internal.ClubMethodsService;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.fettlebench.testkit.trade.RealTrade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SeatBookTest {
  private final SeatBook book = RealPage.book();

  /** A boss 3/8 in square: a trade check, common practice, no source. */
  private static Sketch boss(String style) {
    Sketch sketch = Sketches.byCorners(Sketches.square(9.525));
    return sketch.with(sketch.top().listed("2 BA", style));
  }

  @Test
  void aStandardHeadOnABossOfThreeEighthsHasNextToNoRoomTheSmallerOneTwentyFiveThou() {
    SeatAnswer standard = book.ask(boss("hexagon")).answer().orElseThrow();
    assertEquals(Verdict.TIGHT, standard.verdict());
    double thou = standard.allowanceAtIntendedMm() / 0.0254;
    assertTrue(thou > 0 && thou < 1, thou + " thou");
    SeatAnswer small = book.ask(boss("small-hexagon")).answer().orElseThrow();
    assertEquals(25, small.allowanceAtIntendedMm() / 0.0254, 0.5);
  }

  @Test
  void theNextThingToDoIsSaid() {
    assertTrue(book.ask(Sketch.EMPTY).next().startsWith("Two stations"));
    Sketch flat = Sketches.byCorners(Sketches.square(12));
    assertTrue(book.ask(flat).next().startsWith("Choose the thread"));
    Sketch measured =
        flat.with(
            flat.top()
                .asMeasured(
                    new Sketch.Measured(
                        "head as measured",
                        OptionalDouble.of(8),
                        OptionalDouble.empty(),
                        OptionalDouble.empty())));
    assertTrue(book.ask(measured).next().startsWith("Give the diameter"));
    Sketch whole = measured.with(measured.hole().sized(OptionalDouble.of(4.8)));
    assertEquals(
        8 / Math.cos(Math.PI / 6),
        book.ask(whole).answer().orElseThrow().question().head().sweepDiameterMm(),
        1e-9);
  }

  @Test
  void anOutlineThatCrossesItselfIsRefusedInWords() {
    Sketch crossed =
        Sketches.byCorners(
            List.of(new Point(0, 0), new Point(12, 12), new Point(12, 0), new Point(0, 12)));
    Reply reply = book.ask(crossed.with(crossed.top().listed("2 BA", "hexagon")));
    assertTrue(reply.wrong());
    assertTrue(reply.next().contains("corner"), reply.next());
  }

  @Test
  void theHoleIsProposedFromDrillsThatAreHeld() {
    // Clearance 2 BA: 0.1890 in listed, so 4.8 mm is too small by a hair and 4.9 mm is next held.
    var choice = book.proposed(boss("hexagon")).orElseThrow();
    assertTrue(book.drillsHeld().contains(choice.drill()));
    assertTrue(choice.drill().diameter().compareTo(choice.listed()) >= 0);
    assertEquals(
        choice.drill().diameter().millimetres(),
        book.ask(boss("hexagon")).answer().orElseThrow().question().holeDiameterMm());
  }

  @Test
  void heldHeadsComeFirst() {
    List<HeldHeads.Held> heads = book.heads().of(book.thread("2 BA").orElseThrow());
    assertEquals(12, heads.get(0).held());
    assertEquals(12, heads.get(1).held());
    assertTrue(heads.stream().skip(2).allMatch(each -> each.held() == 0));
    assertTrue(heads.get(0).words().endsWith("12 held"), heads.get(0).words());
    assertEquals("2 BA", book.threadNames().get(0));
  }

  @Test
  void everyCureDoneComesToTheAnswerThatWasPromised() {
    Sketch sketch = boss("hexagon");
    sketch = sketch.with(sketch.hole().at(new Point(4.2, 4.9)));
    SeatAnswer answer = book.ask(sketch).answer().orElseThrow();
    List<SeatCure> cures = book.cures(sketch, answer);
    assertTrue(cures.size() >= 3, cures.toString());
    for (SeatCure cure : cures) {
      Sketch cured = new Cured(book).change(cure).deed().apply(sketch);
      SeatAnswer then = book.ask(cured).answer().orElseThrow();
      assertEquals(cure.after().verdict(), then.verdict(), cure.sentence());
      assertEquals(
          cure.after().allowanceAtIntendedMm(),
          then.allowanceAtIntendedMm(),
          1e-9,
          cure.sentence());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"MILLIMETRE", "INCH"})
  void aSketchSavedAndOpenedAsksTheSame(String unit) {
    Sketch sketch = Sketches.full();
    SeatAnswer answer = book.ask(sketch).answer().orElseThrow();
    SeatFile file = SeatText.file(sketch, answer, "jig");
    String text = RealTrade.KIT_FILES.writeSeat(file, LengthUnit.valueOf(unit));
    Sketch opened = SeatText.sketch(RealTrade.KIT_FILES.readSeatFile("a", text));
    assertEquals(answer.question(), book.ask(opened).answer().orElseThrow().question());
    assertEquals(sketch.hole().found(), opened.hole().found());
  }

  @Test
  void anyWorkInHandIsKeptAsADraft() {
    Sketch half =
        Sketches.byStations(
            Row.ofMillimetres(0, 4.1, 5), Row.BLANK.with(0, Row.ofMillimetres(7, 0, 0).at()));
    for (Sketch each : List.of(Sketch.EMPTY, Sketches.full(), half)) {
      assertEquals(each, Draft.read(Draft.write(each)));
    }
    assertEquals(Sketch.EMPTY, Draft.read("from\tanother\tworld\nwall\tx\n"));
    Sketch named = Sketches.full().withName("tab\there");
    assertEquals("tab here", Draft.read(Draft.write(named)).name());
  }

  @Test
  void roomForASpannerIsAskedAndKept() {
    Sketch sketch = boss("hexagon");
    var ring = book.spanner(org.fettlebench.fits.Spanner.Kind.RING, sketch).orElseThrow();
    Sketch asked = sketch.with(sketch.top().turnedBy(Optional.of(ring)));
    SeatAnswer answer = book.ask(asked).answer().orElseThrow();
    assertEquals(Optional.of(ring), answer.question().head().spanner());
    assertEquals(asked, Draft.read(Draft.write(asked)));
    String text =
        RealTrade.KIT_FILES.writeSeat(SeatText.file(asked, answer, "jig"), LengthUnit.MILLIMETRE);
    Sketch opened = SeatText.sketch(RealTrade.KIT_FILES.readSeatFile("a", text));
    assertEquals(
        answer.question().head(), book.ask(opened).answer().orElseThrow().question().head());
  }

  @Test
  void theExampleOpens() {
    Sketch example =
        SeatText.sketch(RealTrade.KIT_FILES.readSeatFile(Example.NAME, Example.text()));
    assertEquals(Verdict.FOULS, book.ask(example).answer().orElseThrow().verdict());
    assertTrue(example.name().contains("invented"));
    assertEquals(Optional.empty(), example.hole().found());
  }

  @Test
  void arcsOfAFileAreKeptWhenItIsSavedAndInTheDraft() {
    String file =
        """
        [seat]
        name = "round boss"
        unit = "mm"
        outline = { centre = [9, 9], diameter = 18 }
        underside = [{ at = [-1, -1], rounded = 3 }, [19, -1], [19, 19], [-1, 19]]
        centre = [11, 9]
        [head]
        across-flats = 8
        [hole]
        diameter = 3
        method = "jig"
        """;
    Sketch opened = SeatText.sketch(RealTrade.KIT_FILES.readSeatFile("a", file));
    SeatAnswer answer = book.ask(opened).answer().orElseThrow();
    // A circle: its radius less the head's and how far the centre is out.
    assertEquals(9 - 2 - 4 / Math.cos(Math.PI / 6), answer.allowanceAtIntendedMm(), 1e-9);
    String saved =
        RealTrade.KIT_FILES.writeSeat(SeatText.file(opened, answer, "jig"), LengthUnit.MILLIMETRE);
    Sketch again = SeatText.sketch(RealTrade.KIT_FILES.readSeatFile("a", saved));
    assertEquals(SeatBook.seat(opened), SeatBook.seat(again));
    assertTrue(SeatBook.seat(again).outline().bent());
    assertTrue(SeatBook.seat(again).underside().orElseThrow().bent());
    assertEquals(opened, Draft.read(Draft.write(opened)));
    List<Handle> handles = Handles.of(opened).stream().map(Handles.Placed::handle).toList();
    assertEquals(
        2,
        handles.stream().filter(each -> each.kind() == Handle.Kind.CORNER).count(),
        "a circle has the two ends of its arcs to drag, and none of their chords");
    assertEquals(2, handles.stream().filter(each -> each.kind() == Handle.Kind.ARC).count());
  }

  @Test
  void whatTheClubMeasuredTakesTheTablesPlace() {
    Sketch sketch = Sketches.full().with(Sketches.full().hole().by("jig").asking(0.95));
    HoleMethod jig = book.method(sketch).orElseThrow();
    ClubMethodsService club = new ClubMethodsService(RealTrade.METHODS, new EstimateService());
    List<MeasuredError> errors = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      double mm = i % 2 == 0 ? 0.5 : -0.5;
      HoleError out =
          new HoleError(
              "jig",
              Length.ofMillimetres(mm),
              Length.ofMillimetres(-mm),
              LocalDate.EPOCH,
              "",
              "",
              "");
      errors.add(new MeasuredError(i + 1, out, Instant.EPOCH, Optional.empty()));
    }
    MeasuredErrors kept = mock(MeasuredErrors.class);
    when(kept.all()).thenReturn(errors);
    book.measured(new ClubWays(Optional.of(club), Optional.of(kept)).now());
    HoleMethod measured = book.method(sketch).orElseThrow();
    // Forty holes 0.5 mm out on each axis count for four fifths against ten of the table's.
    assertTrue(measured.errorRadiusMm(0.95) > 3 * jig.errorRadiusMm(0.95));
    assertEquals(
        measured.errorRadiusMm(0.95),
        book.ask(sketch).answer().orElseThrow().question().expectedErrorMm(),
        1e-12);
    assertTrue(measured.standing().startsWith("measured by "), measured.standing());
    assertEquals(List.of(), new ClubWays(Optional.empty(), Optional.of(kept)).now());
  }
}
