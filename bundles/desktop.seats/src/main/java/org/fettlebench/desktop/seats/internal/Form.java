package org.fettlebench.desktop.seats.internal;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.ScrollPane;
import org.fettlebench.desktop.widgets.Section;
import org.fettlebench.measure.Length;

/** Lines of a form: a name at the left, a field beside it; two such pairs a line where asked. */
final class Form {
  private static final int NAME_PIXELS = 92;
  private static final int SHORT_NAME_PIXELS = 78;

  private static final double LARGE = 1.3;

  /** Pixels between lines. */
  private static final int GAP = 3;

  private final Desk desk;
  private final Composite body;
  private final int pairs;
  private boolean wide;

  /** Makes a form with one field a line in a composite. */
  Form(Composite body, Desk desk) {
    this(body, desk, 1);
  }

  /** Makes a form with so many fields a line. */
  Form(Composite body, Desk desk, int pairs) {
    this.desk = desk;
    this.body = body;
    this.pairs = large(desk) ? 1 : pairs;
    GridLayout grid = Layouts.grid(2 * this.pairs, 0);
    grid.verticalSpacing = GAP;
    body.setLayout(grid);
  }

  /** Returns whether letters are so large that two fields beside each other would be cut. */
  static boolean large(Desk desk) {
    return desk.look().scale() > LARGE;
  }

  /** Makes a section whose heading takes little room, so that the next one is in sight. */
  static Section section(Composite parent, Desk desk, String title) {
    Section section = new Section(parent, desk.look(), title);
    GridLayout grid = (GridLayout) section.getLayout();
    grid.marginTop = 0;
    grid.verticalSpacing = GAP;
    GridLayout body = (GridLayout) section.body().getLayout();
    body.verticalSpacing = GAP;
    return section;
  }

  Composite body() {
    return body;
  }

  /** Makes the next field as wide as the line. */
  Form wide() {
    wide = true;
    return this;
  }

  /** Puts the name of the field that is made next. */
  Form name(String words) {
    Label name = Layouts.word(body, desk.look(), words);
    name.setForeground(desk.look().faint());
    GridData data = new GridData(SWT.FILL, SWT.CENTER, false, false);
    data.widthHint = (int) ((pairs > 1 ? SHORT_NAME_PIXELS : NAME_PIXELS) * desk.look().scale());
    name.setLayoutData(data);
    return this;
  }

  /** Places the field of the name before it. */
  <C extends Control> C field(C control) {
    GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
    data.widthHint = 40;
    data.horizontalSpan = wide ? 2 * pairs - 1 : 1;
    wide = false;
    control.setLayoutData(data);
    return control;
  }

  FigureField figure(String name, Consumer<Optional<Length>> typed) {
    name(name);
    return field(new FigureField(body, desk, typed));
  }

  /** Makes a list to choose from. */
  Combo choice(String name, List<String> items, IntConsumer chosen) {
    name(name);
    Combo combo = field(new Combo(body, SWT.DROP_DOWN | SWT.READ_ONLY));
    combo.setFont(desk.look().text());
    combo.setItems(items.toArray(String[]::new));
    combo.addListener(SWT.Selection, event -> chosen.accept(combo.getSelectionIndex()));
    unwheeled(combo);
    return combo;
  }

  /** The wheel scrolls the pane and never what a list under the pointer has chosen. */
  static void unwheeled(Combo combo) {
    combo.addListener(SWT.MouseWheel, event -> scrolled(combo, event));
  }

  private static void scrolled(Combo combo, Event event) {
    event.doit = false;
    ScrollPane.around(combo)
        .ifPresent(
            pane -> {
              int step = pane.getVerticalBar().getIncrement();
              pane.setOrigin(0, pane.getOrigin().y - event.count * step);
            });
  }

  /** Makes a remark across the line. */
  Label remark(String words) {
    return across(Layouts.remark(body, desk.look(), words), 40);
  }

  /** Makes a box to tick across the line. */
  Button tick(String words, Runnable changed) {
    Button tick = new Button(body, SWT.CHECK);
    tick.setFont(desk.look().text());
    tick.setForeground(desk.look().ink());
    tick.setText(words);
    tick.addListener(SWT.Selection, event -> changed.run());
    return across(tick);
  }

  /** Places a control across the line. */
  <C extends Control> C across(C control) {
    return across(control, SWT.DEFAULT);
  }

  private <C extends Control> C across(C control, int widthHint) {
    GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
    data.horizontalSpan = 2 * pairs;
    data.widthHint = widthHint;
    control.setLayoutData(data);
    return control;
  }
}
