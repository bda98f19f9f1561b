package org.fettlebench.desktop.castings.internal;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.fettlebench.castings.CastingDrawings;
import org.fettlebench.castings.CastingView;
import org.fettlebench.castings.Placing;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.CautionStrip;
import org.fettlebench.desktop.widgets.Cautions;
import org.fettlebench.desktop.widgets.DrawingCanvas;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.Split;

/** The page as it stands in the window: drawing and answer above, the table of faces below. */
final class CastingSheet extends Composite {
  private static final int AUTOSAVE_MS = 400;

  private final Desk desk;
  private final Bench bench;
  private final CastingDrawings drawings;
  private final ForAllBar forAll;
  private final DrawingCanvas canvas;
  private final Composite choices;
  private final Map<CastingView, Button> views = new EnumMap<>(CastingView.class);
  private final AnswerPanel answer;
  private final FaceTable table;
  private final SpotPanel spots;
  private final CautionStrip pressure;
  private final Button undo;
  private final Button redo;
  private final Button takeAway;
  private CastingView view = CastingView.FRONT;
  private int saves;
  private boolean leaving;

  CastingSheet(Composite parent, Desk desk, Bench bench, CastingDrawings drawings, Deeds deeds) {
    super(parent, SWT.NONE);
    this.desk = desk;
    this.bench = bench;
    this.drawings = drawings;
    setBackground(desk.look().ground());
    setLayout(Layouts.grid(1, Layouts.MARGIN));
    Composite bar = Layouts.flow(this);
    button(bar, "New", deeds::fresh);
    button(bar, "Open \u2026", deeds::open);
    button(bar, "Save \u2026", deeds::save);
    undo = button(bar, "Undo", this::undo);
    redo = button(bar, "Redo", this::redo);
    takeAway = button(bar, "Take line away", this::takeAway);
    takeAway.setToolTipText("The line of the table in hand (Ctrl+Delete)");
    button(bar, "Whole", this::whole);
    button(bar, "Card \u2026", deeds::card);
    button(bar, "Picture \u2026", deeds::picture);
    button(bar, "Copy table", deeds::copy);
    button(bar, "Example", deeds::example);
    forAll = new ForAllBar(this, desk, bench);
    Split rows = new Split(this, desk, SWT.VERTICAL, CastingPage.ID, "drawing-table");
    Split above = new Split(rows.form(), desk, SWT.HORIZONTAL, CastingPage.ID, "drawing-answer");
    Composite left = Layouts.columns(above.form(), 1);
    choices = Layouts.wide(Layouts.columns(left, CastingView.values().length));
    for (CastingView each : CastingView.values()) {
      views.put(each, viewButton(each));
    }
    canvas = Layouts.fill(new DrawingCanvas(left, desk));
    canvas.whenEmpty("The outlines appear here while you type.");
    answer = new AnswerPanel(above.form(), desk, bench, deeds, this::begin);
    above.share(62, 38);
    Split below = new Split(rows.form(), desk, SWT.HORIZONTAL, CastingPage.ID, "table-places");
    table = new FaceTable(below.form(), desk, bench);
    spots = new SpotPanel(below.form(), desk, bench);
    below.share(68, 32);
    rows.share(54, 46);
    new CautionStrip(this, desk.look(), Cautions.CASTINGS);
    pressure = new CautionStrip(this, desk.look(), Cautions.PRESSURE);
    addListener(SWT.Dispose, event -> leaving = true);
    bench.onChange(this::show);
    desk.onLookChange(this::lookChanged);
    show();
  }

  private Button button(Composite bar, String text, Runnable pressed) {
    Button button = Layouts.button(bar, desk.look(), text, pressed);
    button.setLayoutData(null);
    return button;
  }

  private Button viewButton(CastingView each) {
    Button button = new Button(choices, SWT.RADIO);
    button.setFont(desk.look().text());
    button.setForeground(desk.look().ink());
    String words = each.words();
    button.setText(Character.toUpperCase(words.charAt(0)) + words.substring(1));
    button.addListener(
        SWT.Selection,
        event -> {
          if (button.getSelection() && each != view) {
            view = each;
            draw();
            canvas.whole();
          }
        });
    button.setLayoutData(new GridData(SWT.LEFT, SWT.CENTER, false, false));
    return button;
  }

  private void show() {
    // What is taken apart still passes the keyboard round.
    if (leaving || isDisposed()) {
      return;
    }
    forAll.show();
    draw();
    answer.show();
    table.show();
    spots.show();
    Layouts.present(pressure, bench.sketch().holdsPressure());
    undo.setEnabled(bench.canUndo());
    redo.setEnabled(bench.canRedo());
    takeAway.setEnabled(bench.row() < bench.sketch().rows().size());
    rest();
  }

  private void draw() {
    Optional<Placing> placing = bench.reply().placing();
    List<CastingView> possible =
        placing.map(each -> CastingView.of(each.casting())).orElse(List.of());
    if (!possible.isEmpty() && !possible.contains(view)) {
      view = possible.get(0);
    }
    views.forEach(
        (each, button) -> {
          Layouts.present(button, possible.contains(each));
          button.setSelection(each == view);
        });
    Layouts.present(choices, possible.size() > 1);
    placing
        .map(each -> drawings.draw(each, view, desk.unit()))
        .ifPresentOrElse(canvas::redrawn, canvas::clear);
  }

  void whole() {
    canvas.whole();
  }

  void undo() {
    desk.say(bench.undo().map(done -> "Undone: " + done + ".").orElse("Nothing to undo."));
  }

  void redo() {
    desk.say(bench.redo().map(done -> "Done again: " + done + ".").orElse("Nothing to redo."));
  }

  /** Takes the line in hand away; Undo brings it back. */
  void takeAway() {
    int row = bench.row();
    if (row < bench.sketch().rows().size()) {
      String name = bench.sketch().names().get(row);
      bench.apply(
          org.fettlebench.desktop.widgets.Change.of(
              name + " taken away", sketch -> sketch.without(row)));
      desk.say(name + " is taken away.", bench.undoOfLast());
    }
  }

  /** Keeps the work a moment after the last change, so that closing loses nothing. */
  private void rest() {
    int mine = ++saves;
    getDisplay()
        .timerExec(
            AUTOSAVE_MS,
            () -> {
              if (mine == saves && !isDisposed()) {
                keep();
              }
            });
  }

  void keep() {
    desk.remember(CastingPage.ID, "draft", Draft.write(bench.sketch()));
  }

  private void lookChanged() {
    if (!isDisposed()) {
      forAll.unitChanged();
      table.unitChanged();
      spots.unitChanged();
      show();
      layout(true, true);
    }
  }

  /** Puts the keyboard where the work begins. */
  void begin() {
    table.go(0, 0);
  }

  DrawingCanvas canvas() {
    return canvas;
  }

  Bench bench() {
    return bench;
  }

  FaceTable table() {
    return table;
  }

  SpotPanel spots() {
    return spots;
  }

  ForAllBar forAll() {
    return forAll;
  }

  AnswerPanel answer() {
    return answer;
  }

  /** Returns the view that is drawn. */
  CastingView view() {
    return view;
  }

  Button viewButtonOf(CastingView each) {
    return views.get(each);
  }
}
