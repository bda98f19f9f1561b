package org.fettlebench.command.internal.hole;

import java.util.List;
import java.util.Optional;
import org.fettlebench.club.Stock;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.thread.ThreadWords;
import org.fettlebench.measure.Length;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.threads.Threads;
import org.fettlebench.tooling.BlindHole;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.HoleChooser;
import org.fettlebench.tooling.HoleChooser.BlindHoleRequest;
import org.fettlebench.tooling.TapLead;
import org.fettlebench.tooling.TappingChoice;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Plans a tapped hole and the hole to pass its screw, out of the drills that the club holds. */
@Component(property = Commands.WORDS + "=hole plan")
public final class HolePlan implements Command {
  // Common practice, no source: the usual point of a jobber drill.
  private static final double USUAL_POINT_DEGREES = 118;
  private static final Usage USAGE =
      DrillsAsked.flags(
          Usage.of(
                  "hole plan",
                  "Chooses tapping and clearance drills for a thread, and depths for a blind hole.",
                  "hole plan 2 BA --material brass --depth \"5 mm\" --metal \"9 mm\"")
              .needsMany("THREAD", "such as 2 BA, M6, 1/4 x 40 ME")
              .option("--material", "NAME", "what is tapped; else the per cent of wall charts")
              .option("--percent", "P", "per cent of thread wanted, above 0 to 100")
              .option("--depth", "LENGTH", "depth of full thread of a blind hole")
              .option("--metal", "LENGTH", "metal from the face down to whatever lies below")
              .option("--lead", "TAP", "last tap used: taper, second or bottoming; all if not said")
              .option("--point-angle", "DEGREES", "of the drill, 60 to 180; 118 if not said"));

  private final Threads threads;
  private final Drills drills;
  private final HoleChooser chooser;
  private final Stock stock;

  /** Made by the framework. */
  @Activate
  public HolePlan(
      @Reference Threads threads,
      @Reference Drills drills,
      @Reference HoleChooser chooser,
      @Reference Stock stock) {
    this.threads = threads;
    this.drills = drills;
    this.chooser = chooser;
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
    DrillsAsked asked = DrillsAsked.of(call, stock, drills);
    PlanWanted wanted = wanted(call);
    List<TappingChoice> tapping = wanted.rank(chooser, thread, asked.sizes());
    List<BlindHole> blind = blindHoles(call, thread, tapping);
    Plan plan =
        new Plan(
            thread,
            wanted,
            asked.from(),
            tapping.stream().limit(Plan.MOST_CHOICES).toList(),
            chooser.listed(thread),
            chooser.clearance(thread, asked.sizes()),
            leads(call),
            blind,
            pointDegrees(call));
    return Reply.of(
        plan.wanting(),
        PlanText.of(plan, asked.held(), call.unit()),
        PlanData.of(plan, asked.held()));
  }

  private PlanWanted wanted(Call call) {
    String material = call.option("--material").orElse("");
    Optional<Double> said = call.number("--percent", 0, 100);
    try {
      return new PlanWanted(material, said, chooser.usualPercent(material));
    } catch (IllegalArgumentException e) {
      throw new CommandException(e.getMessage(), e);
    }
  }

  private List<BlindHole> blindHoles(Call call, ScrewThread thread, List<TappingChoice> tapping) {
    Optional<Length> depth = call.length("--depth");
    Optional<Length> metal = call.length("--metal");
    if (depth.isPresent() != metal.isPresent()) {
      throw new CommandException(
          "a blind hole needs both --depth (of full thread) and --metal (down to whatever is"
              + " below); a hole right through needs neither");
    }
    if (depth.isEmpty() || tapping.isEmpty()) {
      return List.of();
    }
    DrillSize drill = Plan.suggested(tapping).orElseThrow().drill();
    double point = pointDegrees(call);
    try {
      return leads(call).stream()
          .map(
              lead ->
                  chooser.blindHole(
                      new BlindHoleRequest(thread, drill, depth.get(), metal.get(), lead, point)))
          .toList();
    } catch (IllegalArgumentException e) {
      throw new CommandException(e.getMessage(), e);
    }
  }

  private static double pointDegrees(Call call) {
    // The number must lie above the first bound, so a hair less than 60 lets 60 itself in.
    return call.number("--point-angle", Math.nextDown(60.0), 180).orElse(USUAL_POINT_DEGREES);
  }

  private static List<TapLead> leads(Call call) {
    Optional<String> said = call.option("--lead");
    if (said.isEmpty()) {
      return List.of(TapLead.values());
    }
    for (TapLead lead : TapLead.values()) {
      if (PlanText.word(lead).equals(said.get().toLowerCase(java.util.Locale.ROOT))) {
        return List.of(lead);
      }
    }
    throw new CommandException(
        "--lead \"" + said.get() + "\" is no tap; say taper, second or bottoming");
  }
}
