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
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.threads.Threads;
import org.fettlebench.threads.strength.GivesWay;
import org.fettlebench.threads.strength.JointStrength;
import org.fettlebench.threads.strength.Materials;
import org.fettlebench.threads.strength.StressArea;
import org.fettlebench.threads.strength.ThreadStrength;
import org.fettlebench.threads.strength.ThreadedJoint;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Says what a threaded joint bears and which part gives way first. */
@Component(service = Command.class, property = Commands.WORDS + "=thread strength")
public final class ThreadStrengthCommand implements Command {
  private static final String CAUTION =
      "A guide for still, even pull alone. Parts that hold pressure follow the approved design and"
          + " the rules of the club's boiler inspector; these figures do not replace that.";

  private static final Usage USAGE =
      Usage.of(
              "thread strength",
              "Says what a screw and its thread bear, and what gives way first.",
              "thread strength M6 --screw class-8.8 --nut brass-cz121 --engagement 9mm")
          .needsMany("DESIGNATION", "such as M6, 2 BA, \"1/4-20 UNC-2B\"")
          .option(
              "--screw", "MATERIAL", "id or name (\"material list\"), or tensile strength in MPa")
          .option("--nut", "MATERIAL", "of the nut or tapped part, likewise")
          .option("--nut-shear", "MPA", "shear strength of the nut's material, if known better")
          .option("--engagement", "LENGTH", "full thread engaged; one diameter if not said")
          .option("--hole", "LENGTH", "diameter of the tapped hole; else the class's largest")
          .option("--class", "CLASS", "such as 6H/6g; the usual fit if not said")
          .option("--preload", "NEWTONS", "pull to tighten to; the torque is told")
          .option("--friction", "NUMBER", "of thread and head, 0.02 to 0.6; with --preload")
          .option("--nut-factor", "K", "torque = K x preload x diameter, in place of --friction");

  private final Threads threads;
  private final ThreadStrength strength;
  private final Materials materials;

  /** Made by the framework. */
  @Activate
  public ThreadStrengthCommand(
      @Reference Threads threads,
      @Reference ThreadStrength strength,
      @Reference Materials materials) {
    this.threads = threads;
    this.strength = strength;
    this.materials = materials;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    ThreadCall called = ThreadWords.called(threads, call.operand("DESIGNATION").orElseThrow());
    try {
      return ThreadWords.told(called, answer(call, called));
    } catch (MeasureException refused) {
      throw new CommandException(refused.getMessage());
    }
  }

  private Reply answer(Call call, ThreadCall called) {
    Optional<JointStrength> joint = joint(call, called);
    Optional<Double> torqueNm = torqueNm(call, called);
    StressArea area = strength.stressArea(called.thread());
    List<String> lines = new ArrayList<>();
    lines.add(
        String.format(
            Locale.ROOT,
            "%s: stress area %.2f mm² (%.5f in²), %s",
            called.thread().designation(),
            area.mm2(),
            area.mm2() / 645.16,
            Figures.source(area.source())));
    joint.ifPresent(found -> lines.addAll(text(found, call.unit())));
    torqueNm.ifPresent(
        torque ->
            lines.add(
                String.format(
                    Locale.ROOT,
                    "torque %.2f N m (%.1f lbf in) for that preload, by the %s said",
                    torque,
                    torque / 0.1129848290276167,
                    call.option("--friction").isPresent() ? "friction" : "nut factor")));
    lines.add(CAUTION);
    Map<String, Object> data =
        Data.of(
            "designation",
            called.thread().designation(),
            "stressAreaMm2",
            Data.rounded(area.mm2(), 6),
            "stressAreaIn2",
            Data.rounded(area.mm2() / 645.16, 8),
            "stressAreaSource",
            Figures.sourceData(area.source()),
            "joint",
            joint.map(StrengthData::of),
            "torqueNm",
            torqueNm.map(torque -> Data.rounded(torque, 6)),
            "caution",
            CAUTION);
    boolean strips = joint.map(found -> found.givesWay() != GivesWay.SCREW_BREAKS).orElse(false);
    return Reply.of(strips, String.join("\n", lines), data);
  }

  private Optional<JointStrength> joint(Call call, ThreadCall called) {
    Optional<String> screw = call.option("--screw");
    Optional<String> nut = call.option("--nut");
    if (screw.isEmpty() && nut.isEmpty() && call.option("--nut-shear").isEmpty()) {
      return Optional.empty();
    }
    if (screw.isEmpty() || nut.isEmpty() && call.option("--nut-shear").isEmpty()) {
      throw new CommandException(
          "say both materials: --screw MATERIAL and --nut MATERIAL (\"material list\" shows them)");
    }
    ThreadedJoint joint =
        new ThreadedJoint(
            called.thread(),
            call.option("--class").or(called::threadClass),
            MaterialWords.one(materials, "--screw", screw.get()),
            MaterialWords.nut(materials, nut, call.number("--nut-shear", 0, 1e4)),
            call.length("--engagement").orElse(called.thread().major()),
            call.length("--hole"));
    return Optional.of(strength.of(joint));
  }

  private Optional<Double> torqueNm(Call call, ThreadCall called) {
    Optional<Double> preload = call.number("--preload", 0, 1e8);
    Optional<Double> friction = call.number("--friction", 0, 1);
    Optional<Double> factor = call.number("--nut-factor", 0, 1);
    if (friction.isPresent() && factor.isPresent()) {
      throw new CommandException(
          "say --friction or --nut-factor: the factor has the friction in it");
    }
    if (preload.isPresent() != (friction.isPresent() || factor.isPresent())) {
      throw new CommandException(
          "the torque needs both --preload and --friction, or a --nut-factor: friction differs too"
              + " much to guess");
    }
    ScrewThread thread = called.thread();
    return preload.map(
        pull ->
            friction
                .map(coefficient -> strength.torqueNm(thread, pull, coefficient))
                .orElseGet(() -> strength.torqueByNutFactorNm(thread, pull, factor.orElseThrow())));
  }

  private static List<String> text(JointStrength joint, LengthUnit unit) {
    Length engaged = joint.joint().engagement();
    Columns columns = new Columns().indent(2).right(1).row("", "gives way at");
    columns.row(GivesWay.SCREW_BREAKS.words(), newtons(joint.screwBreaksN()));
    columns.row(GivesWay.SCREW_THREAD_STRIPS.words(), newtons(joint.screwThreadStripsN()));
    columns.row(GivesWay.NUT_THREAD_STRIPS.words(), newtons(joint.nutThreadStripsN()));
    List<String> lines = new ArrayList<>();
    lines.add(
        "screw %s; nut %s".formatted(joint.joint().screw().name(), joint.joint().nut().name()));
    lines.add(
        "With "
            + Figures.size(engaged.millimetres(), unit)
            + " engaged, "
            + joint.givesWay().words()
            + " first.");
    lines.add(columns.text());
    lines.add(
        "The screw breaks before a thread strips from "
            + Figures.size(joint.leastEngagement().millimetres(), unit)
            + " of full thread.");
    joint.notes().forEach(note -> lines.add("  note: " + note));
    return lines;
  }

  private static String newtons(double newtons) {
    return String.format(Locale.ROOT, "%.0f N", newtons);
  }
}
