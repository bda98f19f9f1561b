package org.fettlebench.command.internal.pattern;

import java.util.Map;
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
import org.fettlebench.command.internal.method.Placings;
import org.fettlebench.holes.patterns.PatternQuestion;
import org.fettlebench.holes.patterns.Patterns;
import org.fettlebench.holes.patterns.PlacingLaw;
import org.fettlebench.holes.patterns.SpottingAnswer;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.PatternFile;
import org.fettlebench.measure.LengthUnit;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Tells the chance that two parts drilled apart go together, and what spotting through gives. */
@Component(property = Commands.WORDS + "=pattern chance")
public final class PatternChance implements Command {
  private static final Usage USAGE =
      PatternSheet.simulated(
          Usage.of(
                  "pattern chance",
                  "Tells the chance that the holes of two parts go together, drilled apart or"
                      + " spotted through.",
                  "pattern chance cover.pattern.toml")
              .needs("FILE", "a pattern file; - for piped in")
              .option("--chance", "P", "chance asked, above 0 and below 1; 0.95 if not said")
              .option("--spotting", "METHOD", "how holes are spotted; spot-through if not said"));

  private final KitFiles files;
  private final Patterns patterns;
  private final Placings placings;

  /** Made by the framework. */
  @Activate
  public PatternChance(
      @Reference KitFiles files, @Reference Patterns patterns, @Reference Placings placings) {
    this.files = files;
    this.patterns = patterns;
    this.placings = placings;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    PatternFile file = PatternSheet.read(files, call, placings);
    PatternQuestion question =
        Refusals.ask(() -> file.question(PatternSheet.trials(call), PatternSheet.seed(call)));
    double asked = PatternSheet.asked(call);
    PlacingLaw spot = spotting(call);
    // Spotted is the part with the smaller drill in it: the tapped one, else the lower.
    boolean upperFirst = !question.upper().tapped();
    SpottingAnswer answer = patterns.spotting(question, upperFirst, spot);
    boolean reached = answer.apart().value() >= asked;
    return Reply.of(
        !reached,
        text(file, question, answer, new Asked(asked, spot, call.unit())),
        data(file, question, answer, new Asked(asked, spot, call.unit())));
  }

  private record Asked(double chance, PlacingLaw spot, LengthUnit unit) {}

  private PlacingLaw spotting(Call call) {
    return PlacingLaw.of(
        placings.one(call, call.option("--spotting").orElse("spot-through")).now());
  }

  private static String text(
      PatternFile file, PatternQuestion question, SpottingAnswer answer, Asked asked) {
    LengthUnit unit = asked.unit();
    boolean reached = answer.apart().value() >= asked.chance();
    Columns columns =
        new Columns()
            .indent(2)
            .row(
                "fastener",
                file.fastener() + ", " + Figures.size(question.fastenerMm(), unit) + " diameter")
            .row(question.upper().name(), PatternSheet.part(question.upper(), unit))
            .row(question.lower().name(), PatternSheet.part(question.lower(), unit))
            .row(
                "play",
                Figures.allowance(question.playMm(), unit)
                    + " radius: how far two centres may lie apart ("
                    + (question.fixed() ? "fixed fastener" : "floating fastener")
                    + ")")
            .row("drilled apart", PatternSheet.said(answer.apart()))
            .row(
                answer.second() + " spotted through " + answer.first(),
                PatternSheet.said(answer.spotted())
                    + " ("
                    + asked.spot().means()
                    + ", sigma per axis "
                    + Figures.allowance(asked.spot().sigmaPerAxisMm(), unit)
                    + ")")
            .row(
                "then against the drawing",
                answer.first()
                    + " sigma per axis "
                    + Figures.allowance(answer.firstSigmaMm(), unit)
                    + ", "
                    + answer.second()
                    + " "
                    + Figures.allowance(answer.secondSpottedSigmaMm(), unit)
                    + " (drilled apart "
                    + Figures.allowance(answer.secondApartSigmaMm(), unit)
                    + ")");
    return file.name()
        + ", "
        + Figures.count(question.pattern().centres().size(), "hole")
        + ": "
        + PatternSheet.percent(answer.apart().value())
        + " go together drilled apart, "
        + (reached ? "which is" : "less than")
        + " the "
        + PatternSheet.percent(asked.chance())
        + " asked"
        + (reached ? " or more\n" : "\n")
        + columns.text()
        + "\n"
        + PatternSheet.leaning(question, unit)
        + "Once spotted, the two parts are a pair: mark them, they will fit no others.\n"
        + Cautions.DRILLING;
  }

  private static Map<String, Object> data(
      PatternFile file, PatternQuestion question, SpottingAnswer answer, Asked asked) {
    return Data.of(
        "pattern", file.name(),
        "holes", question.pattern().centres().size(),
        "fastener", file.fastener(),
        "fastenerDiameterMm", Data.mm(question.fastenerMm()),
        "joining", question.fixed() ? "fixed" : "floating",
        "parts", PatternSheet.parts(question),
        "playRadiusMm", Data.mm(question.playMm()),
        "chanceAsked", Data.rounded(asked.chance(), 6),
        "reached", answer.apart().value() >= asked.chance(),
        "drilledApart", PatternSheet.data(answer.apart()),
        "spotted", PatternSheet.data(answer.spotted()),
        "spotting", asked.spot().means(),
        "spottingSigmaPerAxisMm", Data.mm(asked.spot().sigmaPerAxisMm()),
        "drilledFirst", answer.first(),
        "spottedPart", answer.second(),
        "firstSigmaPerAxisMm", Data.mm(answer.firstSigmaMm()),
        "secondApartSigmaPerAxisMm", Data.mm(answer.secondApartSigmaMm()),
        "secondSpottedSigmaPerAxisMm", Data.mm(answer.secondSpottedSigmaMm()));
  }
}
