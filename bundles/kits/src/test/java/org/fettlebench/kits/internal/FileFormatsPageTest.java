package org.fettlebench.kits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.club.Goods;
import org.fettlebench.club.Receipt;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.kits.CastingFile;
import org.fettlebench.kits.Kit;
import org.fettlebench.kits.PatternFile;
import org.fettlebench.measure.Length;
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
    assertEquals(2, kit.joints().size());
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
  }

  @Test
  void thePatternExampleIsReadWhole() {
    PatternFile file = Bench.FILES.readPattern("example", examples().get(2));
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

  @Test
  void theCastingExampleIsReadWhole() {
    CastingFile file = Bench.FILES.readCasting("example", examples().get(3));
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
    List<Receipt> receipts = Bench.STOCK.readStock("example", examples().get(4));
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
    assertEquals(5, examples().size());
  }
}
