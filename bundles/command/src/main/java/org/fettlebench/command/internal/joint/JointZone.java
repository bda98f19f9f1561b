package org.fettlebench.command.internal.joint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
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
import org.fettlebench.command.internal.Refusals;
import org.fettlebench.command.internal.thread.ThreadWords;
import org.fettlebench.holes.patterns.PositionZones;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.threads.Threads;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Tells the zones of position that a clearance hole allows, floating and fixed. */
@Component(property = Commands.WORDS + "=joint zone")
public final class JointZone implements Command {
  private static final String SOURCE =
      "ASME Y14.5, appendix: floating H = F + T; fixed H = F + T1 + T2; not projected"
          + " H = F + T1 + T2 (1 + 2 P / D)";
  private static final Usage USAGE =
      Usage.of(
              "joint zone",
              "Tells how far out holes may be for a fastener: zone diameters and radii of error.",
              "joint zone --fastener \"6 mm\" --hole \"6.44 mm\" --fixed")
          .option("--fastener", "SIZE", "diameter as large as it may be, or a thread: M6, 2 BA")
          .option("--hole", "LENGTH", "clearance hole as small as it may be")
          .flag("--fixed", "tapped in one part; clearance in all parts if not said")
          .option("--tapped-zone", "LENGTH", "DIAMETER of the tapped hole's zone, T2")
          .option("--clearance-zone", "LENGTH", "DIAMETER of the clearance hole's zone, T1")
          .option("--passed", "LENGTH", "thickness passed, P, when the zone is not projected")
          .option("--engaged", "LENGTH", "depth engaged, D, when the zone is not projected")
          .option("--actual", "LENGTH", "the hole as measured, for its bonus at maximum material")
          .option("--out-of-square", "LENGTH", "what the measured hole leans over its depth")
          .option("--head", "LENGTH", "across flats or diameter, for the largest hole under it");

  private final Threads threads;

  /** Made by the framework. */
  @Activate
  public JointZone(@Reference Threads threads) {
    this.threads = threads;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  /** What came out. */
  private record Answer(
      double fastenerMm,
      Optional<Double> holeMm,
      boolean fixed,
      double leaning,
      Map<String, Double> zonesMm,
      Map<String, Double> sizesMm) {}

  @Override
  public Reply run(Call call) {
    Answer answer = Refusals.ask(() -> answer(call));
    boolean wanting = answer.zonesMm().values().stream().anyMatch(zone -> !(zone >= 0));
    return Reply.of(wanting, text(answer, wanting, call.unit()), data(answer, wanting));
  }

  private Answer answer(Call call) {
    double fastener = fastener(call);
    Optional<Double> hole = mm(call, "--hole");
    double leaning = leaning(call);
    Map<String, Double> zones = new LinkedHashMap<>();
    Map<String, Double> sizes = new LinkedHashMap<>();
    if (hole.isPresent() && call.on("--fixed")) {
      fixed(call, hole.get(), fastener, leaning, zones);
    } else if (hole.isPresent()) {
      zones.put("each part", PositionZones.floatingMm(hole.get(), fastener));
    }
    if (hole.isEmpty()) {
      sizes.put("least hole", needed(call, fastener, leaning));
    }
    actual(call, hole, zones, sizes);
    mm(call, "--head")
        .ifPresent(
            head ->
                sizes.put(
                    "largest hole under the head",
                    PositionZones.largestUnderHeadMm(fastener, head)));
    return new Answer(fastener, hole, call.on("--fixed"), leaning, zones, sizes);
  }

  private double fastener(Call call) {
    String typed =
        call.option("--fastener")
            .orElseThrow(
                () -> new CommandException("say --fastener: a diameter such as \"6 mm\" or M6"));
    return threads
        .read(typed)
        .map(called -> called.thread().major().millimetres())
        .orElseGet(
            () ->
                typed.matches("(?s).*[A-Za-z].*") && !typed.matches("(?s).*(mm|in|thou)\\s*")
                    ? ThreadWords.one(threads, typed).major().millimetres()
                    : mm(call, "--fastener").orElseThrow());
  }

  private static double leaning(Call call) {
    Optional<Double> passed = mm(call, "--passed");
    Optional<Double> engaged = mm(call, "--engaged");
    if (passed.isPresent() != engaged.isPresent() || passed.isPresent() && !call.on("--fixed")) {
      throw new CommandException(
          "a tapped hole without a projected zone needs --fixed, --passed and --engaged together;"
              + " with a projected zone leave both out");
    }
    return passed.isPresent() ? PositionZones.leaning(passed.get(), engaged.get()) : 1;
  }

  private static void fixed(
      Call call, double hole, double fastener, double leaning, Map<String, Double> zones) {
    Optional<Double> tapped = mm(call, "--tapped-zone");
    Optional<Double> clearance = mm(call, "--clearance-zone");
    if (tapped.isPresent() && clearance.isPresent()) {
      throw new CommandException(
          "with --hole say one of --tapped-zone and --clearance-zone; the other follows");
    }
    if (tapped.isPresent()) {
      zones.put("tapped hole", tapped.get());
      zones.put(
          "clearance hole", PositionZones.fixedClearanceMm(hole, fastener, tapped.get(), leaning));
    } else if (clearance.isPresent()) {
      zones.put("clearance hole", clearance.get());
      zones.put(
          "tapped hole", PositionZones.fixedTappedMm(hole, fastener, clearance.get(), leaning));
    } else {
      zones.put("each part", PositionZones.fixedEachMm(hole, fastener, leaning));
    }
  }

  private static double needed(Call call, double fastener, double leaning) {
    Optional<Double> clearance = mm(call, "--clearance-zone");
    Optional<Double> tapped = mm(call, "--tapped-zone");
    if (clearance.isEmpty() || tapped.isPresent() != call.on("--fixed")) {
      throw new CommandException(
          "say --hole to get the zones; or --clearance-zone (and with --fixed --tapped-zone) to"
              + " get the hole");
    }
    return PositionZones.holeMm(fastener, clearance.get(), tapped.orElse(0.0), leaning);
  }

  private static void actual(
      Call call, Optional<Double> hole, Map<String, Double> zones, Map<String, Double> sizes) {
    Optional<Double> actual = mm(call, "--actual");
    if (actual.isEmpty()) {
      return;
    }
    double least =
        hole.orElseThrow(() -> new CommandException("--actual needs --hole, its least size"));
    double bonus =
        PositionZones.bonusMm(least, actual.get(), mm(call, "--out-of-square").orElse(0.0));
    sizes.put("bonus of the measured hole", bonus);
    String bearer = zones.containsKey("clearance hole") ? "clearance hole" : "each part";
    zones.put("measured clearance hole, with its bonus", zones.get(bearer) + bonus);
  }

  private static Optional<Double> mm(Call call, String option) {
    return call.length(option).map(Length::millimetres);
  }

  private static String text(Answer answer, boolean wanting, LengthUnit unit) {
    List<String> text = new ArrayList<>();
    text.add(
        (answer.fixed() ? "fixed fastener (tapped in one part)" : "floating fastener")
            + " of "
            + Figures.size(answer.fastenerMm(), unit)
            + answer.holeMm().map(hole -> " in a hole of " + Figures.size(hole, unit)).orElse("")
            + (wanting ? ": does not go" : ""));
    Columns columns = new Columns().indent(2).row("", "zone DIAMETER", "RADIUS of error");
    answer
        .zonesMm()
        .forEach(
            (name, zone) ->
                columns.row(
                    name, Figures.allowance(zone, unit), Figures.allowance(zone / 2, unit)));
    if (!answer.zonesMm().isEmpty()) {
      text.add(columns.text());
    }
    answer
        .sizesMm()
        .forEach((name, size) -> text.add("  " + name + " " + Figures.allowance(size, unit)));
    if (answer.fixed()) {
      text.add(
          answer.leaning() == 1
              ? "  The tapped hole's zone is taken as projected over what the fastener passes."
              : "  The tapped hole's zone is not projected and counts "
                  + String.format(java.util.Locale.ROOT, "%.3f", answer.leaning())
                  + " times.");
    }
    text.add("  " + SOURCE);
    return String.join("\n", text);
  }

  private static Map<String, Object> data(Answer answer, boolean wanting) {
    return Data.of(
        "joining", answer.fixed() ? "fixed" : "floating",
        "fastenerDiameterMm", Data.mm(answer.fastenerMm()),
        "holeDiameterMm", answer.holeMm().map(Data::mm),
        "goes", !wanting,
        "projected", answer.leaning() == 1,
        "tappedZoneFactor", Data.rounded(answer.leaning(), 9),
        "zones",
            answer.zonesMm().entrySet().stream()
                .map(
                    zone ->
                        Data.of(
                            "of", zone.getKey(),
                            "zoneDiameterMm", Data.mm(zone.getValue()),
                            "zoneDiameterIn", Data.in(Length.ofMillimetres(zone.getValue())),
                            "errorRadiusMm", Data.mm(zone.getValue() / 2)))
                .toList(),
        "sizes",
            answer.sizesMm().entrySet().stream()
                .map(
                    size ->
                        Data.of(
                            "of", size.getKey(),
                            "sizeMm", Data.mm(size.getValue()),
                            "sizeIn", Data.in(Length.ofMillimetres(size.getValue()))))
                .toList(),
        "source", SOURCE);
  }
}
