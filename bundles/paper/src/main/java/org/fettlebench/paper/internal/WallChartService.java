package org.fettlebench.paper.internal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.paper.WallChart;
import org.fettlebench.paper.WallCharts;
import org.fettlebench.threads.ThreadSeries;
import org.fettlebench.threads.Threads;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.HoleChooser;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Draws wall charts as PDF. */
@Component
public final class WallChartService implements WallCharts {
  /** Common practice, no source. */
  private static final String CAUTION =
      "Clamp the work, guard the spindle, take the chuck key out, wear eye protection. Taps break:"
          + " back off often; never a finger in the hole. Pressure parts follow the approved design"
          + " and the boiler inspector.";

  private final Threads threads;
  private final Drills drills;
  private final HoleChooser chooser;
  private final Heads heads;

  /** Takes what knows threads, drills, holes and heads. */
  @Activate
  public WallChartService(
      @Reference Threads threads,
      @Reference Drills drills,
      @Reference HoleChooser chooser,
      @Reference Heads heads) {
    this.threads = threads;
    this.drills = drills;
    this.chooser = chooser;
    this.heads = heads;
  }

  @Override
  public int write(WallChart chart, OutputStream pdf) throws IOException {
    List<ThreadSeries> series = new ArrayList<>();
    for (String id : chart.series()) {
      series.add(series(id));
    }
    ChartFigures figures = new ChartFigures(chart, chooser, heads, drills.catalogue());
    List<ChartSection> sections = series.stream().map(figures::section).toList();
    double rows =
        sections.stream()
            .mapToDouble(section -> section.rows().size() + ChartPages.bandRows())
            .sum();
    try (PDDocument document = new PDDocument()) {
      ChartTitle title = title(chart, figures);
      document.getDocumentInformation().setTitle(title.words());
      document.getDocumentInformation().setCreator("Fettlebench");
      ChartPages pages =
          new ChartPages(
              ChartSheetSize.of(chart.paper(), rows), new Lettering(document), general(figures));
      List<ChartPages.Sheet> sheets = pages.part(sections);
      pages.write(document, title, sheets, chart.first());
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes);
      bytes.writeTo(pdf);
      return sheets.size();
    }
  }

  private ThreadSeries series(String id) {
    return threads.series().stream()
        .filter(series -> series.id().equalsIgnoreCase(id.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "there is no thread series \"%s\"; there are %s"
                        .formatted(
                            id,
                            threads.series().stream()
                                .map(ThreadSeries::id)
                                .collect(Collectors.joining(", ")))));
  }

  private static ChartTitle title(WallChart chart, ChartFigures figures) {
    String holder = chart.holder().isBlank() ? "" : " of " + chart.holder().strip();
    String material =
        chart.material().isBlank() ? "as wall charts take it" : "for " + chart.material().strip();
    return new ChartTitle(
        "Threads and drills: " + String.join(", ", chart.series()).toUpperCase(Locale.ROOT),
        String.format(
            Locale.ROOT,
            "%.0f per cent of thread wanted, %s. Heavy: drills held%s (%d sizes). Light: made,"
                + " not held.  * too large, too small or too much thread.",
            figures.percent().percent(),
            material,
            holder,
            chart.drills().size()),
        CAUTION);
  }

  private static List<String> general(ChartFigures figures) {
    return List.of(
        "Per cent wanted: " + ChartFigures.said(figures.percent().source()),
        "Core is the nut's basic minor diameter. 100 per cent of thread is the depth of the form:"
            + " 0.6495 pitch for 60°, 0.6403 for Whitworth, 0.6 for BA.",
        "A held drill up to 3 per cent over the listed hole stands for it (common practice, no"
            + " source); light threads per inch are worked out from the pitch.");
  }
}
