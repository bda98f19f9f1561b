package org.fettlebench.command.internal.thread;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fettlebench.command.CommandException;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.threads.Threads;

/** One run over a list: a row out for each row in, in order, however many there are. */
final class BatchRun {
  private static final int CHUNK = 1 << 16;
  private static final int PROGRESS_ROWS = 100_000;

  /** Near misses take long to find: only so many designations are told theirs. */
  private static final int MOST_NEAR = 100;

  private final Threads threads;
  private final List<BatchFigure> figures;
  private final BatchLine line;
  private final Map<String, CommandException> unknown = new HashMap<>();
  private final StringBuilder waiting = new StringBuilder(2 * CHUNK);
  private int cells;
  private long rows;
  private long refused;

  BatchRun(Threads threads, List<BatchFigure> figures, LengthUnit unit) {
    this.threads = threads;
    this.figures = figures;
    this.line = new BatchLine(unit);
  }

  /** Returns how many rows were read. */
  long rows() {
    return rows;
  }

  /** Returns how many of them could not be answered. */
  long refused() {
    return refused;
  }

  /**
   * Answers all rows.
   *
   * @param progress told every hundred thousand rows; empty if nobody asked
   * @throws CommandException if the header does not do, or the rest cannot be read or written
   */
  void run(BatchReader in, PrintStream out, Optional<PrintStream> progress) {
    header(in.columns());
    long started = System.nanoTime();
    for (var cellsIn = in.next(); cellsIn.isPresent(); cellsIn = in.next()) {
      rows++;
      answer(in, cellsIn.get());
      if (waiting.length() >= CHUNK) {
        flush(out);
      }
      if (rows % PROGRESS_ROWS == 0) {
        progress.ifPresent(told -> tell(told, started));
      }
    }
    flush(out);
  }

  private void tell(PrintStream told, long started) {
    told.printf(
        Locale.ROOT,
        "%d rows, %d refused, %.1f s%n",
        rows,
        refused,
        (System.nanoTime() - started) / 1e9);
    told.flush();
  }

  private void header(List<String> in) {
    if (!in.contains("designation")) {
      throw new CommandException(
          "line 1: there must be a column designation; there are " + String.join(", ", in));
    }
    List<String> names = new ArrayList<>(List.of("line"));
    names.addAll(in);
    names.add("thread");
    int before = names.size();
    figures.forEach(figure -> names.addAll(figure.columns(line.unit())));
    cells = names.size() - before;
    names.add("error");
    Set<String> seen = new HashSet<>();
    for (String name : names) {
      if (!seen.add(name)) {
        throw new CommandException(
            "line 1: the answer has a column " + name + " of its own; name yours otherwise");
      }
    }
    names.forEach(line::text);
    line.to(waiting);
  }

  private void answer(BatchReader in, List<String> came) {
    line.whole(in.line());
    int columns = in.columns().size();
    for (int i = 0; i < columns; i++) {
      line.text(i < came.size() ? came.get(i) : "");
    }
    int mark = line.mark();
    try {
      if (came.size() != columns) {
        throw new CommandException(
            "the row has %d cells, the header %d".formatted(came.size(), columns));
      }
      BatchRow row = new BatchRow(in.places(), came);
      ThreadCall called = called(row);
      line.text(called.designation());
      for (BatchFigure figure : figures) {
        figure.write(called, row, line);
      }
      line.empty(1);
    } catch (CommandException | MeasureException wrong) {
      refused++;
      line.back(mark);
      line.empty(1 + cells).text(wrong.getMessage());
    }
    line.to(waiting);
  }

  private ThreadCall called(BatchRow row) {
    String designation =
        row.cell("designation").orElseThrow(() -> new CommandException("designation is empty"));
    Optional<ThreadCall> found = threads.read(designation);
    if (found.isPresent()) {
      return found.get();
    }
    if (unknown.size() < MOST_NEAR) {
      throw unknown.computeIfAbsent(designation, typed -> ThreadWords.unknown(threads, typed));
    }
    CommandException known = unknown.get(designation);
    throw known != null ? known : ThreadWords.unknownOfMany(threads, designation);
  }

  private void flush(PrintStream out) {
    byte[] bytes = waiting.toString().getBytes(StandardCharsets.UTF_8);
    waiting.setLength(0);
    out.write(bytes, 0, bytes.length);
    if (out.checkError()) {
      throw new CommandException(
          "the answer can no longer be written; " + rows + " rows were read");
    }
  }
}
