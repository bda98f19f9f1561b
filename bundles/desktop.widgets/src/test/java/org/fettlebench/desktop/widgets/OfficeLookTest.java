package org.fettlebench.desktop.widgets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;
import org.fettlebench.desktop.widgets.trial.Windowed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OfficeLookTest {

  @ParameterizedTest
  @CsvSource({"false,1.0", "true,1.0", "false,1.25", "true,1.5", "false,2.0"})
  void noTwoRolesShareAColourOrAFont(boolean dark, double scale) {
    Windowed.run(
        "roles",
        desk -> {
          OfficeLook look = new OfficeLook(Display.getCurrent(), dark, scale);
          assertEquals(look.colours().size(), new HashSet<>(look.colours()).size());
          List<String> fonts =
              look.fonts().stream().map(font -> font.getFontData()[0].toString()).toList();
          assertEquals(fonts.size(), new HashSet<>(fonts).size());
          OfficeLook.dispose(look.fonts());
        });
  }

  /** WCAG 2.1, success criterion 1.4.3: text needs a contrast of 4.5 to 1. */
  @ParameterizedTest
  @CsvSource({"false", "true"})
  void textCanBeReadOnGroundAndSheet(boolean dark) {
    Windowed.run(
        "contrast",
        desk -> {
          OfficeLook look = new OfficeLook(Display.getCurrent(), dark, 1);
          for (Color ground : List.of(look.ground(), look.sheet())) {
            for (Color text :
                List.of(
                    look.ink(),
                    look.faint(),
                    look.accent(),
                    look.good(),
                    look.care(),
                    look.bad())) {
              assertTrue(contrast(text.getRGB(), ground.getRGB()) >= 4.5, text + " on " + ground);
            }
          }
          OfficeLook.dispose(look.fonts());
        });
  }

  @Test
  void aTextSizeOutsideTheRangeIsRefused() {
    Windowed.run(
        "size",
        desk -> {
          Display display = Display.getCurrent();
          for (double scale : new double[] {0.99, 2.01, Double.NaN}) {
            assertThrows(
                IllegalArgumentException.class, () -> new OfficeLook(display, false, scale));
          }
        });
  }

  private static double contrast(RGB one, RGB other) {
    double lighter = Math.max(luminance(one), luminance(other));
    double darker = Math.min(luminance(one), luminance(other));
    return (lighter + 0.05) / (darker + 0.05);
  }

  /** Relative luminance as WCAG 2.1 defines it. */
  private static double luminance(RGB rgb) {
    return 0.2126 * linear(rgb.red) + 0.7152 * linear(rgb.green) + 0.0722 * linear(rgb.blue);
  }

  private static double linear(int channel) {
    double share = channel / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }
}
