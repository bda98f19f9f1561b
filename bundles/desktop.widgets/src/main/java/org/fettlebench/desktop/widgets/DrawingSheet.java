package org.fettlebench.desktop.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.LineAttributes;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;

/** The pens, shades and lettering of a drawing on one device. */
final class DrawingSheet implements AutoCloseable {
  /**
   * Narrow line, mm of paper; wide and extra wide are 2 and 4 times it (ISO 128-2, from memory).
   */
  private static final double NARROW_MM = 0.25;

  /** Size of lettering, points; letters then stand about 2.5 mm tall (ISO 3098, from memory). */
  private static final double LETTERING_POINTS = 9.5;

  /** The same, mm of paper. */
  static final double LETTERING_MM = LETTERING_POINTS * 25.4 / 72;

  static final Color INK = new Color(0x16, 0x1A, 0x1F);
  static final Color FAINT = new Color(0x6B, 0x70, 0x77);
  static final Color PAPER = new Color(0xFF, 0xFF, 0xFF);
  static final Color GOVERNS = new Color(0x1D, 0x4F, 0x86);
  private static final Color PART = new Color(0xF2, 0xEF, 0xE8);
  private static final Color WALL = new Color(0xDD, 0xD8, 0xCC);
  private static final Color HEAD = new Color(0x8F, 0xA3, 0xB8);
  private static final Color ALLOWED = new Color(0x9F, 0xCF, 0xA8);

  private final double pixelsPerPaperMm;
  private final Font lettering;
  private final Font strong;

  DrawingSheet(Device device, String family, double pixelsPerPaperMm, double textScale) {
    this.pixelsPerPaperMm = pixelsPerPaperMm;
    int points = (int) Math.round(LETTERING_POINTS * textScale);
    lettering = new Font(device, new FontData(family, points, SWT.NORMAL));
    strong = new Font(device, new FontData(family, points, SWT.BOLD));
  }

  /** Returns pixels for millimetres of paper. */
  double paper(double millimetres) {
    return millimetres * pixelsPerPaperMm;
  }

  /** Returns millimetres of paper for pixels. */
  double millimetres(double pixels) {
    return pixels / pixelsPerPaperMm;
  }

  /** Returns the pen of thin lines that belong to what governs. */
  LineAttributes heavier() {
    return pen(1.8);
  }

  Font lettering(boolean heavy) {
    return heavy ? strong : lettering;
  }

  /** Returns the pen of a kind of line; dashes in line widths after ISO 128-2 (from memory). */
  LineAttributes pen(LineKind kind) {
    return switch (kind) {
      case OUTLINE -> pen(2);
      case THIN, HATCH -> pen(1);
      case CENTRE -> pen(1, 24, 3, 0.5, 3);
      case HIDDEN -> pen(1, 12, 3);
      case GOVERNING -> pen(4);
    };
  }

  private LineAttributes pen(double widths, double... dashes) {
    double pixels = Math.max(1, paper(NARROW_MM * widths));
    LineAttributes pen = new LineAttributes((float) pixels, SWT.CAP_FLAT, SWT.JOIN_ROUND);
    if (dashes.length > 0) {
      pen.style = SWT.LINE_CUSTOM;
      pen.dash = new float[dashes.length];
      for (int i = 0; i < dashes.length; i++) {
        pen.dash[i] = (float) Math.max(1, dashes[i] * pixels);
      }
    }
    return pen;
  }

  static Color ink(LineKind kind) {
    return switch (kind) {
      case GOVERNING -> GOVERNS;
      case HATCH, CENTRE -> FAINT;
      case OUTLINE, THIN, HIDDEN -> INK;
    };
  }

  static Color shade(Tone tone) {
    return switch (tone) {
      case PART -> PART;
      case WALL -> WALL;
      case HEAD -> HEAD;
      case ALLOWED -> ALLOWED;
      case EMPTY -> PAPER;
    };
  }

  /** Returns how much of what lies beneath a shade covers, 0 to 255. */
  static int opacity(Tone tone) {
    return tone == Tone.HEAD ? 110 : tone == Tone.ALLOWED ? 170 : 255;
  }

  @Override
  public void close() {
    lettering.dispose();
    strong.dispose();
  }
}
