package org.fettlebench.desktop.kits.internal;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.DrawingCanvas;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.ScrollPane;
import org.fettlebench.desktop.widgets.Section;
import org.fettlebench.desktop.widgets.Split;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatDrawings;
import org.fettlebench.kits.JointReport;

/** The chosen joint: verdict, drawing to scale, why, cures, what to fetch. */
final class JointPanel extends ScrolledComposite {
  /** Height in pixels, at usual text size, below which the whole scrolls. */
  private static final int LEAST_HEIGHT = 400;

  /** Widths in pixels, at usual text size, from which two and three lists stand side by side. */
  private static final int TWO_LISTS = 360;

  private static final int THREE_LISTS = 470;

  /** Width from which the lists are set in usual type rather than small. */
  private static final int USUAL_TYPE = 720;

  private final Desk desk;
  private final SeatDrawings drawings;
  private final Composite whole;
  private final JointHead head;
  private final DrawingCanvas canvas;
  private final ScrollPane pane;
  private final Section why;
  private final Section cures;
  private final Section fetch;
  private final Choices choices;
  private final Reasons reasons;
  private boolean small;
  private Optional<JointReport> shown = Optional.empty();
  private Optional<Choice> choice = Optional.empty();

  JointPanel(Composite parent, Desk desk, SeatDrawings drawings) {
    super(parent, SWT.V_SCROLL);
    this.desk = desk;
    this.drawings = drawings;
    choices = new Choices(desk, this::attempt);
    reasons = new Reasons(desk.look());
    setBackground(parent.getBackground());
    setExpandHorizontal(true);
    setExpandVertical(true);
    whole = new Composite(this, SWT.NONE);
    whole.setBackground(getBackground());
    whole.setLayout(Layouts.grid(1, 0));
    setContent(whole);
    setMinHeight((int) (LEAST_HEIGHT * desk.look().scale()));
    head = new JointHead(whole, desk, () -> choices.choose(0));
    Split split = new Split(whole, desk, SWT.VERTICAL, KitPage.ID, "drawing-lists");
    canvas = new DrawingCanvas(split.form(), desk);
    pane = new ScrollPane(split.form(), desk.look());
    why = new Section(pane.body(), desk.look(), "Why");
    cures = new Section(pane.body(), desk.look(), "Cures");
    fetch = new Section(pane.body(), desk.look(), "Fetch");
    pane.addListener(SWT.Resize, event -> resized());
    split.share(46, 54);
  }

  /** Shows a joint; the same one again keeps what is being tried and the view of its drawing. */
  void show(JointReport report) {
    boolean same =
        shown.filter(old -> old.joint().name().equals(report.joint().name())).isPresent();
    choice = same ? choice.filter(Choice.all(report)::contains) : Optional.empty();
    shown = Optional.of(report);
    head.show(report, choice);
    lists(report);
    draw(!same);
    if (!same) {
      pane.setOrigin(0, 0);
    }
  }

  private void lists(JointReport report) {
    setRedraw(false);
    small = width() < USUAL_TYPE;
    Font font = small ? desk.look().small() : desk.look().text();
    reasons.fill(why.clear(), report, font);
    choices.fill(cures.clear(), report, choice, font);
    reasons.fetch(fetch.clear(), report, font);
    flow();
    setRedraw(true);
  }

  /** Tries something else, or goes back to what the kit means. */
  private void attempt(Optional<Choice> wanted) {
    if (!wanted.equals(choice)) {
      choice = wanted;
      shown.ifPresent(report -> head.show(report, choice));
      whole.layout();
      draw(false);
      desk.say(
          choice
              .map(each -> "The drawing shows it with: " + each.sentence() + ".")
              .orElse("The drawing shows it as the kit has it."));
    }
  }

  private void draw(boolean whole) {
    Optional<SeatAnswer> seat =
        choice.isPresent() ? choice.get().after() : shown.flatMap(JointReport::seat);
    if (seat.isEmpty()) {
      canvas.clear();
      shown.ifPresent(report -> canvas.whenEmpty(unmeasured(report)));
    } else if (whole || canvas.drawing().isEmpty()) {
      canvas.show(drawings.draw(seat.get(), desk.unit()));
    } else {
      canvas.redrawn(drawings.draw(seat.get(), desk.unit()));
    }
  }

  private static String unmeasured(JointReport report) {
    return report.joint().seat().isPresent()
        ? "The seat was measured, but could not be checked.\nWhy, is said below."
        : """
          No seat was measured for this joint, so there is nothing to draw.
          Measure the flat and write it into the kit file:

          [[seat]]
          name = "my flat"
          outline = [["0 mm", "0 mm"], ["12 mm", "0 mm"], \u2026]
          centre = ["6 mm", "5 mm"]

          and in the joint:  seat = "my flat",  method = "jig"
          """
            .stripTrailing();
  }

  private double width() {
    return pane.getClientArea().width / desk.look().scale();
  }

  private void resized() {
    if (small == width() < USUAL_TYPE) {
      flow();
    } else {
      shown.ifPresent(this::lists);
    }
  }

  /** Puts the lists beside each other where there is room, else under each other. */
  private void flow() {
    double width = width();
    int columns = width >= THREE_LISTS ? 3 : width >= TWO_LISTS ? 2 : 1;
    GridLayout grid = (GridLayout) pane.body().getLayout();
    grid.numColumns = columns;
    grid.makeColumnsEqualWidth = true;
    grid.horizontalSpacing = small ? Layouts.GAP : 2 * Layouts.GAP;
    ((GridData) why.getLayoutData()).verticalSpan = columns == 2 ? 2 : 1;
    pane.fit();
  }

  /** Writes everything anew, after the unit, the text size or the theme changed. */
  void lookChanged() {
    setMinHeight((int) (LEAST_HEIGHT * desk.look().scale()));
    shown.ifPresent(this::show);
  }

  /** Tries the choice with a number; 0 is as the kit has it. */
  void choose(int number) {
    choices.choose(number);
  }

  Optional<JointReport> shown() {
    return shown;
  }

  Optional<Choice> choice() {
    return choice;
  }

  DrawingCanvas canvas() {
    return canvas;
  }

  /** Returns the lists below the drawing, for tests. */
  Control lists() {
    return pane;
  }
}
