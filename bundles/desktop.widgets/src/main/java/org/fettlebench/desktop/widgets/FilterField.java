package org.fettlebench.desktop.widgets;

import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Desk;

/**
 * A field to narrow a list by typing. Esc empties it, Down goes to the list; what is typed into the
 * list comes here. Beside it stands how many rows are left.
 */
public final class FilterField extends Composite {
  private final Text text;
  private final Label count;
  private Consumer<String> typed = words -> {};
  private Runnable down = () -> {};

  /**
   * Makes the field.
   *
   * @param hint shown while it is empty: what may be typed, such as "2 BA hexagon brass"
   */
  public FilterField(Composite parent, Desk desk, String hint) {
    super(parent, SWT.NONE);
    setLayout(Layouts.grid(2, 0));
    setBackground(parent.getBackground());
    text = Layouts.wide(new Text(this, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL));
    text.setMessage(hint);
    text.setFont(desk.look().text());
    text.setBackground(desk.look().sheet());
    text.setForeground(desk.look().ink());
    count = Layouts.word(this, desk.look(), "");
    count.setForeground(desk.look().faint());
    text.addListener(SWT.Modify, event -> typed.accept(text.getText()));
    text.addListener(SWT.KeyDown, this::key);
  }

  /** Ties the field to its list. */
  public <T> FilterField narrows(LongList<T> list) {
    typed = list::filter;
    down = list::setFocus;
    list.onTyped(this::takeOver);
    list.whileEmpty(text::setFocus);
    list.onCount(this::tell);
    return this;
  }

  /** Is told what is typed, for a list of another kind. */
  public FilterField onTyped(Consumer<String> listener) {
    typed = listener;
    return this;
  }

  /** Is told when Down is pressed, for a list of another kind. */
  public FilterField onDown(Runnable listener) {
    down = listener;
    return this;
  }

  /** Puts words into the field, as if typed. */
  public void type(String words) {
    text.setText(words);
    text.setSelection(words.length());
  }

  /** Returns what is typed. */
  public String typed() {
    return text.getText();
  }

  private void takeOver(String letter) {
    text.setFocus();
    type(text.getText() + letter);
  }

  private void tell(int shown, int total) {
    count.setText(shown == total ? String.valueOf(total) : shown + " of " + total);
    count.requestLayout();
  }

  private void key(Event event) {
    if (event.keyCode == SWT.ESC && !text.getText().isEmpty()) {
      text.setText("");
      event.doit = false;
    } else if (event.keyCode == SWT.ARROW_DOWN) {
      down.run();
      event.doit = false;
    }
  }

  @Override
  public boolean setFocus() {
    return text.setFocus();
  }
}
