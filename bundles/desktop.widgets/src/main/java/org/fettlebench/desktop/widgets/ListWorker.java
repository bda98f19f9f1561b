package org.fettlebench.desktop.widgets;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/** Changes a list's model: at once while it is short, on a thread of its own when it is long. */
final class ListWorker<T> {
  /** Rows that sort and filter within a few milliseconds; measured, two cores. */
  private static final int AT_ONCE = 5_000;

  private final Control owner;
  private final Display display;
  private final Consumer<ListModel<T>> shown;
  private final ThreadPoolExecutor thread;
  private CompletableFuture<ListModel<T>> last;
  private ListModel<T> model;

  ListWorker(Control owner, ListModel<T> first, Consumer<ListModel<T>> shown) {
    this.owner = owner;
    this.display = owner.getDisplay();
    this.shown = shown;
    this.model = first;
    this.last = CompletableFuture.completedFuture(first);
    this.thread =
        new ThreadPoolExecutor(1, 1, 5, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), this::named);
    thread.allowCoreThreadTimeOut(true);
    owner.addDisposeListener(event -> thread.shutdownNow());
  }

  private Thread named(Runnable work) {
    Thread made = new Thread(work, "list rows");
    made.setDaemon(true);
    return made;
  }

  ListModel<T> model() {
    return model;
  }

  /** Changes the model after all earlier changes, and shows it unless a later one came. */
  void change(int size, UnaryOperator<ListModel<T>> change) {
    if (last.isDone() && size <= AT_ONCE) {
      last = CompletableFuture.completedFuture(change.apply(last.join()));
      adopt(last.join());
    } else {
      CompletableFuture<ListModel<T>> mine = last.thenApplyAsync(change, thread);
      last = mine;
      mine.whenComplete((result, failure) -> handOver(mine));
    }
  }

  private void handOver(CompletableFuture<ListModel<T>> done) {
    if (!display.isDisposed()) {
      display.asyncExec(
          () -> {
            if (!owner.isDisposed() && done == last) {
              // A failure is thrown here, on the window's thread, where it is reported.
              last = CompletableFuture.completedFuture(model);
              ListModel<T> result = done.join();
              last = done;
              adopt(result);
            }
          });
    }
  }

  private void adopt(ListModel<T> result) {
    // The listener still asks the table for its old rows, so the model changes inside show.
    model = result;
    shown.accept(result);
  }
}
