package org.fettlebench.command.internal.thread;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ThreadSide;
import org.fettlebench.threads.identify.Candidate;
import org.fettlebench.threads.identify.CrossPair;
import org.fettlebench.threads.identify.CrossingRule;
import org.fettlebench.threads.identify.Measured;
import org.fettlebench.threads.identify.Reading;
import org.fettlebench.threads.identify.ThreadIdentifier;
import org.fettlebench.threads.identify.UsualUncertainty;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Names a thread from what was measured on it. */
@Component(service = Command.class, property = Commands.WORDS + "=thread identify")
public final class ThreadIdentify implements Command {
  private static final int USUAL_COUNT = 5;
  private static final int MOST_COUNT = 50;

  private static final Usage USAGE =
      Usage.of(
              "thread identify",
              "Names a thread from its diameter, pitch and hexagon, the likeliest first.",
              "thread identify --diameter 4.62mm --tpi 31.5")
          .option("--diameter", "LENGTH", "outside diameter of a screw, bore of a nut")
          .option("--diameter-error", "LENGTH", "standard uncertainty; 0.02 mm if not said")
          .option("--pitch", "LENGTH", "by thread gauge")
          .option("--tpi", "NUMBER", "threads per inch, in place of the pitch")
          .option("--span", "LENGTH", "length over a number of pitches, with --turns")
          .option("--turns", "N", "how many pitches the span is, 1 to 200")
          .option("--pitch-error", "LENGTH", "of one pitch; 1 % by gauge, 0.2 mm of the span else")
          .option("--hexagon", "LENGTH", "across the flats")
          .option("--hexagon-error", "LENGTH", "standard uncertainty; 0.1 mm if not said")
          .option("--wear", "LENGTH", "by how much it may be worn; none if not said")
          .option("--count", "N", "how many candidates, 1 to 50; 5 if not said")
          .flag("--nut", "a nut or tapped hole was measured, not a screw");

  private final ThreadIdentifier identifier;

  /** Made by the framework. */
  @Activate
  public ThreadIdentify(@Reference ThreadIdentifier identifier) {
    this.identifier = identifier;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    Measured measured;
    try {
      measured = measured(call);
    } catch (MeasureException refused) {
      throw new CommandException(refused.getMessage());
    }
    List<Candidate> found =
        identifier.identify(measured, call.whole("--count", 1, MOST_COUNT).orElse(USUAL_COUNT));
    List<CrossPair> near =
        found.isEmpty() ? List.of() : identifier.pairsOf(found.get(0).thread(), CrossingRule.USUAL);
    boolean agrees = found.stream().anyMatch(Candidate::agrees);
    String text = text(measured, found, near, call.unit());
    Map<String, Object> data = data(measured, found, near, agrees);
    if (takesUsual(call, measured)) {
      text += "\n± where none was said: " + Figures.source(UsualUncertainty.SOURCE);
      data.put("usualUncertainty", Figures.sourceData(UsualUncertainty.SOURCE));
    }
    return Reply.of(!agrees, text, data);
  }

  private static boolean takesUsual(Call call, Measured measured) {
    return measured.diameter().isPresent() && call.option("--diameter-error").isEmpty()
        || measured.pitch().isPresent() && call.option("--pitch-error").isEmpty()
        || measured.hexagon().isPresent() && call.option("--hexagon-error").isEmpty();
  }

  private static Measured measured(Call call) {
    return new Measured(
        call.on("--nut") ? ThreadSide.INTERNAL : ThreadSide.EXTERNAL,
        reading(call, "--diameter", UsualUncertainty.DIAMETER),
        pitch(call),
        reading(call, "--hexagon", UsualUncertainty.HEXAGON),
        call.length("--wear").orElse(Length.ZERO));
  }

  private static Optional<Reading> reading(Call call, String option, Length usual) {
    Length error = call.length(option + "-error").orElse(usual);
    return call.length(option).map(value -> new Reading(value, error));
  }

  private static Optional<Reading> pitch(Call call) {
    Optional<Double> tpi = call.number("--tpi", 0, 500);
    Optional<Length> span = call.length("--span");
    Optional<Integer> turns = call.whole("--turns", 1, 200);
    if (span.isPresent() != turns.isPresent()) {
      throw new CommandException("--span and --turns go together: a length over so many pitches");
    }
    List<Length> said = new ArrayList<>();
    call.length("--pitch").ifPresent(said::add);
    tpi.ifPresent(number -> said.add(Length.ofInches(1 / number)));
    span.ifPresent(
        length -> said.add(Length.ofMillimetres(length.millimetres() / turns.orElseThrow())));
    if (said.size() > 1) {
      throw new CommandException("say the pitch once: --pitch, --tpi or --span with --turns");
    }
    Optional<Length> error =
        call.length("--pitch-error").or(() -> turns.map(UsualUncertainty::ofSpan));
    return said.stream()
        .findFirst()
        .map(value -> new Reading(value, error.orElseGet(() -> UsualUncertainty.ofPitch(value))));
  }

  private static String text(
      Measured measured, List<Candidate> found, List<CrossPair> near, LengthUnit unit) {
    Columns columns = new Columns().right(1, 2, 3, 4);
    columns.row(
        "thread",
        "share",
        "diameter off " + unit.symbol(),
        "pitch off " + unit.symbol(),
        "hexagon off " + unit.symbol(),
        "");
    for (Candidate one : found) {
      columns.row(
          one.thread().designation(),
          String.format(Locale.ROOT, "%.1f %%", 100 * one.share()),
          off(one.diameterOff(), unit),
          off(one.pitchOff(), unit),
          off(one.hexagonOff(), unit),
          one.agrees() ? "agrees" : "does not agree");
    }
    List<String> lines = new ArrayList<>();
    lines.add(said(measured, unit));
    lines.add(columns.text());
    if (found.stream().noneMatch(Candidate::agrees)) {
      lines.add(
          "Nothing agrees: measure again, allow for wear (--wear), or it is no listed thread.");
    }
    if (!near.isEmpty()) {
      lines.add("Could be taken for " + found.get(0).thread().designation() + ":");
      Columns pairs = new Columns().indent(2);
      near.stream()
          .limit(USUAL_COUNT)
          .forEach(pair -> pairs.row(pair.second().designation(), pair.kind().words()));
      lines.add(pairs.text());
    }
    return String.join("\n", lines);
  }

  private static String off(Optional<Length> off, LengthUnit unit) {
    return off.map(length -> Figures.fine(length, unit)).orElse("-");
  }

  private static String said(Measured measured, LengthUnit unit) {
    List<String> parts = new ArrayList<>();
    measured.diameter().ifPresent(one -> parts.add("diameter " + said(one, unit)));
    measured.pitch().ifPresent(one -> parts.add("pitch " + said(one, unit)));
    measured.hexagon().ifPresent(one -> parts.add("hexagon " + said(one, unit)));
    return measured.side().word() + ", " + String.join(", ", parts);
  }

  private static String said(Reading reading, LengthUnit unit) {
    return Figures.fine(reading.value(), unit)
        + " ± "
        + Figures.fine(reading.uncertainty(), unit)
        + " "
        + unit.symbol();
  }

  private static Map<String, Object> data(
      Measured measured, List<Candidate> found, List<CrossPair> near, boolean agrees) {
    return Data.of(
        "side", measured.side().word(),
        "diameter", measured.diameter().map(ThreadIdentify::data),
        "pitch", measured.pitch().map(ThreadIdentify::data),
        "hexagon", measured.hexagon().map(ThreadIdentify::data),
        "wearMm", Data.mm(measured.wear()),
        "agrees", agrees,
        "candidates", found.stream().map(ThreadIdentify::data).toList(),
        "couldBeTakenFor", near.stream().map(PairData::of).toList());
  }

  private static Map<String, Object> data(Reading reading) {
    return Data.of(
        "valueMm", Data.mm(reading.value()), "uncertaintyMm", Data.mm(reading.uncertainty()));
  }

  private static Map<String, Object> data(Candidate one) {
    return Data.of(
        "designation", one.thread().designation(),
        "series", one.thread().series(),
        "sharePercent", Data.rounded(100 * one.share(), 4),
        "diameterOffMm", one.diameterOff().map(Data::mm),
        "pitchOffMm", one.pitchOff().map(Data::mm),
        "hexagonOffMm", one.hexagonOff().map(Data::mm),
        "agrees", one.agrees());
  }
}
