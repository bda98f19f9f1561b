package org.fettlebench.command.internal.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.club.Stock;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Cautions;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.command.internal.Refusals;
import org.fettlebench.command.internal.hole.DrillsAsked;
import org.fettlebench.command.internal.hole.HeldDrills;
import org.fettlebench.command.internal.method.Placings;
import org.fettlebench.holes.chance.Chance;
import org.fettlebench.holes.patterns.PatternQuestion;
import org.fettlebench.holes.patterns.Patterns;
import org.fettlebench.holes.patterns.PlayNeeded;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.PatternFile;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Finds the smallest clearance drill at hand with which a pattern goes together often enough. */
@Component(property = Commands.WORDS + "=pattern drill")
public final class PatternDrill implements Command {
  /** Drills shown on each side of the one chosen. */
  private static final int BESIDE = 2;

  private static final Usage USAGE =
      DrillsAsked.flags(
          PatternSheet.simulated(
              Usage.of(
                      "pattern drill",
                      "Finds the clearance drill with which a pattern goes together at the chance"
                          + " asked.",
                      "pattern drill cover.pattern.toml --chance 0.99")
                  .needs("FILE", "a pattern file; - for piped in")
                  .option("--chance", "P", "chance asked, above 0 and below 1; 0.95 if not said")
                  .option("--most", "LENGTH", "largest hole that will do, such as under a head")));

  private final KitFiles files;
  private final Patterns patterns;
  private final Drills drills;
  private final Stock stock;
  private final Placings placings;

  /** Made by the framework. */
  @Activate
  public PatternDrill(
      @Reference KitFiles files,
      @Reference Patterns patterns,
      @Reference Drills drills,
      @Reference Stock stock,
      @Reference Placings placings) {
    this.files = files;
    this.patterns = patterns;
    this.drills = drills;
    this.stock = stock;
    this.placings = placings;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  /** A drill and what it gives. */
  private record Line(DrillSize drill, Chance chance, List<String> places) {}

  /** The answer. */
  private record Found(
      PatternFile file,
      PatternQuestion question,
      double asked,
      double neededMm,
      DrillsAsked.From from,
      Optional<Line> chosen,
      List<Line> lines) {}

  @Override
  public Reply run(Call call) {
    DrillsAsked from = DrillsAsked.of(call, stock, drills);
    PatternFile file = PatternSheet.read(files, call, placings);
    PatternQuestion question =
        Refusals.ask(() -> file.holeQuestion(PatternSheet.trials(call), PatternSheet.seed(call)));
    Found found = find(file, question, call, from);
    return Reply.of(found.chosen().isEmpty(), text(found, call.unit()), data(found));
  }

  private Found find(PatternFile file, PatternQuestion question, Call call, DrillsAsked from) {
    double asked = PatternSheet.asked(call);
    PlayNeeded needed = patterns.needed(question);
    double most = call.length("--most").map(Length::millimetres).orElse(2 * question.fastenerMm());
    List<Line> lines =
        from.sizes().stream()
            .filter(drill -> drill.diameter().millimetres() > question.fastenerMm())
            .filter(drill -> drill.diameter().millimetres() <= most)
            .map(drill -> line(question, needed, drill, from.held()))
            .toList();
    Optional<Line> chosen =
        lines.stream().filter(line -> line.chance().value() >= asked).findFirst();
    return new Found(
        file,
        question,
        asked,
        question.holeForPlayMm(needed.playFor(asked)),
        from.from(),
        chosen,
        near(lines, chosen));
  }

  private static Line line(
      PatternQuestion question, PlayNeeded needed, DrillSize drill, HeldDrills held) {
    double play = question.withHoles(drill.diameter().millimetres()).playMm();
    return new Line(drill, needed.chanceAt(play), held.places(drill));
  }

  private static List<Line> near(List<Line> lines, Optional<Line> chosen) {
    int at = chosen.map(lines::indexOf).orElse(lines.size() - 1);
    return lines.isEmpty()
        ? List.of()
        : lines.subList(Math.max(0, at - BESIDE), Math.min(lines.size(), at + BESIDE + 1));
  }

  private static String text(Found found, LengthUnit unit) {
    List<String> text = new ArrayList<>();
    text.add(
        found.file().name()
            + ": "
            + found
                .chosen()
                .map(line -> "drill " + line.drill().name() + " in every plain hole")
                .orElse("no drill reaches it, of " + found.from().words())
            + ", "
            + PatternSheet.percent(found.asked())
            + " asked");
    text.add(
        "  hole needed "
            + Figures.size(found.neededMm(), unit)
            + " for a fastener of "
            + Figures.size(found.question().fastenerMm(), unit)
            + (found.question().fixed() ? ", tapped in one part" : ", clearance in both parts"));
    Columns columns = new Columns().indent(2).row("drill", "hole", "go together", "where");
    for (Line line : found.lines()) {
      columns.row(
          line.drill().name(),
          Figures.size(line.drill().diameter().millimetres(), unit),
          PatternSheet.percent(line.chance().value())
              + " +- "
              + PatternSheet.percent(line.chance().standardError()),
          line.places().isEmpty() ? "not held" : String.join(", ", line.places()));
    }
    if (!found.lines().isEmpty()) {
      text.add(columns.text());
    }
    if (found.chosen().isEmpty()) {
      text.add(
          "Buy or borrow a drill of "
              + Figures.size(found.neededMm(), unit)
              + " or a little more, place the holes more carefully, or spot one part through the"
              + " other.");
    }
    text.add(
        "The same "
            + found.question().trials()
            + " simulated pairs serve every drill; +- is the standard error. Holes are taken to be"
            + " the drill's own size: a drill that cuts large only helps.");
    text.add(found.question().upper().name() + ": " + found.question().upper().placing().means());
    text.add(found.question().lower().name() + ": " + found.question().lower().placing().means());
    String leaning = PatternSheet.leaning(found.question(), unit).strip();
    if (!leaning.isEmpty()) {
      text.add(leaning);
    }
    text.add(Cautions.DRILLING);
    return String.join("\n", text);
  }

  private static Map<String, Object> data(Found found) {
    Map<String, Object> data =
        Data.of(
            "pattern", found.file().name(),
            "holes", found.question().pattern().centres().size(),
            "fastener", found.file().fastener(),
            "fastenerDiameterMm", Data.mm(found.question().fastenerMm()),
            "joining", found.question().fixed() ? "fixed" : "floating",
            "chanceAsked", Data.rounded(found.asked(), 6),
            "holeNeededDiameterMm", Data.mm(found.neededMm()),
            "chosen", found.chosen().map(PatternDrill::data),
            "drills", found.lines().stream().map(PatternDrill::data).toList(),
            "placing",
                List.of(
                    found.question().upper().placing().means(),
                    found.question().lower().placing().means()));
    data.putAll(found.from().data());
    return data;
  }

  private static Object data(Line line) {
    return Data.of(
        "drill", line.drill().name(),
        "diameterMm", Data.mm(line.drill().diameter()),
        "goTogether", PatternSheet.data(line.chance()),
        "places", line.places());
  }
}
