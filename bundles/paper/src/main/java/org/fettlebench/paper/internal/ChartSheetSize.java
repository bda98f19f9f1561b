package org.fettlebench.paper.internal;

import org.fettlebench.paper.WallPaper;

/**
 * How large a sheet of a wall chart is and how large its letters are.
 *
 * @param widthMm of the sheet
 * @param heightMm of the sheet
 * @param columnScale of the columns; 1 on a table of 277 mm
 * @param scale of letters and rows; not above that of the columns
 */
record ChartSheetSize(double widthMm, double heightMm, double columnScale, double scale) {
  private static final double MARGIN_MM = 10;
  private static final double HEAD_MM = 30;
  private static final double CAUTION_MM = 9;
  private static final double ROW_MM = 5.4;

  /** What the notes of a few series take at the foot. */
  private static final double NOTES_MM = 22;

  /**
   * A4 lies, since the table is wide; so does A3 while all threads stand on it in large letters.
   */
  static ChartSheetSize of(WallPaper paper, double rows) {
    double columns = (paper.longSideMm() - 2 * MARGIN_MM) / ChartColumn.TABLE_MM;
    double high = paper.shortSideMm() - 2 * MARGIN_MM;
    double fitting = high / (HEAD_MM + CAUTION_MM + NOTES_MM + rows * ROW_MM);
    if (paper == WallPaper.A4 || fitting >= 1) {
      return new ChartSheetSize(
          paper.longSideMm(),
          paper.shortSideMm(),
          columns,
          paper == WallPaper.A4 ? columns : Math.min(columns, fitting));
    }
    // Many threads: upright A3 is as wide as lying A4, so that more of them stand on one sheet.
    return new ChartSheetSize(paper.shortSideMm(), paper.longSideMm(), 1, 1);
  }

  double marginMm() {
    return MARGIN_MM;
  }

  double rowMm() {
    return ROW_MM * scale;
  }

  /** Returns the top of the table's body. */
  double topMm() {
    return MARGIN_MM + HEAD_MM * scale;
  }

  /** Returns the room for rows and notes. */
  double bodyMm() {
    return heightMm - topMm() - MARGIN_MM - CAUTION_MM * scale;
  }

  double noteColumnMm() {
    return (ChartColumn.TABLE_MM * columnScale - 6 * scale) / 2;
  }

  Style title() {
    return new Style(20 * scale, true, Ink.BLACK);
  }

  Style under() {
    return new Style(9.5 * scale, false, Ink.FAINT);
  }

  Style cell() {
    return new Style(9.6 * scale, false, Ink.BLACK);
  }

  Style head() {
    return new Style(8.6 * scale, true, Ink.BLACK);
  }

  Style band() {
    return new Style(10.5 * scale, true, Ink.WHITE);
  }

  Style remark() {
    return new Style(6.4 * scale, false, Ink.FAINT);
  }

  Style caution() {
    return new Style(8.4 * scale, true, Ink.BAD);
  }
}
