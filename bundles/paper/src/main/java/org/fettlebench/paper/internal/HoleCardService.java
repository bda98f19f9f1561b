package org.fettlebench.paper.internal;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.fettlebench.holes.correct.CorrectionAnswer;
import org.fettlebench.holes.correct.Corrections;
import org.fettlebench.holes.otherface.FaceMark;
import org.fettlebench.holes.otherface.OtherFaces;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.paper.HoleCards;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Writes cards about single holes as PDF. */
@Component
public final class HoleCardService implements HoleCards {
  private final Corrections corrections;
  private final OtherFaces faces;

  /** Takes what draws corrections and faces. */
  @Activate
  public HoleCardService(@Reference Corrections corrections, @Reference OtherFaces faces) {
    this.corrections = corrections;
    this.faces = faces;
  }

  /** What fills a page. */
  private interface Page {
    void on(PdfSheet sheet) throws IOException;
  }

  @Override
  public void correctionCard(
      String name, CorrectionAnswer answer, LengthUnit first, OutputStream pdf) throws IOException {
    page(
        name + ", correction of a hole",
        sheet -> new CorrectionCard(name, answer, first, sheet).write(corrections),
        pdf);
  }

  @Override
  public void markingCard(FaceMark mark, LengthUnit first, OutputStream pdf) throws IOException {
    page(
        mark.question().name() + ", marking out",
        sheet -> new MarkingCard(mark, first, sheet).write(faces),
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
