package org.fettlebench.desktop.threads.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.club.Stock;
import org.fettlebench.desktop.threads.internal.sheet.Fold;
import org.fettlebench.desktop.threads.internal.sheet.TableCanvas;
import org.fettlebench.desktop.widgets.LengthField;
import org.fettlebench.desktop.widgets.trial.TrialDesk;
import org.fettlebench.testkit.ScreenRobot;
import org.junit.jupiter.api.Assumptions;

/** A window with the page in it, over the shipped tables and a club's rack. */
abstract class PageTrial {
  static final Path PICTURES = Path.of("target", "pictures");

  final Stock stock = Bench.stock();
  final ThreadsPage page = Bench.page(stock);
  final Map<String, String> before = new TreeMap<>();
  TrialDesk desk;
  Control root;

  final void run(Consumer<ScreenRobot> test) throws IOException {
    run(false, 1, 1110, 650, test);
  }

  final void run(boolean dark, double scale, int width, int height, Consumer<ScreenRobot> test)
      throws IOException {
    boolean screen = !SWT.getPlatform().equals("gtk") || System.getenv("DISPLAY") != null;
    Assumptions.assumeTrue(screen, "no DISPLAY is set, so there is no window to test");
    Files.createDirectories(PICTURES);
    Display display = Display.getDefault();
    try (TrialDesk made = new TrialDesk(display, dark, scale)) {
      desk = made;
      before.forEach((key, value) -> desk.remember("threads", key, value));
      root = page.create(desk.shell(), desk);
      desk.open(width, height);
      page.refresh();
      desk.settle();
      try {
        test.accept(new ScreenRobot(display));
      } catch (RuntimeException | Error failure) {
        desk.picture(PICTURES.resolve("failed.png"));
        throw failure;
      }
    }
  }

  static <C extends Control> Optional<C> find(Control at, Class<C> type, String text) {
    if (type.isInstance(at) && at.getVisible() && words(at).contains(text)) {
      return Optional.of(type.cast(at));
    }
    if (at instanceof Composite composite && at.getVisible()) {
      for (Control child : composite.getChildren()) {
        Optional<C> found = find(child, type, text);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  static String words(Control control) {
    return control instanceof Label label
        ? label.getText()
        : control instanceof Button button
            ? button.getText()
            : control instanceof Text text ? text.getMessage() : "";
  }

  final boolean says(String words) {
    return find(root, Label.class, words).isPresent();
  }

  /** Returns whether a table on the page has these cells. */
  final boolean tabled(String cells) {
    return tabled(root, cells);
  }

  static boolean tabled(Control at, String cells) {
    if (at instanceof TableCanvas table && at.getVisible()) {
      return table.table().asText().contains(cells);
    }
    return at instanceof Composite composite
        && at.getVisible()
        && Arrays.stream(composite.getChildren()).anyMatch(child -> tabled(child, cells));
  }

  final void type(String thread) {
    find(root, Text.class, "2 BA, M6").orElseThrow().setText(thread);
    desk.settle();
  }

  final void open(String fold) {
    before.put("fold." + fold, "open");
  }

  final void press(String button) {
    Button found = find(root, Button.class, button).orElseThrow();
    found.notifyListeners(SWT.Selection, new Event());
    desk.settle();
  }

  final void blind(String depth, String metal) {
    Composite fields = find(root, LengthField.class, "").orElseThrow().getParent();
    boolean first = true;
    for (Control child : fields.getChildren()) {
      if (child instanceof LengthField field) {
        field.type(first ? depth : metal);
        first = false;
      }
    }
    desk.settle();
  }

  static Optional<Fold> fold(Control at, String summary) {
    if (at instanceof Fold fold && fold.summary().contains(summary)) {
      return Optional.of(fold);
    }
    return at instanceof Composite composite
        ? Arrays.stream(composite.getChildren()).flatMap(c -> fold(c, summary).stream()).findFirst()
        : Optional.empty();
  }
}
