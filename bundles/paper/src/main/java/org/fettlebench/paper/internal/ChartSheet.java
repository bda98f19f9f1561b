package org.fettlebench.paper.internal;

import java.io.IOException;
import java.util.List;
import org.fettlebench.measure.Point;
import org.fettlebench.paper.internal.ChartRow.Cell;

/** Draws one sheet of a wall chart, as a drawing office rules a table. */
final class ChartSheet {
  private static final double HEAVY_MM = 0.5;
  private static final double FINE_MM = 0.13;
  private static final int SHADED_ROWS = 2;

  private final PdfSheet sheet;
  private final ChartSheetSize size;
  private final List<ChartColumn> columns;
  private final double left;
  private final double right;

  ChartSheet(PdfSheet sheet, ChartSheetSize size, List<ChartColumn> columns) {
    this.sheet = sheet;
    this.size = size;
    this.columns = columns;
    this.left = size.marginMm();
    this.right = size.widthMm() - size.marginMm();
  }

  void draw(ChartTitle title, ChartPages.Sheet content, List<String> notes, String number)
      throws IOException {
    double scale = size.scale();
    sheet.text(size.title(), new Point(left, size.marginMm() + 6.5 * scale), title.words());
    sheet.text(size.under(), new Point(left, size.marginMm() + 12.5 * scale), title.under());
    rightText(size.under(), right, size.marginMm() + 12.5 * scale, number);
    heads(size.topMm());
    double bottom = rows(content.lines(), size.topMm());
    uprights(size.topMm() - 12 * scale, bottom, content.lines());
    foot(notes, bottom + 0.75 * size.rowMm());
    caution(title.caution());
  }

  private void heads(double top) throws IOException {
    double scale = size.scale();
    rule(HEAVY_MM, top - 12 * scale);
    double x = left;
    for (int i = 0; i < columns.size(); i++) {
      ChartColumn column = columns.get(i);
      double width = column.widthMm() * size.columnScale();
      boolean firstOfGroup = i == 0 || !columns.get(i - 1).group().equals(column.group());
      if (firstOfGroup && !column.group().isEmpty()) {
        centred(size.head(), x, groupWidth(i), top - 7.6 * scale, column.group());
      }
      heading(column, x, width, top - 2 * scale);
      x += width;
    }
    rule(HEAVY_MM, top);
  }

  private void heading(ChartColumn column, double x, double width, double y) throws IOException {
    if (column.figures()) {
      rightText(size.head(), x + width - pad(), y, column.head());
    } else {
      sheet.text(size.head(), new Point(x + pad(), y), column.head());
    }
  }

  private double groupWidth(int from) {
    double width = 0;
    for (int i = from;
        i < columns.size() && columns.get(i).group().equals(columns.get(from).group());
        i++) {
      width += columns.get(i).widthMm() * size.columnScale();
    }
    return width;
  }

  private double rows(List<ChartPages.Line> lines, double top) throws IOException {
    double y = top;
    int count = 0;
    for (ChartPages.Line line : lines) {
      double height = size.rowMm() * (line.isHead() ? ChartPages.bandRows() : 1);
      if (line.isHead()) {
        band(line, y, height);
        count = 0;
      } else {
        // Two rows shaded, two not: the eye keeps the line across a wide table.
        if (count++ / SHADED_ROWS % 2 == 1) {
          fill(Ink.PART, y, height);
        }
        row(line.section().rows().get(line.row()), y + height);
        rule(FINE_MM, y + height);
      }
      y += height;
    }
    rule(HEAVY_MM, y);
    return y;
  }

  private void band(ChartPages.Line line, double y, double height) throws IOException {
    fill(Ink.GOVERNS, y, height);
    String words = line.section().title() + (line.goesOn() ? " (continued)" : "");
    sheet.text(size.band(), new Point(left + pad(), y + 0.7 * height), words);
  }

  private void row(ChartRow row, double foot) throws IOException {
    double x = left;
    double y = foot - 0.28 * size.rowMm();
    for (int i = 0; i < columns.size(); i++) {
      double width = columns.get(i).widthMm() * size.columnScale();
      Cell cell = row.cells().get(i);
      Style style = fitting(style(cell), cell.words(), width - 2 * pad());
      if (columns.get(i).figures()) {
        rightText(style, x + width - pad(), y, cell.words());
      } else {
        sheet.text(style, new Point(x + pad(), y), cell.words());
      }
      x += width;
    }
  }

  private Style style(Cell cell) {
    Style plain = size.cell();
    return switch (cell.weight()) {
      case PLAIN -> plain;
      case HELD -> new Style(plain.points(), true, Ink.BLACK);
      case CARE -> new Style(plain.points(), true, Ink.CARE);
      case FAINT -> plain.in(Ink.FAINT);
    };
  }

  /** Sets words smaller that would not find room, such as the name of a club's own thread. */
  private Style fitting(Style style, String words, double room) throws IOException {
    double length = sheet.lettering().lengthMm(style, words);
    return length <= room
        ? style
        : new Style(style.points() * room / length, style.strong(), style.ink());
  }

  private void uprights(double top, double bottom, List<ChartPages.Line> lines) throws IOException {
    double x = left;
    for (int i = 1; i < columns.size(); i++) {
      x += columns.get(i - 1).widthMm() * size.columnScale();
      if (!columns.get(i).group().equals(columns.get(i - 1).group())) {
        upright(x, top, bottom, lines);
      }
    }
  }

  /** Leaves the bands of the series whole. */
  private void upright(double x, double top, double bottom, List<ChartPages.Line> lines)
      throws IOException {
    double from = top;
    double y = size.topMm();
    for (ChartPages.Line line : lines) {
      double height = size.rowMm() * (line.isHead() ? ChartPages.bandRows() : 1);
      if (line.isHead()) {
        sheet.line(Ink.BLACK, FINE_MM * 1.6, new Point(x, from), new Point(x, y));
        from = y + height;
      }
      y += height;
    }
    sheet.line(Ink.BLACK, FINE_MM * 1.6, new Point(x, from), new Point(x, bottom));
  }

  private void foot(List<String> notes, double top) throws IOException {
    int half = (notes.size() + 1) / 2;
    double line = size.remark().lineMm();
    for (int i = 0; i < notes.size(); i++) {
      double x = i < half ? left : left + size.noteColumnMm() + 6 * size.scale();
      sheet.text(size.remark(), new Point(x, top + line * (i < half ? i : i - half)), notes.get(i));
    }
  }

  private void caution(String words) throws IOException {
    double foot = size.heightMm() - size.marginMm();
    rule(FINE_MM, foot - 5.5 * size.scale());
    sheet.text(
        fitting(size.caution(), words, right - left),
        new Point(left, foot - 1.2 * size.scale()),
        words);
  }

  private double pad() {
    return 1.6 * size.scale();
  }

  private void rule(double widthMm, double y) throws IOException {
    sheet.line(
        widthMm < HEAVY_MM ? Ink.RULE : Ink.BLACK,
        widthMm,
        new Point(left, y),
        new Point(right, y));
  }

  private void fill(Ink ink, double top, double height) throws IOException {
    sheet.fill(
        ink,
        List.of(
            List.of(
                new Point(left, top),
                new Point(right, top),
                new Point(right, top + height),
                new Point(left, top + height))));
  }

  private void rightText(Style style, double end, double y, String words) throws IOException {
    double length = sheet.lettering().lengthMm(style, words);
    sheet.text(style, new Point(end - length, y), words);
  }

  private void centred(Style style, double x, double width, double y, String words)
      throws IOException {
    Style fitted = fitting(style, words, width - pad());
    double length = sheet.lettering().lengthMm(fitted, words);
    sheet.text(fitted, new Point(x + (width - length) / 2, y), words);
  }
}
