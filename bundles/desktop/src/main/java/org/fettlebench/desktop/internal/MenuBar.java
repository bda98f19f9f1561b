package org.fettlebench.desktop.internal;

import java.util.List;
import java.util.function.BooleanSupplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.fettlebench.desktop.widgets.Cautions;
import org.fettlebench.measure.LengthUnit;

/** The menus: every action of the window, with its keys. */
final class MenuBar {
  private final MainWindow window;
  private final Shell shell;
  private final Menu bar;
  private final Menu go;

  MenuBar(MainWindow window) {
    this.window = window;
    this.shell = window.shell();
    bar = new Menu(shell, SWT.BAR);
    file();
    edit();
    go = menu("&Go");
    view();
    help();
    shell.setMenuBar(bar);
  }

  private Menu menu(String title) {
    MenuItem item = new MenuItem(bar, SWT.CASCADE);
    item.setText(title);
    Menu menu = new Menu(shell, SWT.DROP_DOWN);
    item.setMenu(menu);
    return menu;
  }

  private static MenuItem add(Menu menu, String text, int accelerator, Runnable action) {
    MenuItem item = new MenuItem(menu, SWT.PUSH);
    item.setText(text);
    item.setAccelerator(accelerator);
    item.addListener(SWT.Selection, event -> action.run());
    return item;
  }

  /** Adds a choice whose mark is set anew each time the menu opens, so that it is never stale. */
  private static void choice(Menu menu, String text, BooleanSupplier chosen, Runnable action) {
    MenuItem item = new MenuItem(menu, SWT.RADIO);
    item.setText(text);
    item.setSelection(chosen.getAsBoolean());
    menu.addListener(SWT.Show, event -> item.setSelection(chosen.getAsBoolean()));
    item.addListener(
        SWT.Selection,
        event -> {
          if (item.getSelection() && !chosen.getAsBoolean()) {
            action.run();
          }
        });
  }

  private static void separate(Menu menu) {
    new MenuItem(menu, SWT.SEPARATOR);
  }

  private void file() {
    Menu menu = menu("&File");
    add(menu, "&Print this page \u2026\tCtrl+P", SWT.MOD1 | 'P', window::print);
    separate(menu);
    add(menu, "&Name of the club \u2026", 0, window::nameClub);
    separate(menu);
    add(menu, "&Close\tCtrl+Q", SWT.MOD1 | 'Q', shell::close);
  }

  private void edit() {
    Menu menu = menu("&Edit");
    add(menu, "&Undo\tCtrl+Z", SWT.MOD1 | 'Z', window::undo);
    add(menu, "&Stop what is running\tCtrl+.", SWT.MOD1 | '.', window::stop);
    separate(menu);
    add(menu, "&Find anything\tCtrl+F", SWT.MOD1 | 'F', window::find);
  }

  private void view() {
    Menu menu = menu("&View");
    Appearance now = window.appearance();
    add(menu, "Inch or &mm\tCtrl+U", SWT.MOD1 | 'U', window::otherUnit);
    choice(
        menu,
        "Lengths in &inches",
        () -> now.unit() == LengthUnit.INCH,
        () -> window.unit(LengthUnit.INCH));
    choice(
        menu,
        "Lengths in mi&llimetres",
        () -> now.unit() == LengthUnit.MILLIMETRE,
        () -> window.unit(LengthUnit.MILLIMETRE));
    separate(menu);
    add(menu, "&Larger text\tCtrl++", SWT.MOD1 | '+', () -> window.textSize(now.neighbour(1)));
    add(
        menu,
        "&Smaller text\tCtrl+\u2212",
        SWT.MOD1 | '-',
        () -> window.textSize(now.neighbour(-1)));
    for (int size : Appearance.sizes()) {
      choice(menu, size + " %", () -> now.textSize() == size, () -> window.textSize(size));
    }
    separate(menu);
    choice(menu, "Light &theme", () -> !now.dark(), () -> window.dark(false));
    choice(menu, "&Dark theme", now::dark, () -> window.dark(true));
  }

  private void help() {
    Menu menu = menu("&Help");
    add(menu, "&Keyboard\tF1", SWT.F1, () -> window.tell("Keyboard", HelpTexts.KEYBOARD));
    add(menu, "&Cautions", 0, () -> window.tell("Cautions", cautions()));
    separate(menu);
    add(menu, "&About", 0, () -> window.tell("About", HelpTexts.ABOUT));
  }

  private static String cautions() {
    return Cautions.DRILLING.brief()
        + "\n\n"
        + Cautions.DRILLING.full()
        + "\n\n"
        + Cautions.PRESSURE.brief()
        + "\n\n"
        + Cautions.PRESSURE.full();
  }

  /** Lists the pages under Go. */
  void show(List<PageSlot> slots) {
    for (MenuItem item : go.getItems()) {
      item.dispose();
    }
    for (int i = 0; i < slots.size(); i++) {
      PageSlot slot = slots.get(i);
      String keys = i < 9 ? "\tAlt+" + (i + 1) : "";
      int accelerator = i < 9 ? SWT.ALT | '1' + i : 0;
      String title = slot.identity().title().replace("&", "&&");
      add(go, title + keys, accelerator, () -> window.bring(slot));
    }
  }
}
