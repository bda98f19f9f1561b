package org.fettlebench.desktop.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Display;

/**
 * Long work off the window's thread. What comes of it is handed over on the window's thread, unless
 * it was stopped.
 */
final class Works {
  private static final int THREADS = 3;

  private final Display display;
  private final AtomicInteger number = new AtomicInteger();
  private final ExecutorService threads = Executors.newFixedThreadPool(THREADS, this::named);
  private final List<Work<?>> running = new ArrayList<>();
  private Runnable changed = () -> {};

  Works(Display display) {
    this.display = display;
  }

  private Thread named(Runnable work) {
    Thread thread = new Thread(work, "work " + number.incrementAndGet());
    thread.setDaemon(true);
    return thread;
  }

  /** Is told each time something begins or ends. */
  void onChange(Runnable listener) {
    changed = listener;
  }

  /** Returns the names of what is running. */
  List<String> names() {
    return running.stream().map(work -> work.what).toList();
  }

  /**
   * Starts work.
   *
   * @param done takes the result on the window's thread
   * @param failed takes what was thrown on the window's thread; an interruption when stopped
   */
  <T> void start(String what, Callable<T> task, Consumer<T> done, Consumer<Throwable> failed) {
    Work<T> work = new Work<>(what, done, failed);
    running.add(work);
    work.future = threads.submit(() -> perform(work, task));
    tell();
  }

  private <T> void perform(Work<T> work, Callable<T> task) {
    try {
      T result = task.call();
      end(work, () -> work.done.accept(result));
    } catch (Exception | Error thrown) {
      end(work, () -> work.failed.accept(thrown));
    }
  }

  private void end(Work<?> work, Runnable message) {
    if (display.isDisposed()) {
      return;
    }
    display.asyncExec(
        () -> {
          // Stopped work has left the list already and says nothing more.
          if (running.remove(work)) {
            tell();
            message.run();
          }
        });
  }

  /** Stops everything that runs, by interrupting it; its result is not handed over any more. */
  void stopAll() {
    List<Work<?>> stopped = List.copyOf(running);
    running.clear();
    for (Work<?> work : stopped) {
      work.future.cancel(true);
      work.failed.accept(new InterruptedException("stopped"));
    }
    tell();
  }

  boolean idle() {
    return running.isEmpty();
  }

  private void tell() {
    changed.run();
  }

  /** Interrupts what runs and lets the threads end. */
  void close() {
    threads.shutdownNow();
  }

  private static final class Work<T> {
    private final String what;
    private final Consumer<T> done;
    private final Consumer<Throwable> failed;
    private Future<?> future;

    Work(String what, Consumer<T> done, Consumer<Throwable> failed) {
      this.what = what;
      this.done = done;
      this.failed = failed;
    }
  }
}
