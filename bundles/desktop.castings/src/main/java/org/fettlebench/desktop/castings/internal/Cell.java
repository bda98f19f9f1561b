package org.fettlebench.desktop.castings.internal;

import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;

/** A field for a figure. What is typed stays as it was typed, also while it is no length. */
final class Cell {
  private final Desk desk;
  private final Text text;
  private boolean showing;

  /**
   * Makes an empty field.
   *
   * @param characters its width
   * @param typed told of every change by a person
   */
  Cell(Composite parent, Desk desk, int characters, Consumer<Entry> typed) {
    this.desk = desk;
    text = new Text(parent, SWT.SINGLE | SWT.BORDER | SWT.RIGHT);
    text.setFont(desk.look().text());
    text.setBackground(desk.look().sheet());
    text.setForeground(desk.look().ink());
    Layouts.characters(text, characters);
    text.addListener(
        SWT.Modify,
        event -> {
          if (!showing) {
            Entry entry = Entry.read(text.getText(), desk.unit());
            dress(entry);
            typed.accept(entry);
          }
        });
  }

  Text text() {
    return text;
  }

  /** Says to a screen reader what the field is for. */
  Cell named(String name) {
    text.getAccessible()
        .addAccessibleListener(
            new AccessibleAdapter() {
              @Override
              public void getName(AccessibleEvent event) {
                event.result = name;
              }
            });
    return this;
  }

  /** Shows an entry; a field that means it already is left as it was typed. */
  void show(Entry entry) {
    text.setEditable(true);
    if (!Entry.read(text.getText(), desk.unit()).equals(entry)) {
      put(entry.shown(desk.unit()));
    }
    dress(entry);
  }

  /** Shows an entry written anew, in the unit of now. */
  void showAnew(Entry entry) {
    put(entry.shown(desk.unit()));
    dress(entry);
  }

  /** Shows words that cannot be typed over here. */
  void fixed(String words) {
    text.setEditable(false);
    if (!text.getText().equals(words)) {
      put(words);
    }
    text.setForeground(desk.look().faint());
  }

  /** Shows a figure that holds while nothing is typed. */
  void hint(String words) {
    if (!text.getMessage().equals(words)) {
      text.setMessage(words);
    }
  }

  private void put(String words) {
    showing = true;
    text.setText(words);
    showing = false;
  }

  private void dress(Entry entry) {
    text.setForeground(entry.wrong() ? desk.look().bad() : desk.look().ink());
    text.setToolTipText(entry.wrong() ? entry.trouble() : null);
  }
}
