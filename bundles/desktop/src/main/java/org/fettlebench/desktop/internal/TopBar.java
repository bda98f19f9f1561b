package org.fettlebench.desktop.internal;

import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.measure.LengthUnit;

/** The club's name, the find box, and the switch between inches and millimetres. */
final class TopBar extends Composite {
  private final Look look;
  private final Label club;
  private Button inches;
  private Button millimetres;

  TopBar(Composite parent, Look look) {
    super(parent, SWT.NONE);
    this.look = look;
    setBackground(look.ground());
    var grid = Layouts.grid(4, 0);
    grid.marginWidth = Layouts.MARGIN;
    grid.marginHeight = Layouts.GAP;
    grid.horizontalSpacing = Layouts.MARGIN;
    setLayout(grid);
    club = Layouts.label(this, look.heading(), "");
    club.setForeground(look.ink());
    GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
    data.minimumWidth = 60;
    data.widthHint = 60;
    club.setLayoutData(data);
  }

  /** Places the find box right of the club's name. */
  void place(FindBox find) {
    GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
    data.widthHint = (int) (320 * look.scale());
    find.field().setLayoutData(data);
  }

  /** Places the unit switch at the right end. */
  void placeSwitch(LengthUnit unit, Consumer<LengthUnit> chosen) {
    Composite group = Layouts.columns(this, 3);
    Label lengths = Layouts.word(group, look, "Lengths in");
    lengths.setForeground(look.faint());
    inches = radio(group, "inch", "Show lengths in inches first (Ctrl+U)");
    millimetres = radio(group, "mm", "Show lengths in millimetres first (Ctrl+U)");
    show(unit);
    inches.addListener(SWT.Selection, event -> choose(inches, LengthUnit.INCH, chosen));
    millimetres.addListener(
        SWT.Selection, event -> choose(millimetres, LengthUnit.MILLIMETRE, chosen));
  }

  private static void choose(Button button, LengthUnit unit, Consumer<LengthUnit> chosen) {
    if (button.getSelection()) {
      chosen.accept(unit);
    }
  }

  private Button radio(Composite group, String text, String tip) {
    Button button = new Button(group, SWT.RADIO);
    button.setText(text);
    button.setToolTipText(tip);
    button.setFont(look.text());
    button.setForeground(look.ink());
    button.setBackground(getBackground());
    return button;
  }

  /** Shows which unit is chosen. */
  void show(LengthUnit unit) {
    inches.setSelection(unit == LengthUnit.INCH);
    millimetres.setSelection(unit == LengthUnit.MILLIMETRE);
  }

  /** Shows the club's name. */
  void club(String name) {
    club.setText(Layouts.escaped(name));
    club.setToolTipText(name);
  }
}
