package org.fettlebench.command.internal.tap;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fettlebench.club.Stock;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.hole.DrillsAsked;
import org.fettlebench.command.internal.hole.WorkWords;
import org.fettlebench.command.internal.thread.ThreadWords;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.threads.Threads;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.HoleChooser;
import org.fettlebench.tooling.risk.TapJob;
import org.fettlebench.tooling.risk.TapRisk;
import org.fettlebench.tooling.risk.TapRisks;
import org.fettlebench.tooling.risk.TapSort;
import org.fettlebench.tooling.risk.TapVerdict;
import org.fettlebench.tooling.work.WorkMaterial;
import org.fettlebench.tooling.work.WorkMaterials;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Compares the torque of tapping with what breaks the tap, and says what lowers it. */
@Component(service = Command.class, property = Commands.WORDS + "=tap risk")
public final class TapRiskCommand implements Command {
  private static final Usage USAGE =
      DrillsAsked.flags(
          Usage.of(
                  "tap risk",
                  "Compares the torque that tapping takes with what breaks the tap.",
                  "tap risk 2 BA --material \"mild steel\" --depth \"8 mm\" --drill 5/32")
              .needsMany("THREAD", "such as 2 BA, M6, 1/4 x 40 ME")
              .option(WorkWords.OPTION, "NAME", "what is tapped, such as brass, EN1A, cast iron")
              .option("--depth", "LENGTH", "thread in the metal; its thickness with --through")
              .flag("--through", "the hole goes right through; blind if not said")
              .option(
                  "--drill", "DRILL", "the hole's drill; the one for the material's usual per cent")
              .option("--percent", "P", "or the per cent of thread, above 0 to 100")
              .option("--tap", "SORT", "taper, second, bottoming, spiral-flute, spiral-point")
              .option("--flutes", "N", "of the tap, 2 to 6; as usual at the size if not said"));

  private final Threads threads;
  private final Drills drills;
  private final HoleChooser chooser;
  private final TapRisks risks;
  private final WorkMaterials materials;
  private final Stock stock;

  /** Made by the framework. */
  @Activate
  @SuppressWarnings("checkstyle:ParameterNumber")
  public TapRiskCommand(
      @Reference Threads threads,
      @Reference Drills drills,
      @Reference HoleChooser chooser,
      @Reference TapRisks risks,
      @Reference WorkMaterials materials,
      @Reference Stock stock) {
    this.threads = threads;
    this.drills = drills;
    this.chooser = chooser;
    this.risks = risks;
    this.materials = materials;
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
    WorkMaterial material = WorkWords.needed(materials, call);
    DrillsAsked asked = DrillsAsked.of(call, stock, drills);
    List<DrillSize> from = asked.sizes();
    try {
      TapHole hole = new TapHoleWords(drills, chooser).read(call, thread, material, from);
      TapRisk risk = risks.of(job(call, thread, material, hole), from);
      boolean wanting = risk.verdict() != TapVerdict.BELOW;
      TapRiskText text = new TapRiskText(risk, hole, call.option("--tap").isPresent(), call.unit());
      Map<String, Object> data = TapRiskData.of(risk, hole);
      data.putAll(asked.from().data());
      return Reply.of(wanting, text.text(), data);
    } catch (MeasureException refused) {
      throw new CommandException(refused.getMessage(), refused);
    }
  }

  private static TapJob job(Call call, ScrewThread thread, WorkMaterial material, TapHole hole) {
    Length depth =
        call.length("--depth")
            .orElseThrow(
                () ->
                    new CommandException(
                        "say how deep: --depth LENGTH of thread in the metal, with --through its"
                            + " thickness"));
    return new TapJob(
        thread, hole.diameter(), material, depth, call.on("--through"), sort(call), flutes(call));
  }

  private static TapSort sort(Call call) {
    String said = call.option("--tap").orElse(TapSort.SECOND.word());
    return TapSort.ofWord(said)
        .orElseThrow(
            () ->
                new CommandException(
                    "--tap \""
                        + said
                        + "\" is no sort of tap; say "
                        + Arrays.stream(TapSort.values())
                            .map(TapSort::word)
                            .collect(Collectors.joining(", "))));
  }

  private static Optional<Integer> flutes(Call call) {
    return call.whole("--flutes", TapJob.LEAST_FLUTES, TapJob.MOST_FLUTES);
  }
}
