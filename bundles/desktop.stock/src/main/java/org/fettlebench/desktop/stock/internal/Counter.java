package org.fettlebench.desktop.stock.internal;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.ScrollPane;

/** The place on the page where a thing is handed over: the chosen line, and the form for a deed. */
final class Counter {
  private static final String HINT =
      "In the list the letter in brackets begins, then the number, then Enter: T 6 Enter takes six.";

  private final ScrollPane pane;
  private final Look look;
  private final Label heading;
  private final Label figures;
  private final Composite body;
  private boolean form;
  private List<StockRow> chosen = List.of();

  Counter(Composite parent, Look look) {
    this.look = look;
    pane = new ScrollPane(parent, look);
    GridLayout grid = (GridLayout) pane.body().getLayout();
    grid.marginRight = Layouts.MARGIN;
    grid.verticalSpacing = 4;
    heading = Layouts.label(pane.body(), look.heading(), "");
    heading.setForeground(look.ink());
    figures = Layouts.text(pane.body(), look, "");
    body = Layouts.wide(Layouts.columns(pane.body(), 1));
    ((GridLayout) body.getLayout()).verticalSpacing = 4;
    choose(List.of());
    rest();
  }

  Control control() {
    return pane;
  }

  /** Shows which lines are chosen. */
  void choose(List<StockRow> rows) {
    chosen = rows;
    say(form ? heading.getText() : Layouts.escaped(title()), sentence());
  }

  /** Returns the line that a deed is for: the one chosen. */
  Optional<StockRow> line() {
    return chosen.size() == 1 ? Optional.of(chosen.get(0)) : Optional.empty();
  }

  private String title() {
    return switch (chosen.size()) {
      case 0 -> "No line chosen";
      case 1 -> chosen.get(0).goods().name();
      default -> chosen.size() + " lines chosen";
    };
  }

  private String sentence() {
    if (chosen.isEmpty()) {
      return "Choose a line of the list.";
    }
    if (chosen.size() > 1) {
      return "Ctrl+C copies them. To take, count or lend, choose one line.";
    }
    return sentence(chosen.get(0));
  }

  private static String sentence(StockRow row) {
    String out =
        row.line().lent() == 0 ? "" : "; " + row.line().lent() + " out with " + row.line().holder();
    String mark = row.line().lowMark().map(m -> "; low mark " + m).orElse("");
    return Figures.count(row.line().present(), "is", "are")
        + " in "
        + row.line().place()
        + out
        + mark
        + (row.is(Standing.WORN) ? "; worn" : "")
        + ".";
  }

  private void say(String escapedTitle, String sentence) {
    heading.setText(escapedTitle);
    figures.setText(Layouts.escaped(sentence));
    pane.fit();
  }

  /** Empties the body under a new title, so that a form can be put in it. */
  Composite form(String title) {
    form = true;
    heading.setText(Layouts.escaped(title));
    // What is received has nothing to do with the line that happens to be chosen.
    boolean aside = title.startsWith("Receive");
    figures.setVisible(!aside);
    ((GridData) figures.getLayoutData()).exclude = aside;
    return emptied();
  }

  private Composite emptied() {
    for (Control child : body.getChildren()) {
      child.dispose();
    }
    return body;
  }

  /** Shows what can be done, instead of a form. */
  void rest() {
    form = false;
    figures.setVisible(true);
    ((GridData) figures.getLayoutData()).exclude = false;
    heading.setText(Layouts.escaped(title()));
    Layouts.remark(emptied(), look, HINT);
    fit();
  }

  /** Shows a form that was put in the body. */
  void fit() {
    body.requestLayout();
    pane.fit();
  }
}
