package org.fettlebench.desktop.castings.internal;

import java.util.function.Consumer;
import org.fettlebench.desktop.Desk;

/**
 * Asks at once as long as that is quick, so that the answer follows every letter; else off the
 * window's thread, once a person's typing pauses.
 */
final class Asker implements Bench.Asking {
  /** A frame or so: what takes longer would be felt in typing. */
  private static final long QUICK_NANOS = 30_000_000;

  private static final int PAUSE_MS = 120;

  /** So many lines are always quick. */
  private static final int LIGHT = 12;

  private final Desk desk;
  private final CastingBook book;
  private long lastNanos;
  private int newest;
  private int lastWeight;

  Asker(Desk desk, CastingBook book) {
    this.desk = desk;
    this.book = book;
  }

  /** A reply and how long it took. */
  private record Timed(Reply reply, long nanos) {}

  @Override
  public void ask(Sketch sketch, Consumer<Reply> then) {
    int mine = ++newest;
    int weight = weight(sketch);
    boolean quick = lastNanos <= QUICK_NANOS && weight <= Math.max(LIGHT, lastWeight + 1);
    lastWeight = weight;
    if (quick) {
      take(timed(sketch), then);
    } else {
      desk.shell()
          .getDisplay()
          .timerExec(
              PAUSE_MS,
              () -> {
                if (mine == newest && !desk.shell().isDisposed()) {
                  desk.work("Placing the part", () -> timed(sketch), timed -> take(timed, then));
                }
              });
    }
  }

  /** What grows the work: lines of a part that may be turned, until one was timed. */
  private static int weight(Sketch sketch) {
    return sketch.moves().turns().isEmpty() ? 0 : sketch.rows().size();
  }

  private Timed timed(Sketch sketch) {
    long start = System.nanoTime();
    Reply reply = book.ask(sketch);
    return new Timed(reply, System.nanoTime() - start);
  }

  private void take(Timed timed, Consumer<Reply> then) {
    lastNanos = timed.nanos();
    then.accept(timed.reply());
  }
}
