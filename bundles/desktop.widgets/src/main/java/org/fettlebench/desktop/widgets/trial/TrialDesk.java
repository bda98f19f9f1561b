package org.fettlebench.desktop.widgets.trial;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.Page;
import org.fettlebench.desktop.widgets.OfficeLook;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;

/**
 * A desk with one bare window, which keeps all that is said. Work is done at once, on the calling
 * thread, so that a test need not wait for it; what work throws is thrown.
 */
public final class TrialDesk implements Desk, AutoCloseable {
  private static final long LONGEST_WAIT_NANOS = 20_000_000_000L;

  /** GTK fades colours over a fifth of a second. */
  private static final long FADE_NANOS = 350_000_000L;

  private final Display display;
  private final Shell shell;
  private final OfficeLook look;
  private final List<Runnable> watchers = new ArrayList<>();
  private final Map<String, String> memory = new TreeMap<>();
  private final List<String> said = new ArrayList<>();
  private final List<String> complaints = new ArrayList<>();
  private final List<Page.Found> gone = new ArrayList<>();
  private Runnable undo = () -> {};
  private LengthUnit unit = LengthUnit.MILLIMETRE;

  /**
   * Makes the window; {@link #open} shows it.
   *
   * @param dark whether ink is light on a dark ground
   * @param scale 1.0 to 2.0
   */
  public TrialDesk(Display display, boolean dark, double scale) {
    this.display = display;
    shell = new Shell(display, SWT.SHELL_TRIM);
    shell.setLayout(new FillLayout());
    look = new OfficeLook(display, dark, scale);
    shell.setBackground(look.ground());
  }

  /** Shows the window at the left top of the screen. */
  public void open(int width, int height) {
    shell.setBounds(0, 0, width, height);
    shell.open();
    shell.forceActive();
    settle();
  }

  /** Handles all events that wait. */
  public void settle() {
    while (!display.isDisposed() && display.readAndDispatch()) {
      continue;
    }
  }

  /** Handles events until something holds; fails after 20 seconds. */
  public void until(String what, BooleanSupplier holds) {
    long end = System.nanoTime() + LONGEST_WAIT_NANOS;
    // Wakes the display regularly, so that waiting does not hang when no event comes.
    while (!holds.getAsBoolean()) {
      if (System.nanoTime() > end) {
        throw new AssertionError("waited in vain until " + what);
      }
      if (!display.readAndDispatch()) {
        display.timerExec(20, () -> {});
        display.sleep();
      }
    }
  }

  /** Writes a picture of the window. */
  public void picture(Path file) {
    long shown = System.nanoTime() + FADE_NANOS;
    until("what fades in has faded in", () -> System.nanoTime() > shown);
    Image image = new Image(display, shell.getClientArea().width, shell.getClientArea().height);
    GC gc = new GC(image);
    shell.print(gc);
    gc.dispose();
    ImageLoader loader = new ImageLoader();
    loader.data = new ImageData[] {image.getImageData(100)};
    loader.save(file.toString(), SWT.IMAGE_PNG);
    image.dispose();
  }

  /** Changes the unit and tells whoever asked. */
  public void unit(LengthUnit newUnit) {
    unit = newUnit;
    watchers.forEach(Runnable::run);
  }

  /** Returns the sentences said, oldest first. */
  public List<String> said() {
    return List.copyOf(said);
  }

  /** Returns the complaints, oldest first. */
  public List<String> complaints() {
    return List.copyOf(complaints);
  }

  /** Returns where a page wanted to go, oldest first. */
  public List<Page.Found> gone() {
    return List.copyOf(gone);
  }

  /** Undoes what was last said with an undo. */
  public void undo() {
    undo.run();
  }

  @Override
  public LengthUnit unit() {
    return unit;
  }

  @Override
  public String show(Length length) {
    return LengthFormat.show(length, unit);
  }

  @Override
  public void onLookChange(Runnable changed) {
    watchers.add(changed);
  }

  @Override
  public void say(String sentence) {
    said.add(sentence);
  }

  @Override
  public void say(String sentence, Runnable newUndo) {
    said.add(sentence);
    undo = newUndo;
  }

  @Override
  public void complain(String sentence) {
    complaints.add(sentence);
  }

  @Override
  public <T> void work(String what, Callable<T> work, Consumer<T> done) {
    try {
      done.accept(work.call());
    } catch (RuntimeException thrown) {
      throw thrown;
    } catch (Exception thrown) {
      throw new IllegalStateException(what + " failed", thrown);
    }
  }

  @Override
  public void go(Page.Found found) {
    gone.add(found);
  }

  @Override
  public String remembered(String pageId, String key, String otherwise) {
    return memory.getOrDefault(pageId + "." + key, otherwise);
  }

  @Override
  public void remember(String pageId, String key, String value) {
    memory.put(pageId + "." + key, value);
  }

  @Override
  public Look look() {
    return look;
  }

  @Override
  public Shell shell() {
    return shell;
  }

  @Override
  public void close() {
    shell.dispose();
    OfficeLook.dispose(look.fonts());
  }
}
