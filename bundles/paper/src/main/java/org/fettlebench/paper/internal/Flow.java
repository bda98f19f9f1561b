package org.fettlebench.paper.internal;

import java.io.IOException;
import java.util.List;
import org.fettlebench.measure.Point;

/** Writes blocks of words under each other into a column of a page. */
final class Flow {
  private static final double MARK_MM = 2.8;
  private static final double INDENT_MM = 4.5;

  private final PdfSheet sheet;
  private final double left;
  private final double width;
  private final double bottom;
  private double y;

  /**
   * Makes a column.
   *
   * @param top where the first block begins, mm from the page's top
   * @param bottom where nothing may stand any more
   */
  Flow(PdfSheet sheet, double left, double top, double width, double bottom) {
    this.sheet = sheet;
    this.left = left;
    this.width = width;
    this.bottom = bottom;
    this.y = top;
  }

  double y() {
    return y;
  }

  void gap(double mm) {
    y += mm;
  }

  /** Returns whether so much room is left. */
  boolean room(double mm) {
    return y + mm <= bottom;
  }

  /** Returns how high words stand when they are written here. */
  double heightMm(Style style, String words, double indent) throws IOException {
    return sheet.lettering().wrapped(style, words, width - indent).size() * style.lineMm();
  }

  /** Writes words, wrapped. */
  Flow words(Style style, String words) throws IOException {
    return words(style, words, 0);
  }

  private Flow words(Style style, String words, double indent) throws IOException {
    List<String> lines = sheet.lettering().wrapped(style, words, width - indent);
    for (String line : lines) {
      y += style.lineMm();
      sheet.text(style, new Point(left + indent, y - style.lineMm() * 0.25), line);
    }
    return this;
  }

  /** Writes a heading with a rule under it. */
  Flow heading(String words) throws IOException {
    words(Style.HEADING, words);
    y += 0.6;
    sheet.line(Ink.RULE, 0.25, new Point(left, y), new Point(left + width, y));
    y += 0.8;
    return this;
  }

  /** Writes a point: its shape, the words, and a smaller remark under them. */
  Flow point(Marks mark, String words, String remark) throws IOException {
    mark.draw(sheet, new Point(left, y + 0.7), MARK_MM);
    words(Style.TEXT, words, INDENT_MM);
    if (!remark.isBlank()) {
      words(Style.REMARK, remark, INDENT_MM);
    }
    y += 0.8;
    return this;
  }

  /** Returns how high a point stands. */
  double pointMm(String words, String remark) throws IOException {
    double small = remark.isBlank() ? 0 : heightMm(Style.REMARK, remark, INDENT_MM);
    return heightMm(Style.TEXT, words, INDENT_MM) + small + 0.8;
  }
}
