package org.fettlebench.paper.internal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.fettlebench.fits.SeatDrawings;
import org.fettlebench.kits.JointReport;
import org.fettlebench.kits.KitReport;
import org.fettlebench.kits.KitReports;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.paper.BenchCards;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Writes cards and reports as PDF. */
@Component
public final class BenchCardService implements BenchCards {
  private final SeatDrawings drawings;
  private final KitReports reports;

  /** Takes what draws seats and what sums kits up. */
  @Activate
  public BenchCardService(@Reference SeatDrawings drawings, @Reference KitReports reports) {
    this.drawings = drawings;
    this.reports = reports;
  }

  @Override
  public void jointCard(KitReport report, JointReport joint, LengthUnit first, OutputStream pdf)
      throws IOException {
    int place = report.joints().indexOf(joint);
    if (place < 0) {
      throw new IllegalArgumentException(
          joint.joint().name() + " is no joint of this report of " + report.kit().name());
    }
    KitReport said = reports.inUnit(report, first);
    try (PDDocument document = new PDDocument()) {
      title(document, joint.joint().name() + ", " + report.kit().name());
      try (PdfSheet sheet = new PdfSheet(document, new Lettering(document))) {
        new JointCard(said, said.joints().get(place), first, sheet).write(drawings);
      }
      save(document, pdf);
    } catch (UncheckedIOException failure) {
      throw failure.getCause();
    }
  }

  @Override
  public void kitReport(KitReport report, LengthUnit first, OutputStream pdf) throws IOException {
    try (PDDocument document = new PDDocument()) {
      title(document, report.kit().name());
      new KitReportPages(reports.inUnit(report, first), first, document, new Lettering(document))
          .write(reports.summary(report));
      save(document, pdf);
    }
  }

  /** The library closes what it writes to, which is not ours to close. */
  static void save(PDDocument document, OutputStream pdf) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    document.save(bytes);
    bytes.writeTo(pdf);
  }

  static void title(PDDocument document, String words) {
    document.getDocumentInformation().setTitle(words);
    document.getDocumentInformation().setCreator("Fettlebench");
  }
}
