package org.fettlebench.command.internal.holeplace;

import java.util.Map;
import java.util.Optional;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Cautions;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.command.internal.hole.DrillsAsked;
import org.fettlebench.command.internal.method.Placings;
import org.fettlebench.holes.chance.MethodEstimate;
import org.fettlebench.holes.correct.Cutter;
import org.fettlebench.holes.correct.ExpectedError;
import org.fettlebench.holes.correct.PilotAnswer;
import org.fettlebench.holes.correct.PilotAnswer.Rung;
import org.fettlebench.holes.correct.PilotQuestion;
import org.fettlebench.holes.correct.Pilots;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Chooses the pilot after which a hole that lands wrong can still be filed to its place. */
@Component(property = Commands.WORDS + "=hole pilot")
public final class HolePilot implements Command {
  private static final int MOST_RUNGS = 8;
  private static final Usage USAGE =
      DrillsAsked.flags(
          Placings.options(
              Usage.of(
                      "hole pilot",
                      "Chooses a pilot drill small enough that a hole that lands wrong can still be cured.",
                      "hole pilot 1/4 --method scribe-and-dot")
                  .mayMany(
                      "SIZE", "finished hole: a length or a drill; of the seat file if not said")
                  .option("--seat", "FILE", "a seat file that says size, method and confidence")
                  .option("--method", "ID", "how the hole is placed, such as scribe-and-dot")
                  .option(Bench.CONFIDENCE, "P", "chance asked that it lands so; 0.95 if not said")
                  .option(
                      Habits.CLEAN_UP,
                      "LENGTH",
                      "metal left per side for the last drill; 0.1 mm if not said")));

  private final Bench bench;
  private final Pilots pilots;

  /** Made by the framework. */
  @Activate
  public HolePilot(@Reference Bench bench, @Reference Pilots pilots) {
    this.bench = bench;
    this.pilots = pilots;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    Optional<SeatFile> seat = call.option("--seat").map(file -> bench.seat(call, "--seat"));
    double confidence =
        bench.confidence(call, seat.map(s -> s.hole().confidence()).orElse(Habits.CONFIDENCE));
    String method =
        call.option("--method")
            .or(() -> seat.map(s -> s.hole().method()))
            .orElseThrow(
                () ->
                    new CommandException(
                        "nothing says how the hole is placed; add --method, such as"
                            + " scribe-and-dot, or --seat FILE"));
    MethodEstimate estimate = bench.method(call, method);
    DrillsAsked asked = bench.drillsAsked(call);
    PilotAnswer answer =
        pilots.choose(
            new PilotQuestion(
                finish(call, seat),
                Habits.cleanUp(call),
                Bench.expected(estimate.now(), confidence),
                Bench.cutters(asked.sizes()),
                bench.catalogue(),
                bench.methods(call, confidence)));
    return Reply.of(
        answer.choice().isEmpty(),
        text(answer, estimate, asked.from(), call.unit()),
        data(answer, estimate, asked.from()));
  }

  private double finish(Call call, Optional<SeatFile> seat) {
    if (!call.operands("SIZE").isEmpty()) {
      return bench.drill(call, "SIZE").diameter().millimetres();
    }
    return seat.map(s -> s.question().holeDiameterMm())
        .orElseThrow(
            () ->
                new CommandException(
                    "nothing says how large the hole shall be; give its size, or --seat FILE"));
  }

  private static String text(
      PilotAnswer answer, MethodEstimate estimate, DrillsAsked.From from, LengthUnit unit) {
    PilotQuestion question = answer.question();
    StringBuilder text = new StringBuilder(head(answer, unit)).append('\n');
    text.append(figures(question, estimate, unit).text());
    if (answer.ladder().isEmpty()) {
      text.append("\nNo drill below that size is at hand; \"stock receive\" puts drills in");
    } else {
      text.append("\nBelow it, from ")
          .append(from.words())
          .append(" (errors are radii)\n")
          .append(ladder(answer, unit).text());
    }
    answer
        .remedies()
        .forEach(
            remedy -> text.append("\n  - ").append(LengthFormat.turned(remedy.sentence(), unit)));
    if (answer.choice().isEmpty() && answer.remedies().isEmpty()) {
      text.append(
          "\n  - no pilot leaves that much: place the hole through a bush or a mating part, or"
              + " finish it larger");
    }
    return text.append('\n').append(Cautions.DRILLING).toString();
  }

  private static String head(PilotAnswer answer, LengthUnit unit) {
    String finish = Figures.size(answer.question().finishDiameterMm(), unit);
    return answer
        .choice()
        .map(rung -> "Pilot " + rung.drill().name() + " for a hole of " + finish)
        .orElse("No pilot at hand will do for a hole of " + finish);
  }

  private static Columns figures(PilotQuestion question, MethodEstimate estimate, LengthUnit unit) {
    ExpectedError expected = question.expected();
    Columns columns = new Columns().indent(2);
    columns.row(
        "error to be expected",
        Figures.allowance(expected.radiusMm(), unit)
            + ", "
            + expected.title()
            + ", "
            + expected.means());
    return Placings.spread(columns, estimate, unit)
        .row(
            "left per side for the last drill",
            Figures.allowance(question.cleanUp().perSideMm(), unit)
                + ", "
                + question.cleanUp().means());
  }

  private static Columns ladder(PilotAnswer answer, LengthUnit unit) {
    Columns columns = new Columns().indent(2).row("drill", "can be cured", "covers it");
    int shown = 0;
    for (Rung rung : answer.ladder()) {
      boolean chosen = answer.choice().filter(rung::equals).isPresent();
      if (shown++ < MOST_RUNGS || chosen) {
        columns.row(
            rung.drill().name(),
            rung.curableMm() < 0 ? "nothing" : Figures.allowance(rung.curableMm(), unit),
            (rung.covers() ? "yes" : "no") + (chosen ? ", take this" : ""));
      }
    }
    return columns;
  }

  private static Object data(PilotAnswer answer, MethodEstimate estimate, DrillsAsked.From from) {
    PilotQuestion question = answer.question();
    Map<String, Object> data =
        Data.of(
            "finishDiameterMm", Data.mm(question.finishDiameterMm()),
            "expected", PlaceData.error(question.expected()),
            "method", Placings.data(estimate),
            "cleanUpPerSideMm", Data.mm(question.cleanUp().perSideMm()),
            "cleanUpMeans", question.cleanUp().means(),
            "pilot", answer.choice().map(HolePilot::rung),
            "finishHeld", answer.finishHeld(),
            "ladder", answer.ladder().stream().map(HolePilot::rung).toList(),
            "remedies",
                answer.remedies().stream()
                    .map(
                        remedy ->
                            Data.of(
                                "kind",
                                remedy
                                    .kind()
                                    .name()
                                    .toLowerCase(java.util.Locale.ROOT)
                                    .replace('_', ' '),
                                "sentence",
                                remedy.sentence(),
                                "pilot",
                                rung(remedy.pilot())))
                    .toList());
    data.putAll(from.data());
    return data;
  }

  private static Object rung(Rung rung) {
    Cutter drill = rung.drill();
    return Data.of(
        "name", drill.name(),
        "diameterMm", Data.mm(drill.diameterMm()),
        "curableMm", Data.mm(rung.curableMm()),
        "covers", rung.covers());
  }
}
