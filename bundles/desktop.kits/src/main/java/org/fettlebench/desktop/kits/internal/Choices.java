package org.fettlebench.desktop.kits.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.Section;
import org.fettlebench.desktop.widgets.VerdictBadge;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.kits.JointReport;

/** What may be done instead, one of which may be tried on the drawing. */
final class Choices {
  private final Desk desk;
  private final Consumer<Optional<Choice>> tried;
  private final List<Button> buttons = new ArrayList<>();
  private Font font;
  private List<Optional<Choice>> offered = List.of();

  Choices(Desk desk, Consumer<Optional<Choice>> tried) {
    this.desk = desk;
    this.tried = tried;
    font = desk.look().text();
  }

  /** Fills a section with the cures and substitutes of a joint, the one being tried marked. */
  void fill(Section section, JointReport report, Optional<Choice> now, Font type) {
    buttons.clear();
    font = type;
    List<Optional<Choice>> all = new ArrayList<>();
    Composite body = section.body();
    GridLayout grid = Layouts.grid(2, 0);
    grid.horizontalSpacing = Layouts.GAP / 4;
    body.setLayout(grid);
    if (Choice.all(report).isEmpty()) {
      across(Layouts.remark(body, desk.look(), none(report)));
      offered = List.of();
      return;
    }
    add(body, all, Optional.empty(), now);
    Choice.cures(report).forEach(cure -> add(body, all, Optional.of(cure), now));
    List<Choice> others = Choice.substitutes(report);
    if (!others.isEmpty()) {
      across(Layouts.remark(body, desk.look(), "Other fasteners in stock, least change first"));
    }
    others.forEach(other -> add(body, all, Optional.of(other), now));
    offered = List.copyOf(all);
  }

  private static String none(JointReport report) {
    return report.wanting()
        ? "Nothing in stock and no change of the seat cures this; see why."
        : "None needed.";
  }

  private static void across(Control control) {
    ((GridData) control.getLayoutData()).horizontalSpan = 2;
  }

  private void add(
      Composite body, List<Optional<Choice>> all, Optional<Choice> choice, Optional<Choice> now) {
    int number = all.size();
    all.add(choice);
    String words = choice.map(Choice::sentence).orElse("As the kit has it");
    Button button = new Button(body, SWT.RADIO);
    button.setLayoutData(new GridData(SWT.LEFT, SWT.BEGINNING, false, false));
    button.setSelection(choice.equals(now));
    button.setToolTipText(number < 10 ? "Ctrl+" + number : words);
    button.addListener(SWT.Selection, event -> pressed(button, choice));
    button.getAccessible().addAccessibleListener(named(words));
    buttons.add(button);
    Composite column = Layouts.wide(Layouts.columns(body, 1));
    ((GridLayout) column.getLayout()).verticalSpacing = 0;
    Label sentence = Layouts.text(column, desk.look(), words);
    sentence.setFont(font);
    clickable(sentence, number);
    choice
        .map(Choice::detail)
        .filter(detail -> !detail.isBlank())
        .ifPresent(detail -> clickable(Layouts.remark(column, desk.look(), detail), number));
    choice.flatMap(Choice::after).ifPresent(after -> then(column, after));
  }

  private void then(Composite column, org.fettlebench.fits.SeatAnswer after) {
    VerdictBadge badge = new VerdictBadge(column, desk.look());
    if (font.equals(desk.look().small())) {
      badge.small();
    }
    badge.show(Marks.of(after.verdict()), SeatWords.then(after, desk.unit()));
  }

  private void clickable(Control control, int number) {
    control.addListener(SWT.MouseUp, event -> choose(number));
  }

  private void pressed(Button button, Optional<Choice> choice) {
    if (button.getSelection()) {
      tried.accept(choice);
    }
  }

  /** Tries the choice with a number; 0 is as the kit has it. */
  void choose(int number) {
    if (number >= 0 && number < buttons.size()) {
      for (int i = 0; i < buttons.size(); i++) {
        buttons.get(i).setSelection(i == number);
      }
      tried.accept(offered.get(number));
    }
  }

  private static AccessibleAdapter named(String words) {
    return new AccessibleAdapter() {
      @Override
      public void getName(AccessibleEvent event) {
        event.result = words;
      }
    };
  }
}
