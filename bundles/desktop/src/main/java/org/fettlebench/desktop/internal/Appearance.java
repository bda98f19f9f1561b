package org.fettlebench.desktop.internal;

import java.util.List;
import org.eclipse.swt.widgets.Display;
import org.fettlebench.desktop.widgets.OfficeLook;
import org.fettlebench.measure.LengthUnit;

/** Unit, text size and theme: what is chosen now, remembered, and handed to the look. */
final class Appearance {
  private static final List<Integer> SIZES = List.of(100, 110, 125, 150, 175, 200);

  private final Memory memory;
  private final OfficeLook look;

  Appearance(Memory memory, Display display) {
    this.memory = memory;
    look = new OfficeLook(display, dark(), textSize() / 100.0);
  }

  OfficeLook look() {
    return look;
  }

  LengthUnit unit() {
    return memory.get("unit", "mm").equals("in") ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
  }

  void unit(LengthUnit unit) {
    memory.put("unit", unit.symbol());
  }

  /** Returns whether the dark theme is chosen; the system's own until a person chooses. */
  boolean dark() {
    String system = Display.isSystemDarkTheme() ? "dark" : "light";
    return memory.get("theme", system).equals("dark");
  }

  void dark(boolean dark) {
    memory.put("theme", dark ? "dark" : "light");
  }

  /** Returns the text size in per cent, one of the offered ones. */
  int textSize() {
    int size = memory.number("textsize", 100);
    return SIZES.contains(size) ? size : 100;
  }

  void textSize(int perCent) {
    memory.put("textsize", String.valueOf(perCent));
  }

  static List<Integer> sizes() {
    return SIZES;
  }

  /** Returns the next larger or smaller offered size, the same at the end. */
  int neighbour(int step) {
    int place = SIZES.indexOf(textSize()) + step;
    return SIZES.get(Math.max(0, Math.min(SIZES.size() - 1, place)));
  }
}
