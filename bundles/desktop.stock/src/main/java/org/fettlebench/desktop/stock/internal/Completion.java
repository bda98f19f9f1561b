package org.fettlebench.desktop.stock.internal;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;

/** Completes what is typed into a field from what is known; the added part stays selected. */
final class Completion {
  private final Combo field;
  private final Supplier<List<String>> known;

  private Completion(Combo field, Supplier<List<String>> known) {
    this.field = field;
    this.known = known;
  }

  static void on(Combo field, Supplier<List<String>> known) {
    Completion completion = new Completion(field, known);
    field.addListener(SWT.KeyUp, completion::typed);
  }

  private void typed(Event event) {
    boolean letter = event.character > ' ' && event.character != SWT.DEL;
    if (letter && (event.stateMask & (SWT.MOD1 | SWT.ALT)) == 0) {
      String begun = field.getText();
      of(known.get(), begun)
          .ifPresent(
              whole -> {
                field.setText(whole);
                field.setSelection(new Point(begun.length(), whole.length()));
              });
    }
  }

  /** Returns the first of the known texts that begins so and goes on, whatever the case. */
  static Optional<String> of(List<String> known, String begun) {
    String start = begun.toLowerCase(Locale.ROOT);
    return known.stream()
        .filter(text -> !start.isBlank() && text.length() > begun.length())
        .filter(text -> text.toLowerCase(Locale.ROOT).startsWith(start))
        .findFirst()
        .map(text -> begun + text.substring(begun.length()));
  }
}
