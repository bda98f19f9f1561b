package org.fettlebench.desktop.stock.internal;

import java.util.HashMap;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/**
 * Lets single letters begin deeds while a list has the keyboard, before the list takes them for its
 * find box. Other signs still go there.
 */
final class LetterKeys {
  private final Control list;
  private final Map<Character, Runnable> actions = new HashMap<>();

  LetterKeys(Control list) {
    this.list = list;
    Listener filter = this::key;
    list.getDisplay().addFilter(SWT.KeyDown, filter);
    list.addListener(SWT.Dispose, event -> list.getDisplay().removeFilter(SWT.KeyDown, filter));
  }

  void on(char letter, Runnable action) {
    actions.put(Character.toUpperCase(letter), action);
  }

  private void key(Event event) {
    Runnable action = actions.get(Character.toUpperCase(event.character));
    boolean plain = (event.stateMask & (SWT.MOD1 | SWT.ALT)) == 0;
    if (event.widget == list && plain && action != null) {
      // Taken away whole: the field the action goes to must not get the letter as well.
      event.doit = false;
      event.type = SWT.None;
      action.run();
    }
  }
}
