package org.fettlebench.paper.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.paper.WallChart;
import org.fettlebench.paper.WallPaper;
import org.fettlebench.testkit.trade.RealTrade;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.DrillSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wall charts as a person reads them: the words on the sheets, and how they are parted. */
class WallChartServiceTest {
  private static final WallChartService CHARTS =
      new WallChartService(RealTrade.THREADS, RealTrade.DRILLS, RealTrade.HOLES, RealTrade.HEADS);

  private static WallChart chart(List<String> series, WallPaper paper, String... held) {
    List<DrillSize> drills = new ArrayList<>();
    for (String name : held) {
      drills.add(RealTrade.DRILLS.find(name).orElseThrow());
    }
    return new WallChart(series, "mild steel", drills, "a club", paper, LengthUnit.MILLIMETRE);
  }

  private static PDDocument drawn(WallChart chart) throws IOException {
    ByteArrayOutputStream pdf = new ByteArrayOutputStream();
    int sheets = CHARTS.write(chart, pdf);
    PDDocument document = Loader.loadPDF(pdf.toByteArray());
    assertEquals(sheets, document.getNumberOfPages());
    return document;
  }

  private static String words(WallChart chart) throws IOException {
    try (PDDocument document = drawn(chart)) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(true);
      return stripper.getText(document);
    }
  }

  @Test
  void lineOfAThreadHasItsSizesDrillsAndHexagon() throws IOException {
    String words = words(chart(List.of("BA"), WallPaper.A4, "5/32", "4.1 mm", "No 12"));

    // BS 93: 4.70 mm, pitch 0.81; the drill held for 2 BA is 5/32 in (common practice, no source).
    String line = words.lines().filter(text -> text.startsWith("2 BA")).findFirst().orElseThrow();
    assertTrue(line.startsWith("2 BA 4.70 0.1850 0.810 31.4 3.73 5/32 in 75"), line);
    assertTrue(line.contains("No 12"), line);
    assertTrue(line.endsWith("8.23 0.324"), line);
  }

  @Test
  void drillOutsideTheLimitsIsMarkedAndWithoutOneThereIsADash() throws IOException {
    String words = words(chart(List.of("M"), WallPaper.A4, "5.2 mm"));

    assertTrue(line(words, "M6 ").contains("5.2 mm * 62"), line(words, "M6 "));
    assertTrue(line(words, "M10 ").contains("8.38 – –"), line(words, "M10 "));
    assertTrue(words.contains("* too large, too small or too much thread"), words);
  }

  private static String line(String words, String start) {
    return words.lines().filter(text -> text.startsWith(start)).findFirst().orElseThrow();
  }

  @Test
  void everySheetSaysWhereItsFiguresAreFromAndToTakeCare() throws IOException {
    try (PDDocument document = drawn(chart(List.of("BA", "ME"), WallPaper.A4, "5/32"))) {
      assertTrue(document.getNumberOfPages() > 1);
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        String words = stripper.getText(document);
        assertTrue(words.contains("Clamp the work"), words);
        assertTrue(words.contains("(published)"), words);
        assertTrue(words.contains("sheet " + page + " of"), words);
        assertTrue(words.contains("held of a club (1 sizes)") || words.contains("a club"), words);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"BA, A4, 297, 210", "BA, A3, 420, 297", "M, A3, 297, 420", "BSF, A3, 420, 297"})
  void sheetLiesOrStandsAsTheTableNeeds(
      String series, WallPaper paper, double widthMm, double heightMm) throws IOException {
    try (PDDocument document = drawn(chart(List.of(series), paper))) {
      var box = document.getPage(0).getMediaBox();
      assertEquals(widthMm, box.getWidth() * 25.4 / 72, 0.1);
      assertEquals(heightMm, box.getHeight() * 25.4 / 72, 0.1);
    }
  }

  @ParameterizedTest
  @CsvSource({"A4", "A3"})
  void everyThreadStandsOnceAndNothingRunsIntoTheFoot(WallPaper paper) throws IOException {
    List<String> series = List.of("BA", "ME", "BSF");
    String words = words(chart(series, paper));

    for (String id : series) {
      for (ScrewThread thread :
          RealTrade.THREADS.series().stream()
              .filter(each -> each.id().equals(id))
              .findFirst()
              .orElseThrow()
              .threads()) {
        long lines =
            words.lines().filter(text -> text.startsWith(thread.designation() + " ")).count();
        assertEquals(1, lines, thread.designation());
      }
    }
  }

  @Test
  void sheetsAreNeverOverfullAndGoOnUnderTheirHead() throws IOException {
    try (PDDocument document = new PDDocument()) {
      ChartSheetSize size = ChartSheetSize.of(WallPaper.A4, 100);
      ChartPages pages = new ChartPages(size, new Lettering(document), List.of("general"));
      List<ChartSection> sections =
          List.of(section("one", 45), section("two", 3), section("x", 40));

      List<ChartPages.Sheet> sheets = pages.part(sections);

      int rows = 0;
      for (ChartPages.Sheet sheet : sheets) {
        assertTrue(sheet.lines().get(0).isHead());
        double used =
            sheet.lines().stream()
                .mapToDouble(line -> line.isHead() ? ChartPages.bandRows() : 1)
                .sum();
        assertTrue(used * size.rowMm() < size.bodyMm(), used + " rows");
        assertTrue(
            !sheet.lines().get(sheet.lines().size() - 1).isHead(), "a head alone at the foot");
        rows += (int) sheet.lines().stream().filter(line -> !line.isHead()).count();
      }
      assertEquals(88, rows);
      assertTrue(sheets.get(1).lines().get(0).goesOn());
      assertTrue(sheets.size() > 2 && sheets.size() < 6, sheets.size() + " sheets");
    }
  }

  private static ChartSection section(String title, int rows) {
    List<ChartRow> all = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      all.add(new ChartRow(List.of(ChartRow.Cell.plain(title + i))));
    }
    return new ChartSection(title, all, List.of(title + " sizes: a source (published)"));
  }

  @Test
  void anUnknownSeriesIsRefusedWithThoseThereAre() {
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                CHARTS.write(
                    chart(List.of("BA", "BSX"), WallPaper.A4), new ByteArrayOutputStream()));

    assertTrue(refused.getMessage().contains("\"BSX\"; there are BA"), refused.getMessage());
    assertThrows(IllegalArgumentException.class, () -> chart(List.of(), WallPaper.A4));
  }

  @Test
  void inchesComeFirstWhenAsked() throws IOException {
    WallChart inches =
        new WallChart(List.of("BSF"), "", List.of(), "", WallPaper.A4, LengthUnit.INCH);

    assertTrue(line(words(inches), "1/4 BSF").startsWith("1/4 BSF 0.2500 6.35"));
  }
}
