package org.fettlebench.command.internal.thread;

import java.util.List;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadSeries;
import org.fettlebench.threads.Threads;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Lists the thread series that are enabled, or the threads of one of them. */
@Component(property = Commands.WORDS + "=thread list")
public final class ThreadList implements Command {
  private static final Usage USAGE =
      Usage.of(
              "thread list",
              "Lists the thread series, or the threads of one series.",
              "thread list BA")
          .may("SERIES", "a series by its short name, such as BA, BSW, ME, M, UNF");

  private final Threads threads;

  /** Made by the framework. */
  @Activate
  public ThreadList(@Reference Threads threads) {
    this.threads = threads;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    return call.operand("SERIES").map(id -> one(find(id), call.unit())).orElseGet(this::all);
  }

  private ThreadSeries find(String id) {
    return threads.series().stream()
        .filter(series -> series.id().equalsIgnoreCase(id))
        .findFirst()
        .orElseThrow(
            () ->
                new CommandException(
                    "there is no thread series \""
                        + id
                        + "\"; there are "
                        + String.join(
                            ", ", threads.series().stream().map(ThreadSeries::id).toList())));
  }

  private Reply all() {
    Columns columns = new Columns().right(1).row("series", "threads", "title", "from");
    threads.series().forEach(s -> columns.row(s.id(), s.threads().size(), s.title(), s.module()));
    return Reply.done(
        columns.text(),
        Data.of("series", threads.series().stream().map(ThreadList::head).toList()));
  }

  private static Object head(ThreadSeries series) {
    return Data.of(
        "id", series.id(),
        "title", series.title(),
        "form", series.form().title(),
        "threads", series.threads().size(),
        "module", series.module(),
        "source", Figures.sourceData(series.source()));
  }

  private static Reply one(ThreadSeries series, LengthUnit unit) {
    LengthUnit other = Figures.other(unit);
    Columns columns =
        new Columns()
            .right(1, 2, 3, 4, 5)
            .row(
                series.id(),
                "major " + unit.symbol(),
                "major " + other.symbol(),
                "pitch " + unit.symbol(),
                "pitch " + other.symbol(),
                "per inch");
    series.threads().forEach(thread -> columns.row(row(thread, unit)));
    List<Object> data = series.threads().stream().<Object>map(ThreadData::of).toList();
    return Reply.done(
        series.title() + "\n" + columns.text() + "\nsource: " + Figures.source(series.source()),
        Data.of("series", series.id(), "title", series.title(), "threads", data));
  }

  private static Object[] row(ScrewThread thread, LengthUnit unit) {
    LengthUnit other = Figures.other(unit);
    return new Object[] {
      thread.designation(),
      Figures.fine(thread.major(), unit),
      Figures.fine(thread.major(), other),
      Figures.fine(thread.pitch(), unit),
      Figures.fine(thread.pitch(), other),
      thread.threadsPerInch().orElse("")
    };
  }
}
