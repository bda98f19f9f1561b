package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.VerdictBadge;
import org.fettlebench.desktop.widgets.VerdictMark;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.fits.Verdict;

/**
 * The answer above the drawing: word, allowance, chance, what governs. Its height never changes.
 */
final class VerdictHead extends Composite {
  /** Room for any verdict, so that the words beside it do not move. */
  private static final int BADGE_PIXELS = 128;

  private final Desk desk;
  private final SeatBook book;
  private final VerdictBadge badge;
  private final Label allowance;
  private final Button cures;
  private final Label chance;
  private final Label governs;
  private Runnable again = () -> {};

  VerdictHead(Composite parent, Desk desk, SeatBook book, Runnable toCures) {
    super(parent, SWT.NONE);
    this.desk = desk;
    this.book = book;
    GridLayout grid = Layouts.grid(3, 0);
    grid.verticalSpacing = 2;
    setLayout(grid);
    setBackground(parent.getBackground());
    Layouts.wide(this);
    boolean large = Form.large(desk);
    badge = new VerdictBadge(this, desk.look()).large();
    GridData data = new GridData(SWT.LEFT, SWT.CENTER, false, false);
    data.verticalSpan = large ? 1 : 2;
    data.horizontalSpan = large ? 2 : 1;
    data.widthHint = large ? SWT.DEFAULT : BADGE_PIXELS;
    badge.setLayoutData(data);
    cures = Layouts.button(this, desk.look(), "Cures", toCures);
    cures.setToolTipText("What would make the head sit, beside the drawing");
    GridData end = new GridData(SWT.RIGHT, SWT.CENTER, large, false);
    end.verticalSpan = data.verticalSpan;
    cures.setLayoutData(end);
    allowance = line(desk.look().strong(), large);
    allowance.addListener(SWT.Resize, event -> again.run());
    if (!large) {
      cures.moveBelow(allowance);
    }
    chance = line(desk.look().text(), large);
    governs = line(desk.look().small(), true);
    governs.setForeground(desk.look().faint());
  }

  private Label line(Font font, boolean across) {
    Label line = new Label(this, SWT.NONE);
    line.setFont(font);
    line.setForeground(desk.look().ink());
    line.setBackground(getBackground());
    GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
    data.horizontalSpan = across ? 3 : 1;
    data.widthHint = 40;
    line.setLayoutData(data);
    return line;
  }

  void show(Sketch sketch, Reply reply) {
    again = () -> show(sketch, reply);
    Optional<SeatAnswer> answer = reply.answer();
    cures(answer.filter(each -> each.verdict() != Verdict.CLEARS).isPresent());
    if (answer.isEmpty()) {
      badge.show(
          reply.wrong() ? VerdictMark.STRUCK : VerdictMark.OPEN,
          reply.wrong() ? "cannot be" : "not yet");
      // A line has no room for a whole sentence; the rest stands on those below.
      List<String> said = broken(reply.next());
      say(allowance, said.get(0));
      say(chance, said.size() > 1 ? said.get(1) : "");
      say(governs, said.size() > 2 ? said.get(2) : "");
      return;
    }
    SeatAnswer said = answer.get();
    badge.show(SeatMarks.of(said.verdict()), said.verdict().word());
    say(allowance, SeatWords.allowance(said, desk.unit()));
    say(chance, chance(sketch, said));
    say(governs, SeatWords.governs(said, desk.unit()));
  }

  /** While there is nothing to cure the lines have the button's room. */
  private void cures(boolean wanted) {
    boolean large = Form.large(desk);
    if (((GridData) cures.getLayoutData()).exclude == wanted) {
      span(badge, large && !wanted ? 3 : large ? 2 : 1);
      span(allowance, large ? 3 : wanted ? 1 : 2);
      span(chance, large ? 3 : wanted ? 1 : 2);
      Layouts.present(cures, wanted);
    }
  }

  private static void span(Control control, int columns) {
    ((GridData) control.getLayoutData()).horizontalSpan = columns;
  }

  /** Says how many of a hundred holes so placed would do, and what is to be expected. */
  private String chance(Sketch sketch, SeatAnswer answer) {
    String expected =
        "Expected within " + SeatWords.both(answer.question().expectedErrorMm(), desk.unit()) + ".";
    OptionalDouble chance = book.chance(sketch, answer);
    return chance.isEmpty()
        ? expected
        : "Chance of success " + SeatWords.percent(chance.getAsDouble()) + ". " + expected;
  }

  /** Returns a sentence in the lines that it needs, broken between words. */
  private List<String> broken(String sentence) {
    List<String> lines = new ArrayList<>();
    int room = allowance.getSize().x;
    GC gc = new GC(allowance);
    gc.setFont(allowance.getFont());
    StringBuilder line = new StringBuilder();
    for (String word : sentence.split(" ")) {
      boolean full = lines.size() < 2 && room > 0 && gc.textExtent(line + word).x > room;
      if (full && line.length() > 0) {
        lines.add(line.toString().strip());
        line.setLength(0);
      }
      line.append(word).append(' ');
    }
    gc.dispose();
    lines.add(line.toString().strip());
    return lines;
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
