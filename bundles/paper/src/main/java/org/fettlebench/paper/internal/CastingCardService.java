package org.fettlebench.paper.internal;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.fettlebench.castings.CastingDrawings;
import org.fettlebench.castings.Placing;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.paper.CastingCards;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Writes cards about castings as PDF. */
@Component
public final class CastingCardService implements CastingCards {
  private final CastingDrawings drawings;

  /** Takes what draws castings. */
  @Activate
  public CastingCardService(@Reference CastingDrawings drawings) {
    this.drawings = drawings;
  }

  /** What fills a page. */
  private interface Page {
    void on(PdfSheet sheet) throws IOException;
  }

  @Override
  public void card(Placing placing, boolean holdsPressure, LengthUnit first, OutputStream pdf)
      throws IOException {
    page(
        placing.casting().name() + ", marking out",
        sheet ->
            new CastingCard(placing, first, sheet, new CastingPlates(placing, first, drawings))
                .write(holdsPressure),
        pdf);
  }

  @Override
  public void views(Placing placing, LengthUnit first, OutputStream pdf) throws IOException {
    page(
        placing.casting().name() + ", views",
        sheet ->
            new CastingCard(placing, first, sheet, new CastingPlates(placing, first, drawings))
                .writeViews(),
        pdf);
  }

  private static void page(String title, Page page, OutputStream pdf) throws IOException {
    try (PDDocument document = new PDDocument()) {
      BenchCardService.title(document, title);
      try (PdfSheet sheet = new PdfSheet(document, new Lettering(document))) {
        page.on(sheet);
      }
      BenchCardService.save(document, pdf);
    } catch (UncheckedIOException failure) {
      throw failure.getCause();
    }
  }
}
