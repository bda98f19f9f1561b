package org.fettlebench.paper;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Sheets that a wall chart is drawn for (ISO 216), lying or upright as suits the table. */
public enum WallPaper {
  /** 210 x 297 mm. */
  A4(210, 297),
  /** 297 x 420 mm. */
  A3(297, 420);

  private final double shortSideMm;
  private final double longSideMm;

  WallPaper(double shortSideMm, double longSideMm) {
    this.shortSideMm = shortSideMm;
    this.longSideMm = longSideMm;
  }

  /** Finds a sheet by its name, whatever the capitals. */
  public static Optional<WallPaper> ofWord(String typed) {
    String plain = typed.strip().toUpperCase(Locale.ROOT);
    return Arrays.stream(values()).filter(paper -> paper.name().equals(plain)).findFirst();
  }

  /** Returns the shorter side in millimetres. */
  public double shortSideMm() {
    return shortSideMm;
  }

  /** Returns the longer side in millimetres. */
  public double longSideMm() {
    return longSideMm;
  }
}
