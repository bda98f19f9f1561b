package org.fettlebench.paper.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.internal.SeatChecker;
import org.fettlebench.fits.internal.SeatPainter;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.fettlebench.paper.SeatCards;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SeatCardServiceTest {
  private final SeatChecker seats = new SeatChecker();

  /** A boss 3/8 in wide with a hexagon of 0.324 in: half a thousandth to spare, by hand. */
  private final SeatQuestion question =
      new SeatQuestion(
          Seat.flat(
              "gland boss, left",
              Outline.of(
                  List.of(
                      new Point(0, 0),
                      new Point(9.525, 0),
                      new Point(9.525, 9.525),
                      new Point(0, 9.525))),
              new Point(4.7625, 4.7625)),
          new SeatedHead(
              "2 BA hexagon",
              0.324 * 25.4 / Math.cos(Math.PI / 6),
              OptionalDouble.of(0.324 * 25.4),
              OptionalDouble.of(3.6),
              OptionalDouble.empty(),
              "from memory"),
          4.9,
          0.2,
          "a test");

  private SeatCards.Card card(LengthUnit unit) {
    SeatAnswer answer = seats.check(question);
    var rose = seats.rose(question, SeatWords.DIRECTIONS);
    return SeatCards.Card.of(
        answer,
        new SeatPainter().draw(answer, rose, unit),
        new SeatCards.Said(
            OptionalDouble.of(0.08), rose, seats.cures(answer, List.of(), List.of(), 0.95)),
        unit);
  }

  private static String read(SeatCards.Card card, LengthUnit unit, String name) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    new SeatCardService().card(card, unit, bytes);
    Files.write(Path.of("target", name), bytes.toByteArray());
    try (PDDocument document = Loader.loadPDF(bytes.toByteArray())) {
      assertEquals(1, document.getNumberOfPages());
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  @ParameterizedTest
  @EnumSource(names = {"MILLIMETRE", "INCH"})
  void saysWhatTheAnswerSaysAndTheNameAsGiven(LengthUnit unit) throws IOException {
    SeatCards.Card card = card(unit);
    String text = read(card, unit, "seat-card-" + unit.symbol() + ".pdf");
    assertTrue(text.startsWith("Seat and hole gland boss, left 2 BA hexagon tight"), text);
    for (String line : card.lines()) {
      assertTrue(text.contains(line), line + "\n" + text);
    }
    boolean inches = unit == LengthUnit.INCH;
    assertTrue(text.contains(inches ? "The hole may be out 0.4 thou" : "(0.4 thou)."), text);
    assertTrue(text.contains(inches ? "2 in when printed" : "50 mm when printed"), text);
    assertTrue(text.contains("from memory"), text);
    assertTrue(text.contains("Spokes") || text.contains("spokes"), text);
  }

  @Test
  void whatDoesNotFitIsToldOf() throws IOException {
    List<String> many =
        IntStream.range(0, 60).mapToObj(i -> "Line " + i + " of very many.").toList();
    String text = read(card(LengthUnit.INCH).after(many), LengthUnit.INCH, "seat-card-full.pdf");
    assertTrue(text.contains("Line 0 of very many."), text);
    assertTrue(text.matches(".*\\d+ lines more; .*"), text);
  }
}
