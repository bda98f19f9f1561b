package org.fettlebench.desktop.widgets;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.widgets.Display;
import org.fettlebench.desktop.Look;

/**
 * The look of a drawing office: warm greys, ink, one blue. It can be changed while windows stand.
 *
 * <p>No two roles share a colour or a font, so that after a change the window can tell from what a
 * control carries which role it plays, and dress it anew.
 */
public final class OfficeLook implements Look {
  /** Points of running text at 100 per cent; large enough for a bench, common practice. */
  private static final int TEXT_POINTS = 10;

  private static final int[] LIGHT = {
    0xF1EFEA, 0xFBFAF7, 0xFFFFFF, 0x1B1F24, 0x5A6067, 0xC9C5BC, 0x1D4F86, 0x27683A, 0x8A5800,
    0xA3231C
  };
  private static final int[] DARK = {
    0x2B2F35, 0x22262B, 0xFFFFFF, 0xE9E7E2, 0xA7ABB0, 0x4B515A, 0x86B6EA, 0x7DC592, 0xE6B65C,
    0xF28D83
  };

  private final Display display;
  private List<Color> colours;
  private List<Font> fonts;
  private double scale;
  private boolean dark;

  /**
   * Makes the look.
   *
   * @param display of the window
   * @param dark whether ink is light on a dark ground
   * @param scale 1.0 to 2.0
   */
  public OfficeLook(Display display, boolean dark, double scale) {
    this.display = display;
    set(dark, scale);
  }

  /** Changes theme and text size; the old fonts stay usable until {@link #dispose(List)}. */
  public void set(boolean newDark, double newScale) {
    if (!(newScale >= 1 && newScale <= 2)) {
      throw new IllegalArgumentException("text size " + newScale + " is outside 1.0 to 2.0");
    }
    dark = newDark;
    scale = newScale;
    NativeTheme.prefer(dark);
    colours = java.util.Arrays.stream(dark ? DARK : LIGHT).mapToObj(OfficeLook::colour).toList();
    fonts =
        List.of(
            font(TEXT_POINTS, SWT.NORMAL),
            font(TEXT_POINTS, SWT.BOLD),
            font(TEXT_POINTS * 1.7, SWT.BOLD),
            font(TEXT_POINTS * 1.2, SWT.BOLD),
            font(TEXT_POINTS * 0.9, SWT.NORMAL));
  }

  private static Color colour(int rgb) {
    return new Color(rgb >> 16, rgb >> 8 & 0xFF, rgb & 0xFF);
  }

  private Font font(double points, int style) {
    String family = display.getSystemFont().getFontData()[0].getName();
    return new Font(display, new FontData(family, (int) Math.round(points * scale), style));
  }

  /** Returns the colours by role, always in the same order. */
  public List<Color> colours() {
    return colours;
  }

  /** Returns the fonts by role, always in the same order. */
  public List<Font> fonts() {
    return fonts;
  }

  /** Disposes of fonts that nothing carries any more. */
  public static void dispose(List<Font> fonts) {
    fonts.forEach(Font::dispose);
  }

  @Override
  public Font text() {
    return fonts.get(0);
  }

  @Override
  public Font strong() {
    return fonts.get(1);
  }

  @Override
  public Font answer() {
    return fonts.get(2);
  }

  @Override
  public Font heading() {
    return fonts.get(3);
  }

  @Override
  public Font small() {
    return fonts.get(4);
  }

  @Override
  public Color ground() {
    return colours.get(0);
  }

  @Override
  public Color sheet() {
    return colours.get(1);
  }

  @Override
  public Color paper() {
    return colours.get(2);
  }

  @Override
  public Color ink() {
    return colours.get(3);
  }

  @Override
  public Color faint() {
    return colours.get(4);
  }

  @Override
  public Color rule() {
    return colours.get(5);
  }

  @Override
  public Color accent() {
    return colours.get(6);
  }

  @Override
  public Color good() {
    return colours.get(7);
  }

  @Override
  public Color care() {
    return colours.get(8);
  }

  @Override
  public Color bad() {
    return colours.get(9);
  }

  @Override
  public boolean dark() {
    return dark;
  }

  @Override
  public double scale() {
    return scale;
  }
}
