package org.fettlebench.command.internal.thread;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.DiameterRange;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.threads.ThreadClasses;
import org.fettlebench.threads.Threads;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Shows what a class allows the diameters of a thread to be. */
@Component(service = Command.class, property = Commands.WORDS + "=thread limits")
public final class ThreadLimitsCommand implements Command {
  private static final Usage USAGE =
      Usage.of(
              "thread limits",
              "Shows what a class allows of major, effective and minor diameter.",
              "thread limits M6-6H/6g")
          .needsMany("DESIGNATION", "such as M6-6g, \"1/4-20 UNC-2B\", 1/4 BSW medium, 2 BA")
          .option("--class", "CLASS", "such as 6H/6g, 2A, medium; the usual fit if not said")
          .option("--engagement", "LENGTH", "length engaged, for Unified and Whitworth tolerances");

  private final Threads threads;
  private final ThreadClasses classes;

  /** Made by the framework. */
  @Activate
  public ThreadLimitsCommand(@Reference Threads threads, @Reference ThreadClasses classes) {
    this.threads = threads;
    this.classes = classes;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    ThreadCall called = ThreadWords.called(threads, call.operand("DESIGNATION").orElseThrow());
    String threadClass = threadClass(call, called);
    List<LimitsOfThread> limits;
    try {
      limits =
          call.length("--engagement")
              .map(length -> classes.limits(called.thread(), threadClass, length))
              .orElseGet(() -> classes.limits(called.thread(), threadClass));
    } catch (MeasureException refused) {
      throw new CommandException(refused.getMessage());
    }
    List<String> texts = new ArrayList<>();
    limits.forEach(one -> texts.add(text(one, call.unit())));
    List<String> around = ThreadWords.around(called);
    if (!around.isEmpty()) {
      texts.add(ThreadWords.notes(around));
    }
    return Reply.done(
        String.join("\n\n", texts),
        Data.of(
            "designation",
            called.designation(),
            "leftHand",
            called.leftHand(),
            "lengthMm",
            called.length().map(Data::mm),
            "class",
            threadClass,
            "limits",
            limits.stream().map(LimitsData::of).toList()));
  }

  private String threadClass(Call call, ThreadCall called) {
    Optional<String> usual = classes.classes(called.thread()).stream().findFirst();
    return call.option("--class")
        .or(called::threadClass)
        .or(() -> usual)
        .orElseThrow(
            () ->
                new CommandException(
                    "series "
                        + called.thread().series()
                        + " names no standard for its limits: its table may have a line"
                        + " '# limits: ...'"));
  }

  private static String text(LimitsOfThread limits, LengthUnit unit) {
    LengthUnit other = Figures.other(unit);
    Columns columns =
        new Columns()
            .indent(2)
            .right(1, 2, 3, 4)
            .row("", "least " + unit.symbol(), "most", "least " + other.symbol(), "most");
    row(columns, "major diameter", limits.major(), unit);
    row(columns, "effective diameter", limits.effective(), unit);
    row(columns, "minor diameter", limits.minor(), unit);
    List<String> lines = new ArrayList<>();
    lines.add(
        "%s %s, %s"
            .formatted(limits.thread().designation(), limits.side().word(), limits.threadClass()));
    lines.add(columns.text());
    limits.notes().forEach(note -> lines.add("  note: " + note));
    lines.add(
        "  source: "
            + List.of(limits.major(), limits.effective(), limits.minor()).stream()
                .map(range -> Figures.source(range.source()))
                .distinct()
                .collect(Collectors.joining("; ")));
    return String.join("\n", lines);
  }

  private static void row(Columns columns, String name, DiameterRange range, LengthUnit unit) {
    LengthUnit other = Figures.other(unit);
    columns.row(
        name,
        shown(range.least(), unit),
        shown(range.most(), unit),
        shown(range.least(), other),
        shown(range.most(), other));
  }

  private static String shown(Optional<Length> limit, LengthUnit unit) {
    return limit.map(length -> Figures.fine(length, unit)).orElse("-");
  }
}
