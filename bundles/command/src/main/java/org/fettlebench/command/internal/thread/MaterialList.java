package org.fettlebench.command.internal.thread;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.threads.strength.Material;
import org.fettlebench.threads.strength.Materials;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Lists the materials that strengths can be worked out for. */
@Component(service = Command.class, property = Commands.WORDS + "=material list")
public final class MaterialList implements Command {
  private static final Usage USAGE =
      Usage.of(
              "material list", "Lists materials with their least strengths.", "material list brass")
          .mayMany("WORD", "only materials whose name holds these words");

  private final Materials materials;

  /** Made by the framework. */
  @Activate
  public MaterialList(@Reference Materials materials) {
    this.materials = materials;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    Optional<String> words = call.operand("WORD").filter(typed -> !typed.isBlank());
    List<Material> found = words.map(materials::near).orElseGet(materials::all);
    if (found.isEmpty()) {
      throw new CommandException(
          words
              .map(typed -> "no material has \"" + typed + "\" in its name; leave words out")
              .orElse("no table of materials is installed"));
    }
    Columns columns = new Columns().right(1, 2).row("material", "tensile MPa", "shear MPa", "what");
    for (Material one : found) {
      columns.row(
          one.id(),
          String.format(Locale.ROOT, "%.0f", one.tensileMpa()),
          String.format(Locale.ROOT, "%.0f", one.threadShearMpa())
              + (one.shearMpa().isPresent() ? "" : "*"),
          one.name() + "; " + one.source().citation());
    }
    return Reply.done(
        columns.text() + "\n* not printed: half the tensile strength, as FED-STD-H28 counts it",
        Data.of("materials", found.stream().map(StrengthData::of).toList()));
  }
}
