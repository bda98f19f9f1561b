package org.fettlebench.desktop.widgets;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTError;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.printing.PrintDialog;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Display;
import org.fettlebench.desktop.Desk;
import org.fettlebench.drawing.Drawing;

/** Prints a list as a person would want it on paper: title, heads on each sheet, sheet numbers. */
public final class ListPrinter {
  private static final int POINTS = 9;

  /** Part of the first sheet's height that a drawing takes. */
  private static final double DRAWN = 0.3;

  private static final int IMAGE_DPI = 240;

  private final String title;
  private final List<String> heads;
  private final List<List<String>> rows;
  private final List<Boolean> figures;
  private Optional<Drawing> drawing = Optional.empty();

  /**
   * Makes it.
   *
   * @param heads one for each column
   * @param rows cells from left to right, as many as there are heads
   * @param figures for each column, whether its cells stand right
   */
  public ListPrinter(
      String title, List<String> heads, List<List<String>> rows, List<Boolean> figures) {
    this.title = title;
    this.heads = List.copyOf(heads);
    this.rows = List.copyOf(rows);
    this.figures = List.copyOf(figures);
  }

  /** Puts a drawing above the rows of the first sheet. */
  public ListPrinter under(Optional<Drawing> above) {
    drawing = above;
    return this;
  }

  /** Asks for a printer and prints; the window waits, since GTK prints on its own thread only. */
  public void print(Desk desk) {
    PrinterData chosen = new PrintDialog(desk.shell()).open();
    if (chosen == null) {
      return;
    }
    try {
      int sheets = printOn(chosen, desk.look().text().getFontData()[0].getName());
      desk.say(title + ": " + Figures.count(sheets, "sheet", "sheets") + " printed.");
    } catch (SWTError | IllegalStateException refused) {
      desk.complain(title + " was not printed: " + refused.getMessage() + ".");
    }
  }

  /** Prints on a printer and returns the number of sheets. */
  int printOn(PrinterData chosen, String family) {
    Printer printer = new Printer(chosen);
    Font font = new Font(printer, new FontData(family, POINTS, SWT.NORMAL));
    Font strong = new Font(printer, new FontData(family, POINTS, SWT.BOLD));
    try {
      if (!printer.startJob(title)) {
        throw new IllegalStateException("the printer " + chosen.name + " does not take the job");
      }
      GC gc = new GC(printer);
      int sheets = new Run(printer, gc, font, strong, family).sheets();
      gc.dispose();
      printer.endJob();
      return sheets;
    } finally {
      font.dispose();
      strong.dispose();
      printer.dispose();
    }
  }

  /** One printing: places on the sheet. */
  private final class Run {
    private final Printer printer;
    private final GC gc;
    private final Font font;
    private final Font strong;
    private final Rectangle area;
    private final int margin;
    private final int line;
    private final int[] lefts;
    private final int[] widths;
    private final String family;

    Run(Printer printer, GC gc, Font font, Font strong, String family) {
      this.printer = printer;
      this.gc = gc;
      this.font = font;
      this.strong = strong;
      this.family = family;
      area = printer.getClientArea();
      margin = printer.getDPI().x / 2;
      gc.setFont(strong);
      line = gc.getFontMetrics().getHeight() * 5 / 4;
      widths = widths();
      lefts = new int[widths.length];
      int left = area.x + margin;
      for (int i = 0; i < widths.length; i++) {
        lefts[i] = left;
        left += widths[i];
      }
    }

    /** Gives each column what it needs, all less by the same share when the sheet is narrow. */
    private int[] widths() {
      int gap = printer.getDPI().x / 8;
      int[] needed = new int[heads.size()];
      long sum = 0;
      for (int i = 0; i < needed.length; i++) {
        needed[i] = gc.textExtent(heads.get(i)).x + gap;
        for (List<String> row : rows) {
          needed[i] = Math.max(needed[i], gc.textExtent(row.get(i)).x + gap);
        }
        sum += needed[i];
      }
      double share = Math.min(1, (area.width - 2.0 * margin) / sum);
      return java.util.Arrays.stream(needed).map(width -> (int) (width * share)).toArray();
    }

    int sheets() {
      int perSheet = Math.max(1, (area.height - 2 * margin) / line - 4);
      int first = drawing.isPresent() ? Math.max(1, perSheet - drawnHeight() / line - 1) : perSheet;
      int after = Math.max(0, rows.size() - first);
      int sheets = 1 + (after + perSheet - 1) / perSheet;
      int from = 0;
      for (int sheet = 0; sheet < sheets; sheet++) {
        int to = Math.min(rows.size(), from + (sheet == 0 ? first : perSheet));
        if (printer.startPage()) {
          sheet(sheet, sheets, rows.subList(from, to));
          printer.endPage();
        }
        from = to;
      }
      return sheets;
    }

    private int drawnHeight() {
      return (int) (DRAWN * area.height);
    }

    /** As an image, since printers of some systems lose their scale at turned words. */
    private void drawn(int y) {
      Rectangle to = new Rectangle(area.x + margin, y, area.width - 2 * margin, drawnHeight());
      double share = (double) IMAGE_DPI / printer.getDPI().x;
      int width = (int) (share * to.width);
      int height = (int) (share * to.height);
      Display display = Display.getCurrent();
      Image image = new Image(display, width, height);
      GC on = new GC(image);
      try (GcRenderer renderer =
          new GcRenderer(
              display, family, IMAGE_DPI / 25.4, (double) IMAGE_DPI / display.getDPI().x)) {
        Drawing above = drawing.orElseThrow();
        on.setBackground(DrawingSheet.PAPER);
        on.fillRectangle(0, 0, width, height);
        DrawingView view = renderer.fit(on, above, width, height);
        renderer.draw(on, above, view, new Rectangle(0, 0, width, height));
        gc.drawImage(image, 0, 0, width, height, to.x, to.y, to.width, to.height);
      } finally {
        on.dispose();
        image.dispose();
      }
    }

    private void sheet(int sheet, int sheets, List<List<String>> shown) {
      int y = area.y + margin;
      gc.setFont(strong);
      String day = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.UK).format(LocalDate.now());
      gc.drawText(title, area.x + margin, y, true);
      gc.setFont(font);
      String right = day + ", sheet " + (sheet + 1) + " of " + sheets;
      gc.drawText(right, area.x + area.width - margin - gc.textExtent(right).x, y, true);
      y += 2 * line;
      if (sheet == 0 && drawing.isPresent()) {
        drawn(y);
        y += drawnHeight() + line;
      }
      gc.setFont(strong);
      row(heads, y);
      gc.drawLine(area.x + margin, y + line, area.x + area.width - margin, y + line);
      gc.setFont(font);
      for (List<String> row : shown) {
        y += line;
        row(row, y + line / 4);
      }
    }

    private void row(List<String> cells, int y) {
      for (int i = 0; i < cells.size(); i++) {
        int gap = printer.getDPI().x / 8;
        int spare = widths[i] - gap - gc.textExtent(cells.get(i)).x;
        int shift = figures.get(i) ? Math.max(0, spare) : 0;
        gc.setClipping(lefts[i], y, widths[i] - gap / 2, line);
        gc.drawText(cells.get(i), lefts[i] + shift, y, true);
        gc.setClipping((Rectangle) null);
      }
    }
  }
}
