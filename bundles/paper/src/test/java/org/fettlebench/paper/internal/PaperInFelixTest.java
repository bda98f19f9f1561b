package org.fettlebench.paper.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.SeatDrawings;
import org.fettlebench.kits.Kit;
import org.fettlebench.kits.KitReport;
import org.fettlebench.kits.KitReports;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.paper.BenchCards;
import org.fettlebench.testkit.FelixHarness;
import org.junit.jupiter.api.Test;

/** The bundle in a real framework: everything the PDF library needs is in it. */
class PaperInFelixTest {
  @Test
  void writesAReportWithItsOwnLetteringAndExportsNothing() throws IOException {
    KitReports words = mock(KitReports.class);
    when(words.inUnit(any(), any())).thenAnswer(call -> call.getArgument(0));
    when(words.summary(any())).thenReturn("Nothing is missing.");
    try (FelixHarness felix =
        FelixHarness.sharing(
                "org.fettlebench.measure",
                "org.fettlebench.drawing",
                "org.fettlebench.tables.api",
                "org.fettlebench.threads.api",
                "org.fettlebench.tooling.api",
                "org.fettlebench.fasteners.api",
                "org.fettlebench.fits.api",
                "org.fettlebench.holes.api",
                "org.fettlebench.castings.api",
                "org.fettlebench.club.api",
                "org.fettlebench.kits.api",
                "org.fettlebench.paper.api")
            .start()) {
      felix.context().registerService(SeatDrawings.class, mock(SeatDrawings.class), null);
      felix.context().registerService(KitReports.class, words, null);
      felix.start("org.fettlebench.paper");
      BenchCards cards = felix.await(BenchCards.class);
      assertNotSame(BenchCardService.class, cards.getClass(), "the bundle's own class is wanted");
      ByteArrayOutputStream pdf = new ByteArrayOutputStream();
      cards.kitReport(report(), LengthUnit.MILLIMETRE, pdf);
      String head = new String(pdf.toByteArray(), 0, 5, StandardCharsets.US_ASCII);
      assertEquals("%PDF-", head);
      assertTrue(pdf.size() > 2000, "bytes: " + pdf.size());
      var headers = felix.bundle("org.fettlebench.paper").orElseThrow().getHeaders();
      assertEquals(null, headers.get("Export-Package"));
    }
  }

  private static KitReport report() {
    return new KitReport(
        new Kit("Bench pump", Optional.empty(), 0.95, List.of(), List.of()), List.of(), List.of());
  }
}
