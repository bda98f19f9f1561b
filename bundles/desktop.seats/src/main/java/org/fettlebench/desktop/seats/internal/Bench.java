package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.desktop.widgets.History;
import org.fettlebench.fits.SeatCure;

/** The work in hand: what was done, what is chosen, and what is to be said of it. No window. */
final class Bench {
  private final SeatBook book;
  private final History<Sketch> history = new History<>(Sketch.EMPTY);
  private final List<Runnable> watchers = new ArrayList<>();
  private Optional<Handle> chosen = Optional.empty();
  private Optional<SeatCure> looking = Optional.empty();
  private Reply reply;
  private boolean dragging;

  Bench(SeatBook book) {
    this.book = book;
    this.reply = book.ask(history.now());
  }

  /** Tells of every change, in the order in which they asked. */
  void onChange(Runnable watcher) {
    watchers.add(watcher);
  }

  Sketch sketch() {
    return history.now();
  }

  Reply reply() {
    return reply;
  }

  /** Returns what is to be shown: the answer, or that of the cure that is looked at. */
  Reply shown() {
    return looking.map(cure -> Reply.of(cure.after())).orElse(reply);
  }

  /** Returns the cure that is looked at without being done. */
  Optional<SeatCure> looking() {
    return looking;
  }

  /** Looks at what a cure would make, or back at what is; any change looks back too. */
  void look(Optional<SeatCure> cure) {
    if (!cure.equals(looking)) {
      looking = cure;
      changed();
    }
  }

  Optional<Handle> chosen() {
    return chosen;
  }

  boolean canUndo() {
    return history.canUndo();
  }

  boolean canRedo() {
    return history.canRedo();
  }

  /** Returns whether something is being dragged, so that slow things had better wait. */
  boolean dragging() {
    return dragging;
  }

  void dragging(boolean now) {
    dragging = now;
    changed();
  }

  /** Does something; returns whether anything changed by it. */
  boolean apply(Change<Sketch> change) {
    boolean done = history.apply(change);
    if (done) {
      ask();
    }
    return done;
  }

  Optional<String> undo() {
    Optional<String> words = history.undo();
    words.ifPresent(done -> ask());
    return words;
  }

  /** Returns what takes back the last change, as long as nothing was done after it. */
  Runnable undoOfLast() {
    Optional<Change<Sketch>> last = history.newest();
    return () -> {
      if (last.isPresent() && history.newest().equals(last)) {
        undo();
      }
    };
  }

  Optional<String> redo() {
    Optional<String> words = history.redo();
    words.ifPresent(done -> ask());
    return words;
  }

  void begin(Sketch sketch) {
    history.begin(sketch);
    chosen = Optional.empty();
    ask();
  }

  /** Asks again, when what is held or installed changed. */
  void ask() {
    looking = Optional.empty();
    reply = book.ask(history.now());
    chosen = chosen.filter(handle -> Handles.at(history.now(), handle).isPresent());
    changed();
  }

  void choose(Optional<Handle> handle) {
    if (!handle.equals(chosen)) {
      chosen = handle;
      changed();
    }
  }

  private void changed() {
    watchers.forEach(Runnable::run);
  }
}
