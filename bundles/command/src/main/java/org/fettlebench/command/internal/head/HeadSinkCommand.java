package org.fettlebench.command.internal.head;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fettlebench.club.Stock;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.hole.HeldDrills;
import org.fettlebench.command.internal.thread.ThreadWords;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fasteners.HeadSink;
import org.fettlebench.fasteners.HeadSinks;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.fasteners.SinkWanted;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.threads.Threads;
import org.fettlebench.tooling.ClearanceChoice;
import org.fettlebench.tooling.ClearanceFit;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.HoleChooser;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Says what to cut so that a head lies flush or below the face, or bears square on it. */
@Component(service = Command.class, property = Commands.WORDS + "=head sink")
public final class HeadSinkCommand implements Command {
  private static final String MEASURED = "measured";
  private static final Usage USAGE =
      Usage.of(
              "head sink",
              "Says the countersink, counterbore or spot face for a head, and what makes it.",
              "head sink M6 --style socket-cap --below \"0.5 mm\"")
          .needsMany("THREAD", "such as M6, 10-32 UNF, 2 BA")
          .option("--style", "STYLE", "of a listed head: \"head show\" names them; all if not said")
          .option("--hole", "LENGTH", "the screw's hole; else the listed medium clearance hole")
          .option("--below", "LENGTH", "how far the head lies under the face; flush if not said")
          .flag("--washer", "a plain washer goes under the head")
          .option("--diameter", "LENGTH", "of a head that you measured; its cone's at the top")
          .option("--height", "LENGTH", "of a measured head that is not countersunk")
          .option("--angle", "DEGREES", "of a measured countersunk head, such as 90 or 82");

  private final Threads threads;
  private final Heads heads;
  private final HeadSinks sinks;
  private final HoleChooser chooser;
  private final Drills drills;
  private final Stock stock;

  /** Made by the framework. */
  @Activate
  @SuppressWarnings("checkstyle:ParameterNumber")
  public HeadSinkCommand(
      @Reference Threads threads,
      @Reference Heads heads,
      @Reference HeadSinks sinks,
      @Reference HoleChooser chooser,
      @Reference Drills drills,
      @Reference Stock stock) {
    this.threads = threads;
    this.heads = heads;
    this.sinks = sinks;
    this.chooser = chooser;
    this.drills = drills;
    this.stock = stock;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    ThreadCall called = ThreadWords.called(threads, call.operand("THREAD").orElseThrow());
    return ThreadWords.told(called, answer(call, called.thread()));
  }

  private Reply answer(Call call, ScrewThread thread) {
    try {
      List<HeadSink> cuts = cuts(call, thread);
      HeldDrills held = new HeldDrills(stock, drills);
      SinkAnswer answer = new SinkAnswer(thread, cuts, held, call.unit());
      return Reply.of(answer.wanting(), answer.text(), answer.data());
    } catch (MeasureException refused) {
      throw new CommandException(refused.getMessage(), refused);
    }
  }

  private List<HeadSink> cuts(Call call, ScrewThread thread) {
    SinkWanted wanted = wanted(call, thread);
    List<HeadSink> cuts = new ArrayList<>();
    if (call.option("--diameter").isPresent()) {
      cuts.add(sinks.of(thread, measured(call, thread), wanted));
      return cuts;
    }
    for (Head head : listed(call, thread)) {
      // Of all styles, those that cannot be sunk for want of a height are passed over.
      if (call.option("--style").isPresent() || head.height().isPresent()) {
        cuts.add(sinks.of(thread, head, wanted));
      }
    }
    return cuts;
  }

  private SinkWanted wanted(Call call, ScrewThread thread) {
    return new SinkWanted(
        call.length("--hole").or(() -> mediumHole(thread)),
        call.length("--below").orElse(Length.ZERO),
        call.on("--washer"));
  }

  private Optional<Length> mediumHole(ScrewThread thread) {
    List<DrillSize> all = drills.catalogue();
    return chooser.clearance(thread, all).stream()
        .filter(choice -> choice.fit() == ClearanceFit.MEDIUM)
        .map(ClearanceChoice::listed)
        .findFirst();
  }

  private List<Head> listed(Call call, ScrewThread thread) {
    List<Head> all = heads.forThread(thread);
    Optional<String> style = call.option("--style");
    List<Head> wanted =
        all.stream().filter(head -> style.isEmpty() || head.style().equals(style.get())).toList();
    if (wanted.isEmpty()) {
      String known = all.stream().map(Head::style).collect(Collectors.joining(", "));
      throw new CommandException(
          "no table lists %s for %s; %s, or measure the head and give --diameter with --height or"
                  .formatted(
                      style.map(s -> "a head of style \"" + s + "\"").orElse("a head"),
                      thread.designation(),
                      known.isEmpty() ? "there are none" : "there are " + known)
              + " --angle");
    }
    return wanted;
  }

  private static Head measured(Call call, ScrewThread thread) {
    Optional<Double> angle = call.number("--angle", 0, 179);
    Optional<Length> height = call.length("--height");
    if (angle.isPresent() == height.isPresent()) {
      throw new CommandException(
          "a measured head needs --angle when it is countersunk, else --height");
    }
    return new Head(
        MEASURED,
        thread.designation() + " head as measured",
        thread.designation(),
        Optional.empty(),
        call.length("--diameter").orElseThrow(),
        height,
        Optional.empty(),
        new Source("as said with the command", Standing.MEASURED),
        "",
        angle);
  }
}
