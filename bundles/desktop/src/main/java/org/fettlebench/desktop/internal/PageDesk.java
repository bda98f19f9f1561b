package org.fettlebench.desktop.internal;

import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Shell;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.Page;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;

/** The desk as one page sees it; knows whose words and whose work it hands on. */
final class PageDesk implements Desk {
  private final MainWindow window;
  private final PageSlot slot;

  PageDesk(MainWindow window, PageSlot slot) {
    this.window = window;
    this.slot = slot;
  }

  @Override
  public LengthUnit unit() {
    return window.unit();
  }

  @Override
  public String show(Length length) {
    return LengthFormat.show(length, window.unit());
  }

  @Override
  public void onLookChange(Runnable changed) {
    slot.onLookChange(changed);
  }

  @Override
  public void say(String sentence) {
    window.status().say(sentence);
  }

  @Override
  public void say(String sentence, Runnable undo) {
    window.done(new Undos.Step(sentence, undo, slot));
  }

  @Override
  public void complain(String sentence) {
    window.complaints().show(sentence);
  }

  @Override
  public <T> void work(String what, Callable<T> work, Consumer<T> done) {
    window.work(slot, what, work, done);
  }

  @Override
  public void go(Page.Found found) {
    window.go(found);
  }

  @Override
  public String remembered(String pageId, String key, String otherwise) {
    return window.memory().get(key(pageId, key), otherwise);
  }

  @Override
  public void remember(String pageId, String key, String value) {
    window.memory().put(key(pageId, key), value);
  }

  private static String key(String pageId, String key) {
    return "page." + pageId + "." + key;
  }

  @Override
  public Look look() {
    return window.look();
  }

  @Override
  public Shell shell() {
    return window.shell();
  }
}
