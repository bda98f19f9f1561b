package org.fettlebench.desktop.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.Page;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.modules.Faults;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The window: puts its parts together and does what menus, keys and pages ask for. */
final class MainWindow {
  private static final Logger LOG = LoggerFactory.getLogger(MainWindow.class);
  private static final int SAVE_MS = 1_500;
  private static final int SHOW_WORK_MS = 250;

  private final Display display;
  private final Wishes wishes;
  private final Memory memory;
  private final Appearance appearance;
  private final Undos undos = new Undos();
  private final Works works;
  private final Troubles troubles;
  private final Shell shell;
  private final WindowParts parts;
  private final MenuBar menus;
  private final Runnable showLater = this::showLater;
  private String wantedPage;

  MainWindow(Display display, Wishes wishes, Memory memory, Faults faults) {
    this.display = display;
    this.wishes = wishes;
    this.memory = memory;
    this.appearance = new Appearance(memory, display);
    this.works = new Works(display);
    this.troubles = new Troubles(faults, this::pages, sentence -> complaints().show(sentence));
    this.shell = new Shell(display, wishes.picture().isPresent() ? SWT.NO_TRIM : SWT.SHELL_TRIM);
    shell.setText("Fettlebench");
    this.parts = new WindowParts(this, troubles);
    this.menus = new MenuBar(this);
    wantedPage = wishes.demo() ? "" : memory.get("page", "");
    if (!wishes.picturePage().isEmpty()) {
      wantedPage = wishes.picturePage();
    }
    works.onChange(this::showRunning);
    parts.area().onChange(this::areaChanged);
    parts.area().onGone(this::pageGone);
    shell.addListener(SWT.Close, event -> closing());
    new WindowKeys(this).watch();
  }

  /** Shows the window and handles events until it is closed. */
  void run(PageRegistry registry) {
    open(registry);
    loop();
    end(registry);
  }

  /** Shows the window with the pages there are, and those that come. */
  void open(PageRegistry registry) {
    registry.onChange(() -> later(() -> update(registry.pages())));
    display.setRuntimeExceptionHandler(troubles::unexpected);
    display.setErrorHandler(troubles::unexpected);
    Placement placement = new Placement(shell, memory);
    if (wishes.picture().isPresent()) {
      shell.setBounds(0, 0, wishes.pictureSize().x, wishes.pictureSize().y);
    } else {
      placement.restore();
      shell.addListener(SWT.Close, event -> placement.keep());
    }
    shell.open();
    update(registry.pages());
    display.asyncExec(this::usable);
    keepSaving();
  }

  /** Lets go of everything after the window was closed. */
  void end(PageRegistry registry) {
    registry.onChange(() -> {});
    works.close();
    memory.save();
  }

  private void loop() {
    while (!shell.isDisposed()) {
      try {
        if (!display.readAndDispatch()) {
          display.sleep();
        }
      } catch (RuntimeException | Error thrown) {
        // The window goes on: one failing page must not take a person's work with it.
        troubles.unexpected(thrown);
      }
    }
  }

  /** Work that is over in a moment is not shown: nothing flickers. */
  private void showRunning() {
    if (works.idle()) {
      status().running(works.names());
    } else {
      display.timerExec(SHOW_WORK_MS, showLater);
    }
  }

  private void showLater() {
    if (!shell.isDisposed()) {
      status().running(works.names());
    }
  }

  private void usable() {
    if (wishes.measured()) {
      LOG.info("milestone: window usable after {} ms", Milestone.millisecondsSinceStart());
    }
    if (wishes.measuredOnly()) {
      shell.close();
    }
    wishes
        .picture()
        .ifPresent(file -> new PictureTaker(shell, works::idle, file, shell::close).start());
  }

  private void keepSaving() {
    display.timerExec(
        SAVE_MS,
        () -> {
          memory.save();
          if (!shell.isDisposed()) {
            keepSaving();
          }
        });
  }

  private void closing() {
    works.stopAll();
    parts.area().close();
  }

  private List<Page> pages() {
    return parts.area().slots().stream().map(PageSlot::page).toList();
  }

  private void update(List<Page> pages) {
    parts.area().update(pages);
    Optional<PageSlot> wanted = parts.area().slot(wantedPage);
    if (wanted.isPresent()) {
      bring(wanted.get());
    } else if (parts.area().front().isEmpty()) {
      parts.area().slots().stream().findFirst().ifPresent(parts.area()::bring);
      parts.area().front().ifPresent(PageSlot::focus);
    }
  }

  private void areaChanged() {
    parts.showPages();
    menus.show(parts.area().slots());
  }

  private void pageGone(PageSlot slot) {
    undos.forget(slot);
    status().say("The page " + slot.identity().title() + " has gone with its module.");
  }

  /** Brings a page to the front and gives it the keyboard. */
  void bring(PageSlot slot) {
    wantedPage = "";
    memory.put("page", slot.identity().id());
    parts.area().bring(slot);
    slot.focus();
  }

  /** Brings the page at a place in the order to the front, if there is one. */
  void bring(int place) {
    if (place < parts.area().slots().size()) {
      bring(parts.area().slots().get(place));
    }
  }

  void refreshPage() {
    parts.area().front().filter(slot -> !slot.failing()).ifPresent(PageSlot::refresh);
  }

  void go(Page.Found found) {
    Optional<PageSlot> slot = parts.area().slot(found.pageId());
    slot.ifPresentOrElse(
        s -> {
          bring(s);
          s.show(found);
        },
        () -> complaints().show("The page that shows " + found.title() + " is not there now."));
  }

  List<FindBox.Answer> answers(String typed) {
    List<FindBox.Answer> answers = new ArrayList<>();
    for (PageSlot slot : parts.area().slots()) {
      String title = slot.identity().title();
      slot.find(typed).forEach(found -> answers.add(new FindBox.Answer(found, title)));
    }
    return answers;
  }

  void find() {
    parts.find().focus();
  }

  void print() {
    parts.area().front().ifPresent(PageSlot::print);
  }

  void stop() {
    works.stopAll();
  }

  /** Says what was done and keeps how to take it back. */
  void done(Undos.Step step) {
    undos.add(step);
    status().sayWithUndo(step.sentence());
  }

  void undo() {
    if (parts.area().front().filter(PageSlot::undo).isPresent()) {
      return;
    }
    Optional<Undos.Step> step = undos.take();
    if (step.isEmpty()) {
      status().say("There is nothing to undo.");
      return;
    }
    Undos.Step last = step.get();
    try {
      last.undo().run();
      String sentence = "Undone: " + last.sentence();
      if (undos.newest().isPresent()) {
        status().sayWithUndo(sentence);
      } else {
        status().say(sentence);
      }
    } catch (RuntimeException | Error thrown) {
      failed(last.owner(), "Undo of \u201c" + last.sentence() + "\u201d", thrown);
    }
  }

  <T> void work(PageSlot owner, String what, Callable<T> task, Consumer<T> done) {
    works.start(
        what,
        task,
        result -> troubles.guard(owner.page(), "taking over: " + what, () -> done.accept(result)),
        thrown -> failed(owner, what, thrown));
  }

  private void failed(PageSlot owner, String what, Throwable thrown) {
    if (thrown instanceof InterruptedException) {
      status().say("Stopped: " + what + ".");
      return;
    }
    if (Troubles.isFault(thrown)) {
      troubles.report(owner.page(), what, thrown);
    } else {
      LOG.info("{}: {}", what, thrown.getMessage());
    }
    complaints().show(what + ": " + Troubles.words(thrown) + ".");
  }

  void unit(LengthUnit unit) {
    if (unit != unit()) {
      appearance.unit(unit);
      parts.showUnit();
      parts.area().slots().forEach(PageSlot::lookChanged);
    }
  }

  void otherUnit() {
    unit(unit() == LengthUnit.INCH ? LengthUnit.MILLIMETRE : LengthUnit.INCH);
  }

  void textSize(int perCent) {
    appearance.textSize(perCent);
    redress();
    status().say("Text at " + perCent + " per cent.");
  }

  void dark(boolean dark) {
    appearance.dark(dark);
    redress();
  }

  private void redress() {
    Redress dresser = new Redress(appearance.look());
    dresser.change(shell, appearance.dark(), appearance.textSize() / 100.0);
    parts.area().slots().forEach(PageSlot::lookChanged);
    shell.layout(true, true);
  }

  void nameClub() {
    NameDialogue.open(
        shell,
        look(),
        "What is the club called?",
        club(),
        name -> {
          memory.put("club", name);
          parts.showClub();
        });
  }

  String club() {
    String usual = wishes.demo() ? "An invented club" : "Our club";
    return memory.get("club", wishes.club().isEmpty() ? usual : wishes.club());
  }

  void tell(String title, String text) {
    TextWindow.open(shell, look(), title, text);
  }

  void toFront() {
    shell.setMinimized(false);
    shell.setVisible(true);
    shell.forceActive();
  }

  /** Has something done on the window's thread; nothing once the window is closed. */
  void later(Runnable action) {
    if (!display.isDisposed()) {
      display.asyncExec(
          () -> {
            if (!shell.isDisposed()) {
              action.run();
            }
          });
    }
  }

  LengthUnit unit() {
    return appearance.unit();
  }

  Appearance appearance() {
    return appearance;
  }

  Look look() {
    return appearance.look();
  }

  Shell shell() {
    return shell;
  }

  Memory memory() {
    return memory;
  }

  StatusLine status() {
    return parts.status();
  }

  ComplaintStrip complaints() {
    return parts.complaints();
  }

  WindowParts parts() {
    return parts;
  }
}
