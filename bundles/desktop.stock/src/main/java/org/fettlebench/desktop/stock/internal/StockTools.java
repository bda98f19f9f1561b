package org.fettlebench.desktop.stock.internal;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.LongList;

/** Every action of the page: as buttons, in the list's menu, and by letters in the list. */
final class StockTools {
  /**
   * An action.
   *
   * @param text its button, an ampersand before its letter
   * @param letter by which it begins in the list; a blank where there is none
   * @param needsLine whether it needs one chosen line
   */
  record Action(String text, char letter, boolean needsLine, Runnable does) {
    /** Returns the button's text with the letter that begins it in the list. */
    String label() {
      return letter == ' ' ? text : text + " (" + letter + ")";
    }

    static Action always(String text, char letter, Runnable does) {
      return new Action(text, letter, false, does);
    }
  }

  private final List<Button> ofLine = new ArrayList<>();

  StockTools(Composite parent, Look look, List<Action> actions) {
    Composite row = Layouts.flow(parent);
    for (Action action : actions) {
      Button button = Layouts.button(row, look, action.label(), action.does());
      button.setLayoutData(null);
      if (action.needsLine()) {
        ofLine.add(button);
      }
    }
  }

  /** Says whether there is one line to do something with. */
  void haveLine(boolean one) {
    ofLine.forEach(button -> button.setEnabled(one));
  }

  static void keys(LongList<?> list, List<Action> actions) {
    LetterKeys keys = new LetterKeys(list.table());
    actions.stream().filter(a -> a.letter() != ' ').forEach(a -> keys.on(a.letter(), a.does()));
  }

  static void menu(LongList<?> list, List<Action> actions) {
    Menu menu = new Menu(list.table());
    for (Action action : actions) {
      String letter = action.letter() == ' ' ? "" : "\t" + action.letter();
      item(menu, action.text() + letter, action.does());
    }
    new MenuItem(menu, SWT.SEPARATOR);
    item(menu, "Cop&y\tCtrl+C", list::copy);
    list.table().setMenu(menu);
  }

  private static void item(Menu menu, String text, Runnable does) {
    MenuItem item = new MenuItem(menu, SWT.PUSH);
    item.setText(text);
    item.addListener(SWT.Selection, event -> does.run());
  }
}
