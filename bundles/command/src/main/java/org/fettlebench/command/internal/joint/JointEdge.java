package org.fettlebench.command.internal.joint;

import java.util.ArrayList;
import java.util.List;
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
import org.fettlebench.command.internal.Footnotes;
import org.fettlebench.command.internal.Refusals;
import org.fettlebench.command.internal.thread.ThreadWords;
import org.fettlebench.holes.patterns.EdgeRule;
import org.fettlebench.holes.patterns.EdgeRule.To;
import org.fettlebench.holes.patterns.EdgeRules;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Tolerances;
import org.fettlebench.tables.Source;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.threads.Threads;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Holds a hole's distance from the edge and from the next hole against the published rules. */
@Component(property = Commands.WORDS + "=joint edge")
public final class JointEdge implements Command {
  private static final Usage USAGE =
      Usage.of(
              "joint edge",
              "Tells how near a hole may come to an edge or to the next hole, by each rule.",
              "joint edge 2 BA --edge \"5 mm\"")
          .needsMany("THREAD", "such as 2 BA, M6, 1/4 BSF")
          .option("--hole", "LENGTH", "diameter of the hole; the thread's own if not said")
          .option("--edge", "LENGTH", "centre to edge, to be held against the rules")
          .option("--end", "LENGTH", "centre to the edge that the load pulls towards")
          .option("--pitch", "LENGTH", "centre to centre of the next hole");

  private final Threads threads;
  private final EdgeRules rules;

  /** Made by the framework. */
  @Activate
  public JointEdge(@Reference Threads threads, @Reference EdgeRules rules) {
    this.threads = threads;
    this.rules = rules;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  /** A rule with its figure. */
  private record Line(String what, To to, double leastMm, Source source, Optional<Double> hereMm) {
    Optional<Boolean> met() {
      return hereMm.map(here -> here >= leastMm - Tolerances.GEOMETRY_SLACK_MM);
    }
  }

  @Override
  public Reply run(Call call) {
    ThreadCall called = ThreadWords.called(threads, call.operand("THREAD").orElseThrow());
    return ThreadWords.told(called, answer(call, called.thread()));
  }

  private Reply answer(Call call, ScrewThread thread) {
    Length hole = call.length("--hole").orElse(thread.major());
    List<Line> lines = Refusals.ask(() -> lines(call, thread, hole.millimetres()));
    boolean wanting = lines.stream().anyMatch(line -> line.met().filter(met -> !met).isPresent());
    Object data =
        Data.of(
            "thread", thread.designation(),
            "holeDiameterMm", Data.mm(hole),
            "rules", lines.stream().map(JointEdge::data).toList());
    return Reply.of(wanting, text(thread, hole, lines, call.unit()), data);
  }

  private List<Line> lines(Call call, ScrewThread thread, double holeMm) {
    double major = thread.major().millimetres();
    List<Line> lines = new ArrayList<>();
    List<EdgeRule> holding = rules.rules().stream().filter(r -> r.holdsFor(major)).toList();
    for (EdgeRule rule : holding) {
      double least = rule.leastMm(major, holeMm, thread.pitch().millimetres());
      lines.add(new Line(rule.what(), rule.to(), least, rule.source(), here(call, rule.to())));
    }
    rules.listed().stream()
        .filter(row -> Tolerances.sameMm(row.fastenerMm(), major))
        .forEach(
            row ->
                lines.add(
                    new Line(
                        "structural bolts, as listed for the size",
                        To.EDGE,
                        row.leastMm(),
                        row.source(),
                        here(call, To.EDGE))));
    return lines;
  }

  private static Optional<Double> here(Call call, To to) {
    String option =
        switch (to) {
          case EDGE -> "--edge";
          case END -> "--end";
          case NEXT_HOLE -> "--pitch";
        };
    Optional<Length> here = call.length(option);
    if (here.filter(length -> length.nanometres() < 0).isPresent()) {
      throw new CommandException(
          option + " " + here.get() + " is below 0 mm; measure from the hole's centre to the edge");
    }
    return here.map(Length::millimetres);
  }

  private static String text(ScrewThread thread, Length hole, List<Line> lines, LengthUnit unit) {
    Footnotes notes = new Footnotes();
    Columns columns =
        new Columns()
            .row(
                thread.designation() + ", hole " + Figures.size(hole.millimetres(), unit),
                "centre to",
                "least",
                "here",
                "");
    for (Line line : lines) {
      columns.row(
          line.what(),
          line.to().word(),
          Figures.size(line.leastMm(), unit),
          line.met().map(met -> met ? "met" : "TOO NEAR").orElse("-"),
          notes.mark(Figures.source(line.source())));
    }
    return columns.text() + notes.text();
  }

  private static Object data(Line line) {
    return Data.of(
        "what", line.what(),
        "to", line.to().word(),
        "leastMm", Data.mm(line.leastMm()),
        "leastIn", Data.in(Length.ofMillimetres(line.leastMm())),
        "hereMm", line.hereMm().map(Data::mm),
        "met", line.met(),
        "source", Figures.sourceData(line.source()));
  }
}
