package org.fettlebench.desktop.seats.internal;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** What was done, without limit, and what was undone of it. */
final class History {
  private final Deque<Step> done = new ArrayDeque<>();
  private final Deque<Step> undone = new ArrayDeque<>();
  private Sketch now = Sketch.EMPTY;

  /** A change with the sketch before and after it. */
  private record Step(Change change, Sketch before, Sketch after) {}

  Sketch sketch() {
    return now;
  }

  /** Does something; returns whether anything changed by it. */
  boolean apply(Change change) {
    Sketch after = change.deed().apply(now);
    if (after.equals(now)) {
      return false;
    }
    Step last = done.peek();
    boolean joins = last != null && !change.run().isEmpty() && joins(last, change);
    Sketch before = joins ? done.pop().before() : now;
    now = after;
    undone.clear();
    done.push(new Step(change, before, after));
    return true;
  }

  private boolean joins(Step last, Change change) {
    return undone.isEmpty() && last.change().run().equals(change.run());
  }

  /** Takes back the last thing done and returns its words; empty when there is none. */
  Optional<String> undo() {
    return step(done, undone)
        .map(
            step -> {
              now = step.before();
              return step.change().words();
            });
  }

  /** Does again what was undone last and returns its words; empty when there is none. */
  Optional<String> redo() {
    return step(undone, done)
        .map(
            step -> {
              now = step.after();
              return step.change().words();
            });
  }

  private static Optional<Step> step(Deque<Step> from, Deque<Step> to) {
    Optional<Step> step = Optional.ofNullable(from.poll());
    step.ifPresent(to::push);
    return step;
  }

  /** Returns what was done last. */
  Optional<Change> newest() {
    return Optional.ofNullable(done.peek()).map(Step::change);
  }

  boolean canUndo() {
    return !done.isEmpty();
  }

  boolean canRedo() {
    return !undone.isEmpty();
  }

  /** Begins with a sketch that was kept, with nothing to undo. */
  void begin(Sketch sketch) {
    done.clear();
    undone.clear();
    now = sketch;
  }
}
