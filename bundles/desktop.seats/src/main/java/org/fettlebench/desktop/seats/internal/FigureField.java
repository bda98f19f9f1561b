package org.fettlebench.desktop.seats.internal;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.MeasureException;

/** A length in one line: what is typed, and beside it the same in the other unit. */
final class FigureField extends Composite {
  private final Desk desk;
  private final Text text;
  private final Label other;
  private final Consumer<Optional<Length>> typed;
  private Optional<Length> shown = Optional.empty();
  private boolean showing;
  private boolean brief;

  /**
   * Makes an empty field.
   *
   * @param typed told each time a length is typed, or the field emptied; not of what is no length
   */
  FigureField(Composite parent, Desk desk, Consumer<Optional<Length>> typed) {
    super(parent, SWT.NONE);
    this.desk = desk;
    this.typed = typed;
    setLayout(Layouts.grid(2, 0));
    setBackground(parent.getBackground());
    text = new Text(this, SWT.SINGLE | SWT.BORDER);
    text.setFont(desk.look().text());
    text.setBackground(desk.look().sheet());
    text.setForeground(desk.look().ink());
    Layouts.characters(text, 9);
    other = Layouts.remark(this, desk.look(), " ");
    ((GridData) other.getLayoutData()).verticalAlignment = SWT.CENTER;
    text.addListener(SWT.Modify, event -> read());
  }

  FigureField hint(String words) {
    text.setMessage(words);
    return this;
  }

  /** Shows the unit alone beside the field; the other unit when the pointer rests on it. */
  FigureField brief() {
    brief = true;
    Layouts.characters(text, 6);
    // The unit alone is short and is not to be broken.
    other.setLayoutData(new GridData(SWT.LEFT, SWT.CENTER, false, false));
    tell(shown);
    return this;
  }

  Text text() {
    return text;
  }

  /** Shows a length; what a person is typing is not touched while it means the same. */
  void show(Optional<Length> length) {
    if (!length.equals(shown) || length.isPresent() && text.getText().isBlank()) {
      showing = true;
      shown = length;
      text.setText(length.map(each -> Figures.typed(each, desk.unit())).orElse(""));
      tell(shown);
      showing = false;
    }
  }

  /** Writes the figure anew in the unit of now. */
  void unitChanged() {
    Optional<Length> length = shown;
    shown = Optional.empty();
    show(length);
  }

  private void read() {
    if (showing) {
      return;
    }
    String words = text.getText().strip();
    try {
      shown =
          words.isEmpty() ? Optional.empty() : Optional.of(LengthReader.read(words, desk.unit()));
      tell(shown);
      typed.accept(shown);
    } catch (MeasureException refused) {
      text.setForeground(desk.look().bad());
      other.setText("no length yet");
      text.setToolTipText(refused.getMessage());
    }
  }

  private void tell(Optional<Length> length) {
    text.setForeground(desk.look().ink());
    LengthUnit unit = desk.unit();
    LengthUnit second = unit == LengthUnit.INCH ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
    String same = length.map(each -> " = " + LengthFormat.show(each, second)).orElse("");
    text.setToolTipText(
        brief && !same.isEmpty() ? text.getText() + " " + unit.symbol() + same : null);
    other.setText(unit.symbol() + (brief ? "" : same));
  }
}
