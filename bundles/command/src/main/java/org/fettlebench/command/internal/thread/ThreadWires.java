package org.fettlebench.command.internal.thread;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.club.Stock;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.command.internal.hole.HeldDrills;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.threads.ThreadClasses;
import org.fettlebench.threads.ThreadSide;
import org.fettlebench.threads.Threads;
import org.fettlebench.threads.wires.MeasuringWires;
import org.fettlebench.threads.wires.OverWires;
import org.fettlebench.threads.wires.WireGive;
import org.fettlebench.threads.wires.WireSizes;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Tells the wires that measure a screw, and turns a measurement over them either way. */
@Component(service = Command.class, property = Commands.WORDS + "=thread wires")
public final class ThreadWires implements Command {
  /** Young's modulus of steel (Shigley, Mechanical Engineering Design, table A-5). */
  private static final double STEEL_GPA = 207;

  private static final Usage USAGE =
      Usage.of(
              "thread wires",
              "Tells the best wire and the measurement over three wires, or back.",
              "thread wires 2 BA --wire 0.45mm --over 4.72mm")
          .needsMany("DESIGNATION", "such as M6-6g, 2 BA, \"1/4-20 UNC-2A\"")
          .option("--wire", "LENGTH", "diameter of the wires, or drill shanks")
          .option(
              "--held", "LIST", "wires at hand, such as 0.5mm,0.62mm: the best of them is taken")
          .flag("--from-drills", "takes the best of the shanks of the drills that the club holds")
          .option(
              "--force", "NEWTONS", "measuring force of the anvils: the wires' give is corrected")
          .option("--modulus", "GPA", "elastic modulus of screw and wires; 207, steel, if not said")
          .option("--over", "LENGTH", "measured over three wires: the effective diameter is told")
          .option("--effective", "LENGTH", "effective diameter to measure for; else the basic one")
          .option("--class", "CLASS", "for its limits over wires; the usual one if not said");

  private final Threads threads;
  private final ThreadClasses classes;
  private final MeasuringWires wires;
  private final Drills drills;
  private final Stock stock;

  /** Made by the framework. */
  @Activate
  public ThreadWires(
      @Reference Threads threads,
      @Reference ThreadClasses classes,
      @Reference MeasuringWires wires,
      @Reference Drills drills,
      @Reference Stock stock) {
    this.threads = threads;
    this.classes = classes;
    this.wires = wires;
    this.drills = drills;
    this.stock = stock;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  /** What was worked out. */
  private record Found(
      ScrewThread thread,
      WireSizes sizes,
      WireChoice choice,
      Optional<WireGive> give,
      Optional<OverWires> over,
      Optional<LimitsOfThread> limits,
      Optional<Length> least,
      Optional<Length> most,
      Optional<Boolean> inside) {}

  @Override
  public Reply run(Call call) {
    ThreadCall called = ThreadWords.called(threads, call.operand("DESIGNATION").orElseThrow());
    Optional<Length> over = call.length("--over");
    Optional<Length> effective = call.length("--effective");
    if (over.isPresent() && effective.isPresent()) {
      throw new CommandException("say --over or --effective, not both: each gives the other");
    }
    try {
      WireChoice choice = WireChoice.of(call, called.thread(), wires, () -> held());
      if (choice.wire().isEmpty()
          && (over.isPresent() || effective.isPresent() || call.option("--force").isPresent())) {
        throw new CommandException("say which wires: --wire LENGTH, --held LIST or --from-drills");
      }
      Found found = found(call, called, choice);
      return ThreadWords.told(
          called, Reply.of(!found.inside().orElse(true), text(found, call.unit()), data(found)));
    } catch (MeasureException refused) {
      throw new CommandException(refused.getMessage());
    }
  }

  private List<Length> held() {
    return new HeldDrills(stock, drills).sizes().stream().map(DrillSize::diameter).toList();
  }

  private Found found(Call call, ThreadCall called, WireChoice choice) {
    ScrewThread thread = called.thread();
    Optional<Length> wire = choice.wire();
    Optional<WireGive> give = give(call, thread, wire);
    Length missing = give.map(WireGive::overWires).orElse(Length.ZERO);
    Optional<Length> measured = call.length("--over").map(size -> size.plus(missing));
    Length wanted = call.length("--effective").orElse(thread.effective());
    Optional<OverWires> over =
        wire.map(
            one ->
                measured
                    .map(size -> wires.effective(thread, one, size))
                    .orElseGet(() -> wires.over(thread, one, wanted)));
    Optional<LimitsOfThread> limits = limits(call, called);
    return new Found(
        thread,
        wires.sizes(thread.form(), thread.pitch()),
        choice,
        give,
        over.map(one -> asRead(one, missing)),
        limits,
        overLimit(thread, wire, limits.flatMap(one -> one.effective().least()))
            .map(size -> size.minus(missing)),
        overLimit(thread, wire, limits.flatMap(one -> one.effective().most()))
            .map(size -> size.minus(missing)),
        measured.isPresent()
            ? limits.map(one -> one.effective().allows(over.orElseThrow().effective()))
            : Optional.empty());
  }

  private Optional<WireGive> give(Call call, ScrewThread thread, Optional<Length> wire) {
    double modulus = call.number("--modulus", 0, 1000).orElse(STEEL_GPA);
    return wire.flatMap(
        one ->
            call.number("--force", 0, 1000).map(force -> wires.give(thread, one, force, modulus)));
  }

  /** What the instrument shows is less than what unpressed wires would. */
  private static OverWires asRead(OverWires over, Length missing) {
    return new OverWires(
        over.wire(),
        over.overWires().minus(missing),
        over.effective(),
        over.helixCorrection(),
        over.notes());
  }

  private Optional<Length> overLimit(
      ScrewThread thread, Optional<Length> wire, Optional<Length> limit) {
    return wire.isPresent()
        ? limit.map(size -> wires.over(thread, wire.get(), size).overWires())
        : Optional.empty();
  }

  private Optional<LimitsOfThread> limits(Call call, ThreadCall called) {
    return call.option("--class")
        .or(called::threadClass)
        .or(() -> classes.classes(called.thread()).stream().findFirst())
        .flatMap(
            one ->
                classes.limits(called.thread(), one).stream()
                    .filter(limits -> limits.side() == ThreadSide.EXTERNAL)
                    .findFirst());
  }

  private static String text(Found found, LengthUnit unit) {
    LengthUnit other = Figures.other(unit);
    Columns columns = new Columns().indent(2).right(1, 2).row("", unit.symbol(), other.symbol());
    row(columns, unit, "best wire", found.sizes().best());
    row(columns, unit, "least wire", found.sizes().least());
    row(columns, unit, "most wire", found.sizes().most());
    found.over().ifPresent(over -> rows(columns, unit, over));
    found
        .give()
        .ifPresent(give -> row(columns, unit, "  short of it by pressure", give.overWires()));
    String name =
        found.limits().map(limits -> "over wires, " + limits.threadClass() + ", ").orElse("");
    found.least().ifPresent(length -> row(columns, unit, name + "least", length));
    found.most().ifPresent(length -> row(columns, unit, name + "most", length));
    List<String> lines = new ArrayList<>();
    lines.add(found.thread().designation() + "  (" + found.thread().form().title() + ")");
    lines.add(columns.text());
    found
        .inside()
        .ifPresent(
            inside ->
                lines.add(
                    "The effective diameter is "
                        + (inside ? "inside " : "outside ")
                        + found.limits().orElseThrow().threadClass()
                        + "."));
    lines.addAll(found.choice().lines(unit));
    found.over().ifPresent(over -> over.notes().forEach(note -> lines.add("  note: " + note)));
    found.give().ifPresent(give -> lines.addAll(giveLines(give)));
    return String.join("\n", lines);
  }

  private static List<String> giveLines(WireGive give) {
    List<String> lines = new ArrayList<>();
    give.notes().forEach(note -> lines.add("  note: " + note));
    lines.add("  source of the pressure's share: " + Figures.source(give.source()));
    return lines;
  }

  private static void rows(Columns columns, LengthUnit unit, OverWires over) {
    row(columns, unit, "wire", over.wire());
    row(columns, unit, "effective diameter", over.effective());
    row(columns, unit, "over three wires", over.overWires());
    row(columns, unit, "  of it for the helix", over.helixCorrection());
    row(columns, unit, "  without that, as handbooks print", over.plainOverWires());
  }

  private static void row(Columns columns, LengthUnit unit, String name, Length length) {
    columns.row(name, Figures.fine(length, unit), Figures.fine(length, Figures.other(unit)));
  }

  private static Map<String, Object> data(Found found) {
    return Data.of(
        "designation", found.thread().designation(),
        "includedAngleDegrees", found.thread().form().includedAngleDegrees(),
        "bestWireMm", Data.mm(found.sizes().best()),
        "bestWireIn", Data.in(found.sizes().best()),
        "leastWireMm", Data.mm(found.sizes().least()),
        "leastWireIn", Data.in(found.sizes().least()),
        "mostWireMm", Data.mm(found.sizes().most()),
        "mostWireIn", Data.in(found.sizes().most()),
        "wireMm", found.over().map(over -> Data.mm(over.wire())),
        "effectiveMm", found.over().map(over -> Data.mm(over.effective())),
        "effectiveIn", found.over().map(over -> Data.in(over.effective())),
        "overWiresMm", found.over().map(over -> Data.mm(over.overWires())),
        "overWiresIn", found.over().map(over -> Data.in(over.overWires())),
        "plainOverWiresMm", found.over().map(over -> Data.mm(over.plainOverWires())),
        "plainOverWiresIn", found.over().map(over -> Data.in(over.plainOverWires())),
        "plainEffectiveMm", found.over().map(over -> Data.mm(over.plainEffective())),
        "plainEffectiveIn", found.over().map(over -> Data.in(over.plainEffective())),
        "fittingWiresMm", found.choice().fitting().stream().map(Data::mm).toList(),
        "pressureMm", found.give().map(give -> Data.mm(give.overWires())),
        "pressureSource", found.give().map(give -> Figures.sourceData(give.source())),
        "helixCorrectionMm", found.over().map(over -> Data.mm(over.helixCorrection())),
        "threadClass", found.limits().map(LimitsOfThread::threadClass),
        "leastOverWiresMm", found.least().map(Data::mm),
        "mostOverWiresMm", found.most().map(Data::mm),
        "insideLimits", found.inside(),
        "notes", found.over().map(OverWires::notes));
  }
}
