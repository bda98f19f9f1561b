package org.fettlebench.command.internal.thread;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ThreadSeries;
import org.fettlebench.threads.Threads;
import org.fettlebench.threads.identify.CrossPair;
import org.fettlebench.threads.identify.CrossingRule;
import org.fettlebench.threads.identify.ThreadIdentifier;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Lists threads that a person could cross. */
@Component(service = Command.class, property = Commands.WORDS + "=thread pairs")
public final class ThreadPairs implements Command {
  private static final Usage USAGE =
      Usage.of(
              "thread pairs",
              "Lists the threads that could be crossed: all, of some series, or with one thread.",
              "thread pairs 2 BA")
          .mayMany("DESIGNATION", "only pairs with this thread")
          .option("--series", "IDS", "only among these, such as BA,M,ME")
          .option("--diameter-share", "NUMBER", "diameters within this much of the pitch; 0.4")
          .option("--pitch-share", "NUMBER", "pitches within this much of the pitch; 1/12")
          .flag("--same", "also threads that are one under two names");

  private final Threads threads;
  private final ThreadIdentifier identifier;

  /** Made by the framework. */
  @Activate
  public ThreadPairs(@Reference Threads threads, @Reference ThreadIdentifier identifier) {
    this.threads = threads;
    this.identifier = identifier;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    List<String> series = series(call);
    Optional<String> typed = call.operand("DESIGNATION").filter(words -> !words.isBlank());
    CrossingRule rule = rule(call);
    List<CrossPair> pairs =
        typed
            .map(words -> identifier.pairsOf(ThreadWords.one(threads, words), rule))
            .orElseGet(() -> identifier.pairs(series, rule));
    List<CrossPair> shown =
        pairs.stream()
            .filter(pair -> call.on("--same") || pair.kind() != CrossPair.Kind.SAME)
            .filter(pair -> series.isEmpty() || series.contains(pair.second().series()))
            .toList();
    return Reply.done(
        text(shown, rule, call.unit()),
        Data.of("pairs", shown.stream().map(PairData::of).toList()));
  }

  private static CrossingRule rule(Call call) {
    try {
      return new CrossingRule(
          call.number("--diameter-share", 0, 2).orElse(CrossingRule.USUAL.diameterShare()),
          call.number("--pitch-share", 0, 1).orElse(CrossingRule.USUAL.pitchShare()));
    } catch (MeasureException refused) {
      throw new CommandException(refused.getMessage());
    }
  }

  private List<String> series(Call call) {
    List<String> known = threads.series().stream().map(ThreadSeries::id).toList();
    List<String> asked =
        call.option("--series")
            .map(ids -> Arrays.stream(ids.split("[,\\s]+")).filter(id -> !id.isEmpty()).toList())
            .orElse(List.of());
    return asked.stream().map(id -> known(known, id)).toList();
  }

  private static String known(List<String> known, String id) {
    return known.stream()
        .filter(one -> one.equalsIgnoreCase(id))
        .findFirst()
        .orElseThrow(
            () ->
                new CommandException(
                    "--series: there is no thread series \""
                        + id
                        + "\"; there are "
                        + String.join(", ", known)));
  }

  private static String text(List<CrossPair> pairs, CrossingRule rule, LengthUnit unit) {
    String closeness =
        String.format(
            Locale.ROOT,
            "Diameters within %.2f and pitches within %.3f of the finer pitch.",
            rule.diameterShare(),
            rule.pitchShare());
    if (pairs.isEmpty()) {
      return "No such pair. " + closeness;
    }
    Columns columns =
        new Columns()
            .right(2, 3)
            .row("thread", "and", "diameter " + unit.symbol(), "pitch " + unit.symbol(), "outcome");
    for (CrossPair pair : pairs) {
      columns.row(
          pair.first().designation(),
          pair.second().designation(),
          Figures.fine(pair.diameterDifference(), unit),
          Figures.fine(pair.pitchDifference(), unit),
          pair.kind().words());
    }
    return columns.text() + "\n" + Figures.count(pairs.size(), "pair") + ". " + closeness;
  }
}
