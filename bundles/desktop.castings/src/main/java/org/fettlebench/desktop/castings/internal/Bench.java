package org.fettlebench.desktop.castings.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.desktop.widgets.History;

/** The work in hand: what was done, which row is chosen, what is to be said of it. No window. */
final class Bench {
  private final Asking asking;
  private final History<Sketch> history = new History<>(Sketch.EMPTY);
  private final List<Runnable> watchers = new ArrayList<>();
  private Reply reply = Reply.NOTHING;
  private int row;
  private int asked;

  /** Answers a sketch, at once or a moment later. */
  @FunctionalInterface
  interface Asking {
    void ask(Sketch sketch, Consumer<Reply> then);
  }

  Bench(Asking asking) {
    this.asking = asking;
  }

  /** Tells of every change, in the order in which they asked. */
  void onChange(Runnable watcher) {
    watchers.add(watcher);
  }

  Sketch sketch() {
    return history.now();
  }

  /** Returns the newest reply; while another is sought it may be of the sketch before. */
  Reply reply() {
    return reply;
  }

  /** Returns the row whose measured places are shown. */
  int row() {
    return row;
  }

  void choose(int newRow) {
    if (newRow != row) {
      row = newRow;
      changed();
    }
  }

  boolean canUndo() {
    return history.canUndo();
  }

  boolean canRedo() {
    return history.canRedo();
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

  Optional<String> redo() {
    Optional<String> words = history.redo();
    words.ifPresent(done -> ask());
    return words;
  }

  private void changed() {
    watchers.forEach(Runnable::run);
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

  void begin(Sketch sketch) {
    history.begin(sketch);
    ask();
  }

  private void ask() {
    int mine = ++asked;
    row = Math.min(row, sketch().rows().size());
    Reply before = reply;
    asking.ask(
        sketch(),
        answer -> {
          if (mine == asked) {
            reply = answer;
            changed();
          }
        });
    if (reply == before) {
      // The answer takes a moment; what was done is shown at once.
      changed();
    }
  }
}
