package org.fettlebench.desktop.widgets;

import java.util.function.UnaryOperator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.fettlebench.desktop.Desk;

/** Moves and zooms a drawing by mouse, wheel and keys. */
public final class DrawingHand {
  private static final double STEP = 1.25;
  private static final int KEY_PIXELS = 40;

  private final DrawingCanvas canvas;
  private final Desk desk;
  private Point grabbed = new Point(0, 0);
  private boolean dragging;

  DrawingHand(DrawingCanvas canvas, Desk desk) {
    this.canvas = canvas;
    this.desk = desk;
    canvas.addListener(SWT.MouseVerticalWheel, this::wheel);
    canvas.addListener(SWT.MouseDown, this::grab);
    canvas.addListener(SWT.MouseMove, this::drag);
    canvas.addListener(SWT.MouseUp, event -> dragging = false);
    canvas.addListener(SWT.MouseDoubleClick, event -> canvas.whole());
    canvas.addListener(SWT.KeyDown, this::key);
    canvas.addListener(SWT.Traverse, event -> event.doit = leavesByKey(event));
    canvas.addListener(SWT.FocusIn, event -> canvas.redraw());
    canvas.addListener(SWT.FocusOut, event -> canvas.redraw());
    canvas.setMenu(menu());
  }

  private Menu menu() {
    Menu menu = new Menu(canvas);
    add(menu, "Show the whole\t0", canvas::whole);
    add(menu, "Closer\t+", this::closer);
    add(menu, "Farther\t\u2212", this::farther);
    new MenuItem(menu, SWT.SEPARATOR);
    add(menu, "Copy as a picture\tCtrl+C", canvas::copyPicture);
    add(menu, "Save as a picture \u2026", this::save);
    return menu;
  }

  private static void add(Menu menu, String text, Runnable action) {
    MenuItem item = new MenuItem(menu, SWT.PUSH);
    item.setText(text);
    item.addListener(SWT.Selection, event -> action.run());
  }

  /** Zooms in about the middle. */
  public void closer() {
    zoom(STEP, canvas.getSize().x / 2, canvas.getSize().y / 2);
  }

  /** Zooms out about the middle. */
  public void farther() {
    zoom(1 / STEP, canvas.getSize().x / 2, canvas.getSize().y / 2);
  }

  private void zoom(double factor, int x, int y) {
    change(view -> view.zoomed(factor, x, y));
  }

  private void move(int dx, int dy) {
    change(view -> view.moved(dx, dy));
  }

  private void change(UnaryOperator<DrawingView> change) {
    canvas.view().map(change).ifPresent(canvas::hold);
  }

  private void wheel(Event event) {
    zoom(event.count > 0 ? STEP : 1 / STEP, event.x, event.y);
    event.doit = false;
  }

  private void grab(Event event) {
    canvas.setFocus();
    grabbed = new Point(event.x, event.y);
    dragging = event.button == 1;
  }

  private void drag(Event event) {
    if (dragging) {
      move(event.x - grabbed.x, event.y - grabbed.y);
      grabbed = new Point(event.x, event.y);
    }
  }

  private static boolean leavesByKey(Event event) {
    return event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS;
  }

  private void key(Event event) {
    boolean command = (event.stateMask & SWT.MOD1) != 0;
    if (command && event.keyCode == 'c') {
      canvas.copyPicture();
    } else if (!command) {
      plainKey(event);
    }
  }

  private void plainKey(Event event) {
    switch (event.keyCode) {
      case SWT.ARROW_LEFT -> move(KEY_PIXELS, 0);
      case SWT.ARROW_RIGHT -> move(-KEY_PIXELS, 0);
      case SWT.ARROW_UP -> move(0, KEY_PIXELS);
      case SWT.ARROW_DOWN -> move(0, -KEY_PIXELS);
      case '+', '=', SWT.KEYPAD_ADD -> closer();
      case '-', SWT.KEYPAD_SUBTRACT -> farther();
      case '0', SWT.KEYPAD_0, SWT.HOME -> canvas.whole();
      default -> event.doit = true;
    }
  }

  private void save() {
    FileDialog dialog = new FileDialog(desk.shell(), SWT.SAVE);
    dialog.setFilterExtensions(new String[] {"*.png"});
    dialog.setOverwrite(true);
    String file = dialog.open();
    if (file != null) {
      ImageData picture = canvas.picture();
      desk.work("Saving the picture", () -> write(picture, file), done -> desk.say(done));
    }
  }

  private static String write(ImageData picture, String file) {
    ImageLoader loader = new ImageLoader();
    loader.data = new ImageData[] {picture};
    loader.save(file, SWT.IMAGE_PNG);
    return "Drawing saved as " + file + ".";
  }
}
