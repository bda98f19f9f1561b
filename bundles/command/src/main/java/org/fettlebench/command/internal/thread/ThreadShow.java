package org.fettlebench.command.internal.thread;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.threads.Threads;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Shows the basic geometry of threads, in both units, with where it comes from. */
@Component(property = Commands.WORDS + "=thread show")
public final class ThreadShow implements Command {
  private static final Usage USAGE =
      Usage.of(
              "thread show",
              "Shows the basic sizes of one or more threads, with their source.",
              "thread show 2 BA 1/4 x 40 ME")
          .needsMany(
              "DESIGNATION", "such as 2 BA, 1/4 x 40 ME, M6, \"#10-32 UNF\"; several may follow");

  private final Threads threads;

  /** Made by the framework. */
  @Activate
  public ThreadShow(@Reference Threads threads) {
    this.threads = threads;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    List<ThreadCall> asked = ThreadWords.several(threads, call.operands("DESIGNATION"));
    String text =
        asked.stream().map(thread -> text(thread, call.unit())).collect(Collectors.joining("\n\n"));
    return Reply.done(text, Data.of("threads", asked.stream().map(ThreadShow::data).toList()));
  }

  private static Map<String, Object> data(ThreadCall called) {
    Map<String, Object> data = ThreadData.of(called.thread());
    data.putAll(
        Data.of(
            "calledFor", called.designation(),
            "threadClass", called.threadClass()));
    data.putAll(ThreadWords.data(called));
    return data;
  }

  private static String text(ThreadCall called, LengthUnit unit) {
    ScrewThread thread = called.thread();
    LengthUnit other = Figures.other(unit);
    Columns columns = new Columns().indent(2).right(1, 2).row("", unit.symbol(), other.symbol());
    row(columns, unit, "major diameter", thread.major());
    row(columns, unit, "effective diameter", thread.effective());
    row(columns, unit, "minor diameter, nut", thread.minorInternal());
    row(columns, unit, "minor diameter, screw", thread.minorExternal());
    row(columns, unit, "pitch", thread.pitch());
    List<String> around = ThreadWords.around(called);
    return called.designation()
        + "  ("
        + thread.form().title()
        + thread.threadsPerInch().map(tpi -> ", " + tpi + " threads per inch").orElse("")
        + ")\n"
        + columns.text()
        + "\n  source: "
        + Figures.source(thread.source())
        + (around.isEmpty() ? "" : "\n" + ThreadWords.notes(around));
  }

  private static void row(Columns columns, LengthUnit unit, String name, Length length) {
    columns.row(name, Figures.fine(length, unit), Figures.fine(length, Figures.other(unit)));
  }
}
