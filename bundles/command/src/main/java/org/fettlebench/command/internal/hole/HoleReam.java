package org.fettlebench.command.internal.hole;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.club.Stock;
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
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.drilled.DrilledHoles;
import org.fettlebench.tooling.drilled.ReamingChoice;
import org.fettlebench.tooling.work.WorkMaterial;
import org.fettlebench.tooling.work.WorkMaterials;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Chooses the drill that leaves a reamer neither too much nor too little. */
@Component(service = Command.class, property = Commands.WORDS + "=hole ream")
public final class HoleReam extends StockedDrillCommand {
  private static final Usage USAGE =
      DrillsAsked.flags(
          Usage.of(
                  "hole ream",
                  "Chooses the drill before a reamer, of those held or of all.",
                  "hole ream 6mm --material brass")
              .needs("SIZE", "diameter to be reamed, such as 6mm or 1/4")
              .option(WorkWords.OPTION, "NAME", "what is reamed; light metals are left more"));

  private final DrilledHoles holes;
  private final WorkMaterials materials;

  /** Made by the framework. */
  @Activate
  public HoleReam(
      @Reference Drills drills,
      @Reference Stock stock,
      @Reference DrilledHoles holes,
      @Reference WorkMaterials materials) {
    super(USAGE, drills, stock);
    this.holes = holes;
    this.materials = materials;
  }

  @Override
  public Reply run(Call call) {
    Length reamed = call.length("SIZE").orElseThrow();
    Optional<WorkMaterial> material =
        call.option(WorkWords.OPTION).map(said -> WorkWords.needed(materials, call));
    DrillsAsked asked = DrillsAsked.of(call, stock, drills);
    ReamingChoice choice = choice(reamed, material, asked.sizes());
    Map<String, Object> data =
        Data.of(
            "reamedMm", Data.mm(reamed),
            "reamedIn", Data.in(reamed),
            "material", material.map(WorkWords::data),
            "undersizeLeastMm", Data.mm(choice.undersizeLeast()),
            "undersizeMostMm", Data.mm(choice.undersizeMost()),
            "drillOversizeMm", Data.mm(choice.drillOversize()),
            "drillLeastMm", Data.mm(choice.drillLeast()),
            "drillMostMm", Data.mm(choice.drillMost()),
            "drills", choice.drills().stream().map(drill -> data(drill, asked.held())).toList(),
            "source", Figures.sourceData(choice.source()),
            "caution", Cautions.DRILLING);
    data.putAll(asked.from().data());
    return Reply.of(choice.drills().isEmpty(), text(choice, asked, call.unit()), data);
  }

  private ReamingChoice choice(
      Length reamed, Optional<WorkMaterial> material, List<DrillSize> from) {
    try {
      return holes
          .beforeReaming(reamed, material, from)
          .orElseThrow(
              () -> new CommandException("no table says what to leave for a reamer of " + reamed));
    } catch (MeasureException refused) {
      throw new CommandException(refused.getMessage(), refused);
    }
  }

  private static Object data(DrillSize drill, HeldDrills held) {
    Map<String, Object> data = DrillWords.data(drill);
    data.put("places", held.places(drill));
    return data;
  }

  private static String text(ReamingChoice choice, DrillsAsked asked, LengthUnit unit) {
    String range =
        "Drill %s to %s before reaming %s: %s to %s is left, with %s for a drill that cuts large; %s"
            .formatted(
                fine(choice.drillLeast(), unit),
                fine(choice.drillMost(), unit),
                fine(choice.reamed(), unit),
                fine(choice.undersizeLeast(), unit),
                fine(choice.undersizeMost(), unit),
                fine(choice.drillOversize(), unit),
                Figures.source(choice.source()));
    if (choice.drills().isEmpty()) {
      return range
          + "\nNo drill is within, of "
          + asked.from().words()
          + (asked.from().catalogue() ? "." : "; --catalogue looks through all.");
    }
    LengthUnit other = Figures.other(unit);
    Columns columns =
        new Columns().indent(2).right(1, 2).row("drill", unit.symbol(), other.symbol(), "held");
    for (DrillSize drill : choice.drills()) {
      columns.row(
          DrillWords.names(drill),
          Figures.fine(drill.diameter(), unit),
          Figures.fine(drill.diameter(), other),
          String.join("; ", asked.held().places(drill)));
    }
    return range
        + "\nFrom "
        + asked.from().words()
        + "\n"
        + columns.text()
        + "\n"
        + Cautions.DRILLING;
  }

  private static String fine(Length length, LengthUnit unit) {
    return Figures.fine(length, unit) + " " + unit.symbol();
  }
}
