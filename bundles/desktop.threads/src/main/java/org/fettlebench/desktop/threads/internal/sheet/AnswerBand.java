package org.fettlebench.desktop.threads.internal.sheet;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;

/**
 * The answer, the largest thing on the page, and a line under it: the reason, or what to choose
 * instead. It keeps its height, so that nothing below moves while a person types.
 */
public final class AnswerBand extends Composite {
  private final Desk desk;
  private final Label answer;
  private final Composite under;
  private final StackLayout stack = new StackLayout();
  private final Label because;
  private final Composite offers;

  /** A thing to choose. */
  public record Offer(String label, Runnable chosen) {}

  /**
   * Makes the band.
   *
   * @param lines how many lines of reason find room, 1 or more
   */
  public AnswerBand(Composite parent, Desk desk, String answerText, String reason, int lines) {
    super(parent, SWT.NONE);
    this.desk = desk;
    var grid = Layouts.grid(1, 0);
    grid.verticalSpacing = 2;
    setLayout(grid);
    setBackground(parent.getBackground());
    Layouts.wide(this);
    answer = Layouts.answer(this, desk.look(), answerText);
    under = new Composite(this, SWT.NONE);
    under.setLayout(stack);
    under.setBackground(getBackground());
    GridData room = new GridData(SWT.FILL, SWT.BEGINNING, true, false);
    under.setLayoutData(room);
    because = Layouts.text(under, desk.look(), reason);
    offers = Layouts.flow(under);
    ((RowLayout) offers.getLayout()).spacing = Layouts.GAP;
    stack.topControl = because;
    room.heightHint = height(lines);
  }

  private int height(int lines) {
    Control probe = Layouts.button(offers, desk.look(), "M6", () -> {});
    int button = probe.computeSize(SWT.DEFAULT, SWT.DEFAULT).y;
    probe.dispose();
    Label line = Layouts.word(offers, desk.look(), "M6");
    int text = line.computeSize(SWT.DEFAULT, SWT.DEFAULT).y;
    line.dispose();
    return Math.max(button, lines * text);
  }

  /** Says the answer and its reason. */
  public void say(String answerText, String reason) {
    tell(answerText);
    reason(reason, false);
  }

  /** Keeps the answer and says in place of the reason what is wrong. */
  public void refuse(String reason) {
    reason(reason, true);
  }

  /** Says the answer, and offers things to choose in place of a reason. */
  public void offer(String answerText, String question, List<Offer> choices) {
    tell(answerText);
    if (choices.isEmpty()) {
      reason(question, false);
      return;
    }
    for (Control child : offers.getChildren()) {
      child.dispose();
    }
    Layouts.word(offers, desk.look(), question).setLayoutData(null);
    for (Offer choice : choices) {
      Layouts.button(offers, desk.look(), choice.label(), choice.chosen()).setLayoutData(null);
    }
    top(offers);
    offers.layout(true);
  }

  private void reason(String reason, boolean wrong) {
    because.setText(Layouts.escaped(reason));
    because.setForeground(wrong ? desk.look().bad() : desk.look().ink());
    top(because);
  }

  private void top(Control control) {
    if (stack.topControl != control) {
      stack.topControl = control;
      under.layout();
    }
  }

  private void tell(String text) {
    String shown = Layouts.escaped(text);
    if (!shown.equals(answer.getText())) {
      int before = answer.getSize().y;
      answer.setText(shown);
      int width = answer.getSize().x;
      // The page moves only when the answer needs another line.
      if (width > 0 && answer.computeSize(width, SWT.DEFAULT).y != before) {
        requestLayout();
      }
    }
  }

  /** Returns the answer that is said. */
  public String answer() {
    return answer.getText();
  }
}
