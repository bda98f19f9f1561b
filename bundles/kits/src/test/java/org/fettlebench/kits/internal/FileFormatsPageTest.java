package org.fettlebench.kits.internal;

import static org.fettlebench.measure.LengthUnit.MILLIMETRE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.club.Goods;
import org.fettlebench.club.Receipt;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.Spanner;
import org.fettlebench.kits.CastingFile;
import org.fettlebench.kits.Kit;
import org.fettlebench.kits.PatternFile;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.fettlebench.tooling.ClearanceFit;
import org.fettlebench.tooling.TapLead;
import org.junit.jupiter.api.Test;

/** The examples on the page on file formats are read as they stand. */
class FileFormatsPageTest {
  private static final Pattern EXAMPLE = Pattern.compile("```(toml|csv)\n(.*?)```", Pattern.DOTALL);

  private static List<String> examples() {
    try {
      String page = Files.readString(Path.of("../../docs/file-formats.md"));
      return EXAMPLE.matcher(page).results().map(example -> example.group(2)).toList();
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
  }

  @Test
  void theKitExampleIsReadWhole() {
    Kit kit = Bench.FILES.readKit("example", examples().get(0));
    assertEquals("Bench pump", kit.name());
    assertEquals(Optional.of(6), kit.scale());
    assertEquals(3, kit.joints().size());
    assertEquals(List.of(3), kit.bag().stream().map(Kit.BagLine::there).toList());
    var cover = kit.joints().get(0);
    assertEquals("4 BA hexagon x 1/2 in, steel", cover.fastener().title());
    assertEquals(ClearanceFit.CLOSE, cover.clearance().orElseThrow().fit());
    assertEquals(TapLead.BOTTOMING, cover.tapped().orElseThrow().lead());
    assertTrue(cover.holdsPressure());
    var land = cover.seat().orElseThrow();
    assertEquals(new Point(0, -4.6), land.outline().points().get(0));
    assertEquals(6, land.outline().points().size());
    assertEquals("barrel", land.walls().get(0).name());
    var gland = kit.joints().get(1);
    assertEquals("5 BA hexagon x 3/8 in, brass", gland.fastener().title());
    assertEquals(Optional.of(65.0), gland.tapped().orElseThrow().percent());
    assertEquals(4.0, gland.seat().orElseThrow().neighbours().get(0).radiusMm());
    var drain = kit.joints().get(2);
    // A rounded corner is an arc, and so is the end through (18, 5); the hollow is a circle.
    assertEquals(2, arcs(drain.seat().orElseThrow().outline()));
    assertEquals(6.2, drain.dress().washer().orElseThrow().diameterMm());
    // ISO 4032: a nut M3 is 5.5 mm across flats; an open head by the rule 2.1 s + 7 mm.
    assertEquals(2.1 * 5.5 + 7, drain.dress().spanner().orElseThrow().headDiameterMm(), 1e-9);
  }

  @Test
  void thePatternExampleIsReadWhole() {
    PatternFile file = Bench.FILES.readPattern("example", examples().get(3));
    assertEquals("4 BA", file.fastener());
    assertEquals(6, file.question(100, 1).pattern().centres().size());
    assertTrue(file.question(100, 1).fixed());
    assertEquals(new Point(0.05, 18.04), file.upper().measured().get(1).centre());
    assertEquals(0.03, file.lower().placing().orElseThrow().sigmaPerAxisMm());
  }

  @Test
  void theSeatExampleIsReadWhole() {
    SeatQuestion question = Bench.FILES.readSeat("example", examples().get(1));
    assertEquals("gland boss", question.seat().name());
    assertEquals("2 BA hexagon", question.head().title());
    assertEquals(4.7625, question.holeDiameterMm());
    // 0.20 mm per axis by eye; Rayleigh's 95 % radius is sqrt(-2 ln 0.05) = 2.4477 of it.
    assertEquals(0.4895, question.expectedErrorMm(), 0.00005);
  }

  private static long arcs(Outline outline) {
    return outline.edges().stream().filter(edge -> edge.arc().isPresent()).count();
  }

  @Test
  void theWholeSeatExampleIsReadWholeAndWrittenAgain() {
    SeatFile file = Bench.FILES.readSeatFile("example", examples().get(2));
    Seat seat = file.question().seat();
    assertEquals(3, arcs(seat.outline()));
    assertEquals(List.of(1.5), seat.walls().stream().map(Seat.Wall::filletRadiusMm).toList());
    var head = file.question().head();
    assertEquals(8.4, head.washer().orElseThrow().diameterMm());
    assertEquals(Spanner.Kind.RING, head.spanner().orElseThrow().kind());
    assertEquals(OptionalDouble.of(6.8), head.bearingDiameterMm());
    // The mid of an arc of a radius is worked out, so the first writing rounds it to the nanometre.
    SeatFile rounded = Bench.FILES.readSeatFile("a", Bench.FILES.writeSeat(file, MILLIMETRE));
    for (LengthUnit unit : LengthUnit.values()) {
      String written = Bench.FILES.writeSeat(rounded, unit);
      assertEquals(rounded, Bench.FILES.readSeatFile("written", written), written);
    }
  }

  @Test
  void theExampleOfMeasuredErrorsIsReadWhole() {
    var errors = new ErrorFilesService(Bench.TRADE.methods()).read("example", examples().get(6));
    assertEquals(3, errors.size());
    // A thou is 0.0254 mm.
    assertEquals(-0.1016, errors.get(1).x().millimetres(), 1e-9);
    assertEquals("jig", errors.get(2).method());
  }

  @Test
  void theCastingExampleIsReadWhole() {
    CastingFile file = Bench.FILES.readCasting("example", examples().get(4));
    assertEquals("bearing bracket", file.casting().name());
    assertEquals(7, file.casting().features().size());
    assertEquals(1.0, file.casting().features().get(0).leastCutMm());
    assertEquals(Set.of(Axis.Y), file.casting().freedom().turns());
    RoundFace bearing = (RoundFace) file.casting().features().get(6);
    assertEquals(new Spot(30, 0, 22), bearing.finishedCentre());
    assertEquals(13.0, bearing.rough().get(1).diameterMm());
  }

  @Test
  void theStockExampleIsReadWhole() {
    List<Receipt> receipts = Bench.STOCK.readStock("example", examples().get(5));
    assertEquals(7, receipts.size());
    assertEquals("2 BA hexagon screw x 1/2 in, steel", receipts.get(0).goods().name());
    assertEquals(Optional.of(10), receipts.get(0).lowMark());
    assertEquals(Goods.Kind.DRILL, receipts.get(4).goods().kind());
    // No 22 is 0.1570 in.
    assertEquals(Optional.of(Length.ofNanometres(3_987_800)), receipts.get(4).goods().diameter());
    assertEquals("Cutting oil", receipts.get(6).goods().name());
  }

  @Test
  void allExamplesAreHere() {
    Matcher none = EXAMPLE.matcher("");
    assertTrue(!none.find());
    assertEquals(7, examples().size());
  }
}
