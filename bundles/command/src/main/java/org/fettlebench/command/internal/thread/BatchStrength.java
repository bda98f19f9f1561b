package org.fettlebench.command.internal.thread;

import java.util.List;
import java.util.Optional;
import org.fettlebench.command.CommandException;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.threads.strength.JointStrength;
import org.fettlebench.threads.strength.Material;
import org.fettlebench.threads.strength.Materials;
import org.fettlebench.threads.strength.ThreadStrength;
import org.fettlebench.threads.strength.ThreadedJoint;

/** What gives way first in a joint of two materials, and the least length of engagement. */
final class BatchStrength implements BatchFigure {
  private static final List<String> NEEDED = List.of("screw_material", "nut_material");

  private final ThreadStrength strength;
  private final Recent<String, Material> materials;

  BatchStrength(ThreadStrength strength, Materials materials) {
    this.strength = strength;
    this.materials = new Recent<>(name -> MaterialWords.one(materials, "column of material", name));
  }

  @Override
  public String word() {
    return "strength";
  }

  @Override
  public List<String> columns(LengthUnit unit) {
    return List.of(
        "least_engagement_" + unit.symbol(),
        "gives_way",
        "screw_breaks_n",
        "screw_thread_strips_n",
        "nut_thread_strips_n");
  }

  @Override
  public List<String> reads() {
    return List.of("screw_material", "nut_material", "engagement", "hole", "class");
  }

  @Override
  public void write(ThreadCall called, BatchRow row, BatchLine line) {
    JointStrength found =
        strength.of(
            new ThreadedJoint(
                called.thread(),
                row.cell("class").or(called::threadClass),
                material(row, "screw_material"),
                material(row, "nut_material"),
                row.length("engagement").orElse(called.thread().major()),
                row.length("hole")));
    line.length(found.leastEngagement())
        .text(found.givesWay().words())
        .number(found.screwBreaksN(), 1)
        .number(found.screwThreadStripsN(), 1)
        .number(found.nutThreadStripsN(), 1);
  }

  private Material material(BatchRow row, String column) {
    Optional<String> name = row.cell(column);
    return name.map(materials::of)
        .orElseThrow(
            () ->
                new CommandException(
                    "the strength needs both columns " + String.join(" and ", NEEDED)));
  }
}
