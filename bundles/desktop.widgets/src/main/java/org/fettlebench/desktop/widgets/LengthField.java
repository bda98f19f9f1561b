package org.fettlebench.desktop.widgets;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Desk;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.MeasureException;

/**
 * A field for a length as it is typed in a workshop: {@code 5/32}, {@code 3.97 mm}, {@code 10
 * thou}. A bare number is taken in the unit written beside the field. Under it stands what was
 * understood, both ways, or what is wrong.
 */
public final class LengthField extends Composite {
  private final Desk desk;
  private final Text text;
  private final Label unit;
  private final Label under;
  private Consumer<Optional<Length>> changed = length -> {};
  private Optional<Length> value = Optional.empty();

  /** Makes an empty field. */
  public LengthField(Composite parent, Desk desk) {
    super(parent, SWT.NONE);
    this.desk = desk;
    setLayout(Layouts.grid(2, 0));
    setBackground(parent.getBackground());
    text = new Text(this, SWT.SINGLE | SWT.BORDER);
    text.setFont(desk.look().text());
    text.setBackground(desk.look().sheet());
    text.setForeground(desk.look().ink());
    Layouts.characters(text, 14);
    unit = Layouts.word(this, desk.look(), desk.unit().symbol());
    under = Layouts.remark(this, desk.look(), " ");
    ((org.eclipse.swt.layout.GridData) under.getLayoutData()).horizontalSpan = 2;
    showUnder(false);
    text.addListener(SWT.Modify, event -> read());
    desk.onLookChange(this::showUnit);
  }

  /** Says what the field is for, as a hint while it is empty and to a screen reader. */
  public LengthField hint(String hint) {
    text.setMessage(hint);
    return this;
  }

  /** Is told each time the text is changed: the length, or nothing while it is none. */
  public LengthField onChange(Consumer<Optional<Length>> listener) {
    changed = listener;
    return this;
  }

  /** Returns the length typed, if it is one. */
  public Optional<Length> value() {
    return value;
  }

  /** Puts a length into the field. */
  public void set(Length length) {
    text.setText(desk.show(length));
  }

  /** Returns what is typed. */
  public String typed() {
    return text.getText();
  }

  /** Puts words into the field, as if typed. */
  public void type(String words) {
    text.setText(words);
  }

  /** Returns the sentence under the field: what was understood, or what is wrong. */
  public String told() {
    return under.getText().strip();
  }

  private void showUnit() {
    if (!isDisposed()) {
      unit.setText(desk.unit().symbol());
      read();
    }
  }

  private void read() {
    String typed = text.getText().strip();
    try {
      value =
          typed.isEmpty() ? Optional.empty() : Optional.of(LengthReader.read(typed, desk.unit()));
      String both = value.map(l -> LengthFormat.showBoth(l, desk.unit())).orElse(" ");
      tell(both, false);
    } catch (MeasureException refused) {
      value = Optional.empty();
      tell(refused.getMessage(), true);
    }
    changed.accept(value);
  }

  private void tell(String sentence, boolean wrong) {
    under.setText(Layouts.escaped(sentence));
    under.setForeground(wrong ? desk.look().bad() : desk.look().faint());
    boolean there = !sentence.isBlank();
    if (under.getVisible() != there) {
      showUnder(there);
      ScrollPane.around(this).ifPresent(ScrollPane::fit);
    }
    under.requestLayout();
  }

  private void showUnder(boolean there) {
    under.setVisible(there);
    ((org.eclipse.swt.layout.GridData) under.getLayoutData()).exclude = !there;
  }

  @Override
  public boolean setFocus() {
    text.selectAll();
    return text.setFocus();
  }
}
