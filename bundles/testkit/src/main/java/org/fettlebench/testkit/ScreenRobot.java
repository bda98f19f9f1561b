package org.fettlebench.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;

/**
 * Uses mouse and keyboard of a screen as a person does. To be used on the display's own thread,
 * under Xvfb without a window manager too. After each act it lets the display work for a moment.
 */
public final class ScreenRobot {
  private static final Duration BREATH = Duration.ofMillis(40);
  private static final Duration PATIENCE = Duration.ofSeconds(10);

  private final Display display;
  private final Duration patience;

  /** Takes the display of the calling thread and waits ten seconds where it has to wait. */
  public ScreenRobot(Display display) {
    this(display, PATIENCE);
  }

  /** Takes the display of the calling thread and waits as long as told where it has to wait. */
  public ScreenRobot(Display display, Duration patience) {
    this.display = display;
    this.patience = patience;
  }

  /** Moves the pointer to a place inside a control, in pixels from its upper left corner. */
  public void move(Control control, int x, int y) {
    Point place = control.toDisplay(x, y);
    Event event = new Event();
    event.type = SWT.MouseMove;
    event.x = place.x;
    event.y = place.y;
    post(event);
  }

  /** Clicks the first button in the middle of a control. */
  public void click(Control control) {
    Point size = control.getSize();
    click(control, size.x / 2, size.y / 2);
  }

  /** Clicks the first button at a place inside a control. */
  public void click(Control control, int x, int y) {
    move(control, x, y);
    button(SWT.MouseDown);
    button(SWT.MouseUp);
  }

  /** Drags with the first button from one place inside a control to another. */
  public void drag(Control control, Point from, Point to) {
    move(control, from.x, from.y);
    button(SWT.MouseDown);
    move(control, (from.x + to.x) / 2, (from.y + to.y) / 2);
    move(control, to.x, to.y);
    button(SWT.MouseUp);
  }

  /** Types text into whatever has the keyboard. */
  public void type(String text) {
    text.chars()
        .forEach(
            sign -> {
              boolean capital = Character.isUpperCase(sign);
              if (capital) {
                key(SWT.KeyDown, SWT.SHIFT, '\0');
              }
              key(SWT.KeyDown, 0, (char) sign);
              key(SWT.KeyUp, 0, (char) sign);
              if (capital) {
                key(SWT.KeyUp, SWT.SHIFT, '\0');
              }
            });
  }

  /**
   * Presses a key such as {@code SWT.ARROW_DOWN}, {@code SWT.F5} or {@code SWT.CR}, while the given
   * modifiers ({@code SWT.ALT}, {@code SWT.MOD1} ...) are held.
   */
  public void press(int key, int... modifiers) {
    for (int modifier : modifiers) {
      key(SWT.KeyDown, modifier, '\0');
    }
    boolean isSign = (key & SWT.KEYCODE_BIT) == 0;
    key(SWT.KeyDown, key, isSign ? (char) key : '\0');
    key(SWT.KeyUp, key, isSign ? (char) key : '\0');
    for (int i = modifiers.length - 1; i >= 0; i--) {
      key(SWT.KeyUp, modifiers[i], '\0');
    }
  }

  /** Lets the display do its work for a while. */
  public void pump(Duration time) {
    AtomicBoolean over = new AtomicBoolean();
    display.timerExec((int) time.toMillis(), () -> over.set(true));
    while (!over.get()) {
      if (!display.readAndDispatch()) {
        display.sleep();
      }
    }
  }

  /**
   * Lets the display do its work until something is so.
   *
   * @param what in words, for the failure
   */
  public void pumpUntil(String what, BooleanSupplier condition) {
    long end = System.nanoTime() + patience.toNanos();
    while (!condition.getAsBoolean()) {
      if (System.nanoTime() > end) {
        throw new AssertionError("not seen within " + patience.toMillis() + " ms: " + what);
      }
      pump(Duration.ofMillis(10));
    }
  }

  /** Keeps a picture of a control or window as PNG. */
  public Path snapshot(Control control, Path png) {
    pump(BREATH);
    Rectangle bounds = control.getBounds();
    Image image = new Image(display, Math.max(1, bounds.width), Math.max(1, bounds.height));
    GC gc = new GC(control);
    try {
      gc.copyArea(image, 0, 0);
      ImageLoader loader = new ImageLoader();
      loader.data = new ImageData[] {image.getImageData()};
      Files.createDirectories(png.toAbsolutePath().getParent());
      loader.save(png.toString(), SWT.IMAGE_PNG);
      return png;
    } catch (IOException unwritable) {
      throw new UncheckedIOException(png.toString(), unwritable);
    } finally {
      gc.dispose();
      image.dispose();
    }
  }

  private void button(int type) {
    Event event = new Event();
    event.type = type;
    event.button = 1;
    post(event);
  }

  private void key(int type, int keyCode, char sign) {
    Event event = new Event();
    event.type = type;
    event.keyCode = keyCode;
    event.character = sign;
    post(event);
  }

  private void post(Event event) {
    if (!display.post(event)) {
      throw new AssertionError("the screen took no " + event);
    }
    pump(BREATH);
  }
}
