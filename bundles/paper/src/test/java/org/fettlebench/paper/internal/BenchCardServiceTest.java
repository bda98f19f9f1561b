package org.fettlebench.paper.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.internal.SeatChecker;
import org.fettlebench.fits.internal.SeatPainter;
import org.fettlebench.kits.Fastener;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Joint;
import org.fettlebench.kits.JointReport;
import org.fettlebench.kits.Kit;
import org.fettlebench.kits.KitReport;
import org.fettlebench.kits.internal.KitReportsService;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;

class BenchCardServiceTest {
  private final BenchCardService cards =
      new BenchCardService(new SeatPainter(), new KitReportsService());

  private interface Writing {
    void to(OutputStream pdf) throws IOException;
  }

  /** A page's words and how far to the right and down they reach, points. */
  private record Read(int pages, String text, float right, float bottom, float width) {}

  private static Read read(Writing writing) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    writing.to(bytes);
    List<TextPosition> letters = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(bytes.toByteArray())) {
      PDFTextStripper stripper =
          new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> positions)
                throws IOException {
              letters.addAll(positions);
              super.writeString(text, positions);
            }
          };
      stripper.setSortByPosition(true);
      String text = stripper.getText(document);
      return new Read(
          document.getNumberOfPages(),
          text.replaceAll("\\s+", " "),
          (float) letters.stream().mapToDouble(p -> p.getEndX()).max().orElse(0),
          (float) letters.stream().mapToDouble(p -> p.getYDirAdj()).max().orElse(0),
          document.getPage(0).getMediaBox().getWidth());
    }
  }

  private static SeatAnswer seat() {
    // A boss 9.525 mm square under a head that sweeps 9.5 mm: 4.7625 - 4.75 leaves 0.0125 mm.
    Seat seat =
        Seat.flat(
            "boss",
            Outline.of(
                List.of(
                    new Point(0, 0),
                    new Point(9.525, 0),
                    new Point(9.525, 9.525),
                    new Point(0, 9.525))),
            new Point(4.7625, 4.7625));
    SeatedHead head =
        new SeatedHead(
            "2 BA hexagon",
            9.5,
            OptionalDouble.of(8.23),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            "");
    return new SeatChecker().check(new SeatQuestion(seat, head, 4.8, 0.3, "by eye"));
  }

  private static JointReport joint(String name, boolean seated, boolean pressure, int findings) {
    Joint joint =
        new Joint(
            name,
            "barrel",
            6,
            new Fastener("2 BA", "hexagon", Optional.of(Length.ofInchFraction(3, 4)), "steel"),
            Optional.empty(),
            Optional.of(
                new Joint.TappedHole(
                    "cast iron",
                    Length.ofMillimetres(12),
                    Optional.empty(),
                    org.fettlebench.tooling.TapLead.SECOND,
                    Optional.empty(),
                    Optional.empty())),
            Optional.empty(),
            Optional.empty(),
            pressure,
            "",
            0);
    List<Finding> all = new ArrayList<>();
    all.add(Finding.of(Finding.Weight.NOTE, "blind hole", "Drill 15.13 mm deep to the shoulder."));
    for (int i = 1; i <= findings; i++) {
      all.add(
          Finding.of(
                  Finding.Weight.CAUTION,
                  "rule",
                  "Finding number " + i + " about \u0141\u00F3d\u017A.")
              .standing("from memory"));
    }
    Optional<SeatAnswer> answer = seated ? Optional.of(seat()) : Optional.empty();
    return new JointReport(
        joint,
        answer.map(SeatAnswer::verdict),
        JointReport.Supply.COMPLETE,
        answer,
        all,
        List.of(),
        List.of(),
        List.of(
            new JointReport.Fetch(
                JointReport.Fetch.Role.TAP,
                "2 BA second tap",
                JointReport.Fetch.State.OUT,
                "Member 12 until 9 December",
                "")));
  }

  private static KitReport report(JointReport... joints) {
    Kit kit =
        new Kit(
            "Bench pump",
            Optional.of(6),
            0.95,
            List.of(joints).stream().map(JointReport::joint).toList(),
            List.of());
    return new KitReport(
        kit,
        List.of(joints),
        List.of(
            new KitReport.Shortage(
                "6.6 mm drill",
                JointReport.Fetch.Role.CLEARANCE_DRILL,
                1,
                0,
                "not held, to buy or borrow",
                List.of("motor plate"))),
        List.of(
            Finding.of(Finding.Weight.CAUTION, "drilling", "Drilling: clamp the work."),
            Finding.of(Finding.Weight.CAUTION, "pressure", "Joints here hold pressure.")));
  }

  @Test
  void aCardIsOnePageWithWhatTheBenchNeeds() throws IOException {
    JointReport joint = joint("flange", true, true, 3);
    Read card = read(pdf -> cards.jointCard(report(joint), joint, LengthUnit.MILLIMETRE, pdf));
    assertEquals(1, card.pages());
    assertEquals(595.28, card.width(), 0.05);
    for (String words :
        List.of(
            "Bench pump",
            "flange",
            "6 off 2 BA hexagon x 3/4 in, steel; barrel",
            "tight",
            "The hole may be out 0.013 mm (0.5 thou)",
            "Scale 5:1",
            "50 mm when printed at full size",
            "Drill 15.13 mm deep to the shoulder.",
            "Finding number 3 about \u0141\u00F3d\u017A.",
            "from memory",
            "2 BA second tap",
            "tap: out on loan, Member 12 until 9 December",
            "Hole found at x",
            "Caution. Drilling: clamp the work.",
            "Caution. Joints here hold pressure.")) {
      assertTrue(card.text().contains(words), words + " in " + card.text());
    }
  }

  @Test
  void aCardShowsTheChosenUnitFirst() throws IOException {
    JointReport joint = joint("flange", true, false, 1);
    Read card = read(pdf -> cards.jointCard(report(joint), joint, LengthUnit.INCH, pdf));
    assertTrue(card.text().contains("may be out 0.5 thou (0.013 mm)"), card.text());
    assertTrue(card.text().contains("2 in when printed at full size"), card.text());
    assertFalse(card.text().contains("hold pressure"), card.text());
  }

  @Test
  void aCardStaysOnePageAndNamesWhatItLeavesOut() throws IOException {
    JointReport joint = joint("flange", true, true, 60);
    Read card = read(pdf -> cards.jointCard(report(joint), joint, LengthUnit.MILLIMETRE, pdf));
    assertEquals(1, card.pages());
    assertTrue(card.text().matches(".*\\d+ more findings in the kit's report\\..*"), card.text());
    assertTrue(card.right() < 210 / 25.4 * 72 - 20, "reaches to " + card.right());
    assertTrue(card.bottom() < 297 / 25.4 * 72 - 15, "reaches down to " + card.bottom());
  }

  @Test
  void aCardWithoutASeatSaysSo() throws IOException {
    JointReport joint = joint("drain", false, false, 1);
    Read card = read(pdf -> cards.jointCard(report(joint), joint, LengthUnit.MILLIMETRE, pdf));
    assertTrue(card.text().contains("seat not measured"), card.text());
    assertFalse(card.text().contains("Scale"), card.text());
  }

  @Test
  void refusesAJointOfAnotherReport() {
    JointReport other = joint("other", false, false, 0);
    KitReport report = report(joint("flange", false, false, 0));
    OutputStream nowhere = OutputStream.nullOutputStream();
    assertThrows(
        IllegalArgumentException.class,
        () -> cards.jointCard(report, other, LengthUnit.INCH, nowhere));
  }

  @Test
  void aReportHoldsEveryJointAndNumbersItsPages() throws IOException {
    KitReport report = report(joint("first", true, true, 40), joint("second", false, false, 40));
    Read pages = read(pdf -> cards.kitReport(report, LengthUnit.MILLIMETRE, pdf));
    assertTrue(pages.pages() > 1, "pages: " + pages.pages());
    for (int i = 1; i <= pages.pages(); i++) {
      String foot = "Bench pump, page " + i + " of " + pages.pages();
      assertTrue(pages.text().contains(foot), foot);
    }
    assertTrue(pages.text().contains("6.6 mm drill; not held, to buy or borrow"));
    assertTrue(pages.text().contains("Finding number 40"));
    assertTrue(pages.text().contains("second"));
  }

  @Test
  void leavesTheStreamOpen() throws IOException {
    JointReport joint = joint("drain", false, false, 1);
    OutputStream open =
        new ByteArrayOutputStream() {
          @Override
          public void close() {
            throw new AssertionError("closed");
          }
        };
    cards.jointCard(report(joint), joint, LengthUnit.MILLIMETRE, open);
  }
}
