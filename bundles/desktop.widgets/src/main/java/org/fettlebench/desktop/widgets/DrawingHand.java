package org.fettlebench.desktop.widgets;

import java.util.Optional;
import java.util.function.BiPredicate;
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
  private boolean holding;
  private Optional<DrawingTool> tool = Optional.empty();

  DrawingHand(DrawingCanvas canvas, Desk desk) {
    this.canvas = canvas;
    this.desk = desk;
    canvas.addListener(SWT.MouseVerticalWheel, this::wheel);
    canvas.addListener(SWT.MouseDown, this::grab);
    canvas.addListener(SWT.MouseMove, this::drag);
    canvas.addListener(SWT.MouseUp, this::letGo);
    canvas.addListener(SWT.MouseDoubleClick, this::twice);
    canvas.addListener(SWT.KeyDown, this::key);
    canvas.addListener(SWT.Traverse, this::traverse);
    canvas.addListener(SWT.FocusIn, event -> canvas.redraw());
    canvas.addListener(SWT.FocusOut, event -> canvas.redraw());
    canvas.setMenu(menu());
  }

  /** Asks a tool first, before pointer and keys move or zoom the drawing. */
  public void tool(DrawingTool newTool) {
    tool = Optional.of(newTool);
  }

  private Optional<DrawingTool.Pointer> pointer(Event event) {
    boolean free = (event.stateMask & SWT.MOD1) != 0;
    return canvas.view().map(view -> new DrawingTool.Pointer(event.x, event.y, view, free));
  }

  private boolean asked(Event event, BiPredicate<DrawingTool, DrawingTool.Pointer> question) {
    return tool.isPresent()
        && pointer(event).filter(at -> question.test(tool.get(), at)).isPresent();
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
    holding = event.button == 1 && asked(event, DrawingTool::press);
    dragging = (event.button == 1 || event.button == 2) && !holding;
    if (holding) {
      // What is dragged must not move the paper under the pointer.
      canvas.view().ifPresent(canvas::hold);
    }
  }

  private void letGo(Event event) {
    if (holding) {
      pointer(event).ifPresent(at -> tool.orElseThrow().release(at));
    }
    holding = false;
    dragging = false;
  }

  private void twice(Event event) {
    if (!asked(event, DrawingTool::doubleClick)) {
      canvas.whole();
    }
  }

  private void drag(Event event) {
    if (holding) {
      pointer(event).ifPresent(at -> tool.orElseThrow().drag(at));
    } else if (dragging) {
      move(event.x - grabbed.x, event.y - grabbed.y);
      grabbed = new Point(event.x, event.y);
    } else if (tool.isPresent()) {
      boolean over = asked(event, DrawingTool::hover);
      canvas.setCursor(over ? canvas.getDisplay().getSystemCursor(SWT.CURSOR_HAND) : null);
    }
  }

  private void traverse(Event event) {
    boolean back = event.detail == SWT.TRAVERSE_TAB_PREVIOUS;
    boolean tab = back || event.detail == SWT.TRAVERSE_TAB_NEXT;
    event.doit = tab && tool.filter(each -> each.next(back)).isEmpty();
  }

  private void key(Event event) {
    if (tool.filter(each -> each.key(event)).isPresent()) {
      event.doit = false;
      return;
    }
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
