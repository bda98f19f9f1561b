package org.fettlebench.desktop.threads.internal;

import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.FileDialog;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.paper.WallChart;
import org.fettlebench.paper.WallCharts;

/** Puts a chart of the series chosen on paper: a PDF file, opened to be printed. */
final class WallChartDeed {
  private static final String FOLDER = "paper-folder";

  private final Desk desk;
  private final Trade trade;
  private final ThreadsView hole;
  private final Consumer<Path> opener;

  WallChartDeed(Desk desk, Trade trade, ThreadsView hole) {
    this(desk, trade, hole, file -> Program.launch(file.toString()));
  }

  WallChartDeed(Desk desk, Trade trade, ThreadsView hole, Consumer<Path> opener) {
    this.desk = desk;
    this.trade = trade;
    this.hole = hole;
    this.opener = opener;
  }

  /** Asks for series, paper and file, then writes. */
  void ask() {
    if (trade.charts().get().isEmpty()) {
      desk.complain("Nothing that draws wall charts is installed; see the page Modules.");
      return;
    }
    new WallChartDialog(desk, trade.book().threads().series(), hole.thread())
        .open()
        .ifPresent(choice -> file().ifPresent(file -> write(choice, file)));
  }

  private Optional<Path> file() {
    FileDialog dialog = new FileDialog(desk.shell(), SWT.SAVE);
    dialog.setText("Wall chart as PDF");
    dialog.setFilterExtensions(new String[] {"*.pdf"});
    dialog.setFilterPath(desk.remembered(ThreadsPage.ID, FOLDER, ""));
    dialog.setFileName("wall-chart.pdf");
    dialog.setOverwrite(true);
    Optional<String> chosen = Optional.ofNullable(dialog.open());
    chosen.ifPresent(file -> desk.remember(ThreadsPage.ID, FOLDER, dialog.getFilterPath()));
    return chosen.map(file -> file.endsWith(".pdf") ? file : file + ".pdf").map(Path::of);
  }

  /** Writes the chart. */
  void write(WallChartDialog.Choice choice, Path file) {
    WallCharts service = trade.charts().get().orElseThrow();
    WallChart chart =
        new WallChart(
            choice.series(), hole.material(), hole.held(), "", choice.paper(), desk.unit());
    desk.work(
        "Writing " + file.getFileName(),
        () -> {
          // Whole in memory first, so that a failure leaves no half a file.
          ByteArrayOutputStream bytes = new ByteArrayOutputStream();
          int sheets = service.write(chart, bytes);
          Files.write(file, bytes.toByteArray());
          return sheets;
        },
        sheets -> {
          desk.say(
              file
                  + ": "
                  + Figures.count(sheets, "sheet", "sheets")
                  + " written; it is opened to be looked at and printed.");
          opener.accept(file);
        });
  }
}
