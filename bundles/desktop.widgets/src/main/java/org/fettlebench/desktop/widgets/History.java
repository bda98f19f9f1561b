package org.fettlebench.desktop.widgets;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * What was done, without limit, and what was undone of it.
 *
 * @param <T> what is worked on; immutable, compared by equality
 */
public final class History<T> {
  private final Deque<Step<T>> done = new ArrayDeque<>();
  private final Deque<Step<T>> undone = new ArrayDeque<>();
  private T now;

  /** A change with the work before and after it. */
  private record Step<T>(Change<T> change, T before, T after) {}

  /** Begins with work to which nothing was done yet. */
  public History(T first) {
    now = first;
  }

  /** Returns the work as it is now. */
  public T now() {
    return now;
  }

  /** Does something; returns whether anything changed by it. */
  public boolean apply(Change<T> change) {
    T after = change.deed().apply(now);
    if (after.equals(now)) {
      return false;
    }
    Step<T> last = done.peek();
    boolean joins = last != null && !change.run().isEmpty() && joins(last, change);
    T before = joins ? done.pop().before() : now;
    now = after;
    undone.clear();
    done.push(new Step<>(change, before, after));
    return true;
  }

  private boolean joins(Step<T> last, Change<T> change) {
    return undone.isEmpty() && last.change().run().equals(change.run());
  }

  /** Takes back the last thing done and returns its words; empty when there is none. */
  public Optional<String> undo() {
    Optional<Step<T>> step = step(done, undone);
    step.ifPresent(back -> now = back.before());
    return step.map(back -> back.change().words());
  }

  /** Does again what was undone last and returns its words; empty when there is none. */
  public Optional<String> redo() {
    Optional<Step<T>> step = step(undone, done);
    step.ifPresent(again -> now = again.after());
    return step.map(again -> again.change().words());
  }

  private Optional<Step<T>> step(Deque<Step<T>> from, Deque<Step<T>> to) {
    Optional<Step<T>> step = Optional.ofNullable(from.poll());
    step.ifPresent(to::push);
    return step;
  }

  /** Returns what was done last. */
  public Optional<Change<T>> newest() {
    return Optional.ofNullable(done.peek()).map(Step::change);
  }

  /** Returns whether there is something to take back. */
  public boolean canUndo() {
    return !done.isEmpty();
  }

  /** Returns whether there is something to do again. */
  public boolean canRedo() {
    return !undone.isEmpty();
  }

  /** Begins with work that was kept, with nothing to undo. */
  public void begin(T kept) {
    done.clear();
    undone.clear();
    now = kept;
  }
}
