package org.fettlebench.paper.internal;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.fettlebench.measure.LengthUnit;

/**
 * Parts the rows of a wall chart among sheets, so that each sheet says where its figures are from.
 */
final class ChartPages {
  private static final double BAND_ROWS = 1.25;

  private final ChartSheetSize size;
  private final Lettering lettering;
  private final List<String> general;

  /** A row of a sheet: the head of a series, or a thread of it. */
  record Line(ChartSection section, int row, boolean goesOn) {
    boolean isHead() {
      return row < 0;
    }
  }

  /** What stands on one sheet. */
  record Sheet(List<Line> lines, List<String> notes) {}

  ChartPages(ChartSheetSize size, Lettering lettering, List<String> general) {
    this.size = size;
    this.lettering = lettering;
    this.general = general;
  }

  List<Sheet> part(List<ChartSection> sections) throws IOException {
    List<Sheet> sheets = new ArrayList<>();
    List<Line> lines = new ArrayList<>();
    for (ChartSection section : sections) {
      boolean begun = false;
      for (int row = 0; row < section.rows().size(); row++) {
        boolean needsHead = !begun || lines.isEmpty();
        if (!fits(lines, section, needsHead)) {
          sheets.add(sheet(lines));
          lines = new ArrayList<>();
          needsHead = true;
        }
        if (needsHead) {
          lines.add(new Line(section, -1, begun));
          begun = true;
        }
        lines.add(new Line(section, row, false));
      }
    }
    sheets.add(sheet(lines));
    return sheets;
  }

  /** A head never stands alone at the foot: it comes with two threads. */
  private boolean fits(List<Line> lines, ChartSection section, boolean needsHead)
      throws IOException {
    if (lines.isEmpty()) {
      return true;
    }
    double more = needsHead ? BAND_ROWS + 2 : 1;
    Set<String> notes = notes(lines);
    notes.addAll(section.notes());
    double used = (rows(lines) + more) * size.rowMm();
    return used + footMm(List.copyOf(notes)) <= size.bodyMm();
  }

  private static double rows(List<Line> lines) {
    return lines.stream().mapToDouble(line -> line.isHead() ? BAND_ROWS : 1).sum();
  }

  private Sheet sheet(List<Line> lines) {
    return new Sheet(List.copyOf(lines), List.copyOf(notes(lines)));
  }

  private Set<String> notes(List<Line> lines) {
    Set<String> notes = new LinkedHashSet<>(general);
    lines.forEach(line -> notes.addAll(line.section().notes()));
    return notes;
  }

  private double footMm(List<String> notes) throws IOException {
    return Math.ceil(wrapped(notes).size() / 2.0) * size.remark().lineMm() + size.rowMm();
  }

  /** Returns the notes broken into the lines of two columns. */
  List<String> wrapped(List<String> notes) throws IOException {
    List<String> lines = new ArrayList<>();
    for (String note : notes) {
      lines.addAll(lettering.wrapped(size.remark(), note, size.noteColumnMm()));
    }
    return lines;
  }

  void write(PDDocument document, ChartTitle title, List<Sheet> sheets, LengthUnit first)
      throws IOException {
    for (int number = 0; number < sheets.size(); number++) {
      try (PdfSheet paper = new PdfSheet(document, lettering, size.widthMm(), size.heightMm())) {
        new ChartSheet(paper, size, ChartColumn.all(first))
            .draw(
                title,
                sheets.get(number),
                wrapped(sheets.get(number).notes()),
                "sheet %d of %d".formatted(number + 1, sheets.size()));
      }
    }
  }

  static double bandRows() {
    return BAND_ROWS;
  }
}
