package org.fettlebench.desktop.seats.internal;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.CautionStrip;
import org.fettlebench.desktop.widgets.Cautions;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.desktop.widgets.DrawingCanvas;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.Split;

/** The page as it stands in the window: the drawing with its answer, the figures beside it. */
final class SeatView extends Composite {
  private static final int AUTOSAVE_MS = 400;
  private static final int NAME_PIXELS = 150;

  private final Desk desk;
  private final Bench bench;
  private final Drawn drawn;
  private final SeatDeeds deeds;
  private final Composite empty;
  private final VerdictHead head;
  private final DrawingCanvas canvas;
  private final Label words;
  private final Label more;
  private final Label remark;
  private final ViewBar views;
  private final LegendBar legend;
  private final Text name;
  private final SeatTool tool;
  private final SidePanel side;
  private final Button undo;
  private final Button redo;
  private ViewChoice choice = ViewChoice.SEAT;
  private int saves;

  /**
   * Makes the page.
   *
   * @param deeds what the buttons do
   */
  SeatView(Composite parent, Desk desk, Bench bench, SidePanel.Parts parts, SeatDeeds deeds) {
    super(parent, SWT.NONE);
    this.desk = desk;
    this.bench = bench;
    this.drawn = parts.drawn();
    this.deeds = deeds;
    setBackground(desk.look().ground());
    setLayout(Layouts.grid(1, Layouts.MARGIN));
    Composite bar = Layouts.flow(this);
    button(bar, "New", deeds::fresh);
    button(bar, "Open \u2026", deeds::open);
    button(bar, "Save \u2026", deeds::save);
    undo = button(bar, "Undo", this::undo);
    redo = button(bar, "Redo", this::redo);
    button(bar, "Whole", this::whole);
    button(bar, "Card \u2026", deeds::card);
    button(bar, "Picture \u2026", deeds::picture);
    button(bar, "Copy figures", deeds::copy);
    button(bar, "Example", deeds::example);
    name = nameField(bar);
    Split split = new Split(this, desk, SWT.HORIZONTAL, SeatPage.ID, "drawing-figures");
    Layouts.fill(split.form());
    Composite left = Layouts.columns(split.form(), 1);
    empty = empty(left, deeds);
    head = new VerdictHead(left, desk, parts.book(), this::toCures);
    views = new ViewBar(left, desk, bench, this::view);
    canvas = Layouts.fill(new DrawingCanvas(left, desk));
    canvas.whenEmpty("The outline appears here while you type.");
    tool = new SeatTool(bench, desk, canvas);
    canvas.hand().tool(tool);
    canvas.overlay(
        (gc, view) -> {
          if (choice == ViewChoice.SEAT && bench.looking().isEmpty()) {
            new HandlePaint(bench, desk, tool).paint(gc, view);
          }
        });
    legend = new LegendBar(left, desk, this::draw);
    words = Layouts.label(left, desk.look().strong(), "");
    words.setForeground(desk.look().ink());
    more = Layouts.text(left, desk.look(), "");
    remark = Layouts.remark(left, desk.look(), "");
    side = new SidePanel(split.form(), desk, bench, parts);
    split.share(62, 38);
    new CautionStrip(this, desk.look(), Cautions.DRILLING);
    bench.onChange(this::show);
    desk.onLookChange(this::lookChanged);
    show();
  }

  private Button button(Composite bar, String text, Runnable pressed) {
    Button button = Layouts.button(bar, desk.look(), text, pressed);
    button.setLayoutData(null);
    return button;
  }

  private Text nameField(Composite bar) {
    Text made = new Text(bar, SWT.SINGLE | SWT.BORDER);
    made.setFont(desk.look().text());
    made.setBackground(desk.look().sheet());
    made.setForeground(desk.look().ink());
    made.setMessage("Name, for the card");
    RowData data = new RowData();
    data.width = (int) (NAME_PIXELS * desk.look().scale());
    made.setLayoutData(data);
    made.addListener(
        SWT.Modify,
        event -> {
          String typed = made.getText().strip();
          if (!typed.equals(bench.sketch().name())) {
            bench.apply(new Change<>("name typed", "name", sketch -> sketch.withName(typed)));
          }
        });
    return made;
  }

  private Composite empty(Composite parent, SeatDeeds deeds) {
    Composite made = Layouts.wide(Layouts.columns(parent, 1));
    Layouts.answer(made, desk.look(), "Will the head sit where the hole must go?");
    Layouts.text(
        made,
        desk.look(),
        "Begin at the right: type what the calliper reads, station by station down the column."
            + " The outline appears as you type; then choose thread and head, and the answer"
            + " follows everything you drag.");
    Composite row = Layouts.flow(made);
    button(row, "Begin typing", this::begin);
    button(row, "Look at an example lug", deeds::example);
    button(row, "Open a seat file \u2026", deeds::open);
    return made;
  }

  /** Shows another drawing of the same work. */
  void view(ViewChoice wanted) {
    choice = wanted;
    draw();
    canvas.whole();
  }

  private void toCures() {
    side.showCures();
  }

  void whole() {
    canvas.whole();
  }

  void undo() {
    if (bench.looking().isPresent()) {
      bench.look(Optional.empty());
      desk.say("Drawn as it is again.");
      return;
    }
    desk.say(bench.undo().map(done -> "Undone: " + done + ".").orElse("Nothing to undo."));
  }

  void redo() {
    desk.say(bench.redo().map(done -> "Done again: " + done + ".").orElse("Nothing to redo."));
  }

  private void show() {
    if (isDisposed()) {
      return;
    }
    boolean nothing = bench.sketch().equals(Sketch.EMPTY);
    Layouts.present(empty, nothing);
    Layouts.present(head, !nothing);
    head.show(bench.sketch(), bench.shown());
    if (!name.getText().strip().equals(bench.sketch().name())) {
      name.setText(bench.sketch().name());
    }
    draw();
    side.show();
    if (!bench.dragging()) {
      undo.setEnabled(bench.canUndo());
      redo.setEnabled(bench.canRedo());
      rest();
    }
  }

  private void draw() {
    Sketch sketch = bench.sketch();
    if (!drawn.possible(choice, sketch)) {
      choice = ViewChoice.SEAT;
    }
    views.show(choice, each -> drawn.possible(each, sketch) && bench.reply().answer().isPresent());
    Drawn.Shown shown = drawn.draw(choice, bench, desk.unit(), legend.spokes());
    legend.show(choice == ViewChoice.SEAT && bench.reply().answer().isPresent());
    shown.drawing().ifPresentOrElse(canvas::redrawn, canvas::clear);
    Layouts.say(words, shown.words());
    Layouts.say(more, shown.more());
    Layouts.say(remark, shown.remark());
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
    desk.remember(SeatPage.ID, "draft", Draft.write(bench.sketch()));
  }

  private void lookChanged() {
    if (!isDisposed()) {
      side.unitChanged();
      views.unitChanged();
      show();
      layout(true, true);
    }
  }

  /** Puts the keyboard where the work begins. */
  void begin() {
    if (bench.sketch().shape().drawable()) {
      canvas.setFocus();
    } else {
      side.flat().grid().go(0, 0);
    }
  }

  DrawingCanvas canvas() {
    return canvas;
  }

  SidePanel side() {
    return side;
  }

  Bench bench() {
    return bench;
  }

  SeatDeeds deeds() {
    return deeds;
  }

  VerdictHead head() {
    return head;
  }

  ViewBar views() {
    return views;
  }

  LegendBar legend() {
    return legend;
  }

  Text name() {
    return name;
  }

  ViewChoice choice() {
    return choice;
  }

  /** Returns what is said below the drawing. */
  List<String> told() {
    return List.of(words, more, remark).stream()
        .map(each -> each.getText().replace("&&", "&"))
        .toList();
  }
}
