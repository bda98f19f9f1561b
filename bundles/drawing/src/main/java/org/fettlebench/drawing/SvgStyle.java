package org.fettlebench.drawing;

/** How kinds of line and tones look on paper: dark lines on white, shades that copy well. */
final class SvgStyle {
  static final String INK = "#1b1b1b";
  static final String ACCENT = "#b3261e";
  static final String MARK = "stroke=\"" + INK + "\" stroke-width=\"0.35\"";

  private SvgStyle() {}

  static String stroke(LineKind kind) {
    return switch (kind) {
      case OUTLINE -> line(INK, 0.5, "");
      case THIN -> line(INK, 0.25, "");
      case HATCH -> line("#555555", 0.18, "");
      case CENTRE -> line(INK, 0.25, "6 1 0.6 1");
      case HIDDEN -> line(INK, 0.25, "3 0.9");
      case GOVERNING -> line(ACCENT, 1.2, "");
    };
  }

  static String fill(Tone tone) {
    return switch (tone) {
      case PART -> "fill=\"#f1f0ec\"";
      case WALL -> "fill=\"#dcdad3\"";
      case HEAD -> "fill=\"#c9ced6\" fill-opacity=\"0.55\"";
      case ALLOWED -> "fill=\"#8fbf9f\" fill-opacity=\"0.6\"";
      case EMPTY -> "fill=\"#ffffff\"";
    };
  }

  /** A white halo keeps lettering legible where it crosses a line. */
  static String text(boolean strong) {
    return "stroke=\"#ffffff\" stroke-width=\"0.9\" stroke-linejoin=\"round\""
        + " paint-order=\"stroke\" fill=\""
        + (strong ? ACCENT : INK)
        + "\""
        + (strong ? " font-weight=\"bold\"" : "");
  }

  private static String line(String colour, double widthMm, String dashes) {
    return "stroke=\""
        + colour
        + "\" stroke-width=\""
        + widthMm
        + "\" stroke-linejoin=\"round\" stroke-linecap=\""
        + (dashes.isEmpty() ? "round" : "butt")
        + "\""
        + (dashes.isEmpty() ? "" : " stroke-dasharray=\"" + dashes + "\"");
  }
}
