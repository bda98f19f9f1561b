package org.fettlebench.desktop.seats.internal;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.VerdictBadge;
import org.fettlebench.desktop.widgets.VerdictMark;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.Verdict;

/**
 * The answer above the drawing: word, allowance, chance, what governs. Its height never changes.
 */
final class VerdictHead extends Composite {
  private final Desk desk;
  private final SeatBook book;
  private final VerdictBadge badge;
  private final Label allowance;
  private final Button cures;
  private final Label chance;
  private final Label governs;

  VerdictHead(Composite parent, Desk desk, SeatBook book, Runnable toCures) {
    super(parent, SWT.NONE);
    this.desk = desk;
    this.book = book;
    GridLayout grid = Layouts.grid(3, 0);
    grid.verticalSpacing = 2;
    setLayout(grid);
    setBackground(parent.getBackground());
    Layouts.wide(this);
    badge = new VerdictBadge(this, desk.look()).large();
    GridData data = new GridData(SWT.LEFT, SWT.CENTER, false, false);
    data.verticalSpan = 3;
    data.widthHint = (int) (150 * desk.look().scale());
    badge.setLayoutData(data);
    allowance = line(desk.look().strong());
    cures = Layouts.button(this, desk.look(), "Cures", toCures);
    cures.setToolTipText("What would make the head sit, beside the drawing");
    GridData end = new GridData(SWT.RIGHT, SWT.CENTER, false, false);
    end.verticalSpan = 3;
    cures.setLayoutData(end);
    chance = line(desk.look().text());
    governs = line(desk.look().small());
    governs.setForeground(desk.look().faint());
  }

  private Label line(org.eclipse.swt.graphics.Font font) {
    Label line = new Label(this, SWT.NONE);
    line.setFont(font);
    line.setForeground(desk.look().ink());
    line.setBackground(getBackground());
    line.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    return line;
  }

  void show(Sketch sketch, Reply reply) {
    Optional<SeatAnswer> answer = reply.answer();
    // It keeps its room while it is not wanted, so that nothing moves.
    cures.setVisible(answer.filter(each -> each.verdict() != Verdict.CLEARS).isPresent());
    if (answer.isEmpty()) {
      badge.show(
          reply.wrong() ? VerdictMark.STRUCK : VerdictMark.OPEN,
          reply.wrong() ? "cannot be" : "not yet");
      // A line has no room for a whole sentence; its remedy stands on the next.
      String[] said = reply.next().split("(?<=;) ", 2);
      say(allowance, said[0]);
      say(chance, said.length > 1 ? SeatWords.upper(said[1]) : "");
      say(governs, "");
      return;
    }
    SeatAnswer said = answer.get();
    badge.show(SeatWords.mark(said.verdict()), said.verdict().word());
    say(allowance, SeatWords.allowance(said, desk.unit()));
    say(chance, chance(sketch, said));
    say(governs, SeatWords.governs(said, desk.unit()));
  }

  /** Says how many of a hundred holes so placed would do, and what is to be expected. */
  private String chance(Sketch sketch, SeatAnswer answer) {
    Optional<HoleMethod> method = book.method(sketch);
    String expected =
        "Expected within " + SeatWords.both(answer.question().expectedErrorMm(), desk.unit());
    return method
        .map(
            each ->
                "Chance of success "
                    + SeatWords.percent(
                        each.law()
                            .chanceWithin(answer.allowed(), answer.question().seat().intended()))
                    + ". "
                    + expected
                    + ".")
        .orElse(expected + ".");
  }

  private static void say(Label label, String words) {
    String escaped = Layouts.escaped(words);
    if (!label.getText().equals(escaped)) {
      label.setText(escaped);
      label.setToolTipText(words);
    }
  }

  String words() {
    return badge.word() + ". " + allowance.getText() + " " + chance.getText();
  }
}
