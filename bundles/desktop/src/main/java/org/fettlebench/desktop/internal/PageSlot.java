package org.fettlebench.desktop.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.Page;
import org.fettlebench.desktop.widgets.Layouts;

/**
 * The place of one page in the window. Its content is made when it is first shown; when the page
 * throws, words stand in its place and nothing else is harmed.
 */
final class PageSlot {
  private final Page page;
  private final Troubles troubles;
  private final Composite holder;
  private final StackLayout stack = new StackLayout();
  private final List<Runnable> lookChanges = new ArrayList<>();
  private final Identity identity;
  private Optional<Control> content = Optional.empty();
  private Desk desk;
  private boolean failing;
  private boolean findFailed;

  /** What the window asks of a page once and keeps. */
  record Identity(String id, String title, int order) {}

  PageSlot(Page page, Identity identity, Troubles troubles, Composite area) {
    this.page = page;
    this.identity = identity;
    this.troubles = troubles;
    holder = new Composite(area, SWT.NONE);
    holder.setBackground(area.getBackground());
    holder.setLayout(stack);
  }

  /** Sets the desk handed to the page; before it is first brought to the front. */
  void desk(Desk newDesk) {
    desk = newDesk;
  }

  Page page() {
    return page;
  }

  Identity identity() {
    return identity;
  }

  Control control() {
    return holder;
  }

  boolean failing() {
    return failing;
  }

  void onLookChange(Runnable changed) {
    lookChanges.add(changed);
  }

  void lookChanged() {
    for (Runnable change : List.copyOf(lookChanges)) {
      troubles.guard(page, "changing unit, text size or theme", change);
    }
  }

  /** Makes the content if need be and has the page bring itself up to date. */
  void bring() {
    if (content.isEmpty()) {
      create();
    }
    if (content.isPresent() && !failing) {
      refresh();
    }
  }

  private void create() {
    AtomicReference<Control> made = new AtomicReference<>();
    String doing = "showing the page " + identity.title();
    Optional<Throwable> thrown =
        troubles.guard(page, doing, () -> made.set(page.create(holder, desk)));
    if (thrown.isEmpty() && made.get() == null) {
      IllegalStateException nothing = new IllegalStateException("the page made no content");
      troubles.report(page, doing, nothing);
      thrown = Optional.of(nothing);
    }
    if (thrown.isPresent()) {
      clear();
      showFailure(thrown.get());
    } else {
      content = Optional.of(made.get());
      top(made.get());
    }
  }

  /** Has the page bring itself up to date. */
  void refresh() {
    Optional<Throwable> thrown =
        troubles.guard(page, "bringing the page up to date", page::refresh);
    thrown.ifPresent(this::showFailure);
  }

  private void showFailure(Throwable thrown) {
    failing = true;
    Composite words = Layouts.padded(holder, holder.getBackground());
    Layouts.answer(words, desk.look(), identity.title() + " cannot be shown");
    Layouts.text(words, desk.look(), "It said: " + Troubles.words(thrown) + ".");
    Layouts.text(
        words,
        desk.look(),
        "The other pages are not affected. The page Modules says which module it comes from and"
            + " can leave that out.");
    Layouts.button(words, desk.look(), "&Try again", this::tryAgain);
    top(words);
  }

  private void tryAgain() {
    troubles.guard(page, "closing the page", page::close);
    clear();
    bring();
    holder.layout();
    focus();
  }

  private void clear() {
    for (Control child : holder.getChildren()) {
      child.dispose();
    }
    lookChanges.clear();
    content = Optional.empty();
    failing = false;
  }

  private void top(Control control) {
    stack.topControl = control;
    holder.layout();
  }

  void focus() {
    if (failing || content.isEmpty()) {
      holder.setFocus();
    } else {
      troubles.guard(page, "taking the keyboard", page::focus);
    }
  }

  /** Returns what the page finds; nothing once its find has thrown. */
  List<Page.Found> find(String typed) {
    if (findFailed) {
      return List.of();
    }
    List<Page.Found> found = new ArrayList<>();
    findFailed =
        troubles
            .guard(page, "finding \"" + typed + "\"", () -> found.addAll(page.find(typed)))
            .isPresent();
    return found;
  }

  private boolean hasKeyboard() {
    Control focus = holder.getDisplay().getFocusControl();
    while (focus != null && focus != holder) {
      focus = focus.getParent();
    }
    return focus == holder;
  }

  void show(Page.Found found) {
    if (!failing) {
      troubles.guard(page, "showing " + found.title(), () -> page.show(found));
    }
  }

  /** Returns whether the page undid something itself. */
  boolean undo() {
    boolean[] done = {false};
    if (!failing && content.isPresent()) {
      troubles.guard(page, "undoing", () -> done[0] = page.undo());
    }
    return done[0];
  }

  void print() {
    if (!failing) {
      troubles.guard(page, "printing", page::print);
    }
  }

  /**
   * Closes the page and disposes of its content.
   *
   * @param refuge takes the keyboard if the page has it; a page that is taken apart with the
   *     keyboard in it hands it from one of its parts to the next, and they would answer
   */
  void close(Control refuge) {
    if (hasKeyboard()) {
      refuge.forceFocus();
    }
    if (content.isPresent()) {
      troubles.guard(page, "closing the page", page::close);
    }
    holder.dispose();
  }
}
