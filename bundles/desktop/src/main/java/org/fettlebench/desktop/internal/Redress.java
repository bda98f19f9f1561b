package org.fettlebench.desktop.internal;

import java.util.List;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.fettlebench.desktop.widgets.OfficeLook;

/**
 * Puts the new fonts and colours on every control that carries one of the old, so that pages need
 * not be made anew when theme or text size change.
 */
final class Redress {
  private final OfficeLook look;

  Redress(OfficeLook look) {
    this.look = look;
  }

  /** Changes the look and dresses a control and all inside it. */
  void change(Control root, boolean dark, double scale) {
    List<Color> oldColours = look.colours();
    List<Font> oldFonts = look.fonts();
    List<FontData> oldData = oldFonts.stream().map(font -> font.getFontData()[0]).toList();
    look.set(dark, scale);
    dress(root, oldColours, oldData);
    OfficeLook.dispose(oldFonts);
  }

  private void dress(Control control, List<Color> oldColours, List<FontData> oldFonts) {
    int font = oldFonts.indexOf(control.getFont().getFontData()[0]);
    if (font >= 0) {
      control.setFont(look.fonts().get(font));
    }
    int ground = oldColours.indexOf(control.getBackground());
    if (ground >= 0 && changed(ground, oldColours)) {
      control.setBackground(look.colours().get(ground));
    }
    int ink = oldColours.indexOf(control.getForeground());
    if (ink >= 0 && changed(ink, oldColours)) {
      control.setForeground(look.colours().get(ink));
    }
    if (control instanceof Composite composite) {
      for (Control child : composite.getChildren()) {
        dress(child, oldColours, oldFonts);
      }
    }
    control.redraw();
  }

  /** What stays white must not be set: a platform's own white may be meant, which does change. */
  private boolean changed(int role, List<Color> oldColours) {
    return !oldColours.get(role).equals(look.colours().get(role));
  }
}
