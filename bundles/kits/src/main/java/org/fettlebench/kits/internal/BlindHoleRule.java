package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Finding.Weight;
import org.fettlebench.kits.JointCase;
import org.fettlebench.kits.JointRule;
import org.fettlebench.tooling.BlindHole;

/** Says how deep to drill where the hole must stay blind, and what is left below. */
final class BlindHoleRule implements JointRule {
  static final String NAME = "blind hole";

  @Override
  public String title() {
    return "depth of the blind hole";
  }

  @Override
  public List<Finding> look(JointCase joint) {
    return joint.blindHole().map(hole -> List.of(finding(hole))).orElse(List.of());
  }

  private static Finding finding(BlindHole hole) {
    Weight weight =
        hole.breaksThrough()
            ? Weight.FAULT
            : hole.concerns().isEmpty() ? Weight.NOTE : Weight.CAUTION;
    List<String> said = new ArrayList<>();
    said.add(
        "Drill "
            + Say.size(hole.shoulder())
            + " deep to the shoulder, "
            + Say.size(hole.drillTip())
            + " to the tip");
    said.add(
        hole.breaksThrough()
            ? "it breaks through by " + Say.allowanceMm(-hole.left().millimetres())
            : Say.size(hole.left()) + " of metal is left below");
    if (!hole.breaksThrough()) {
      hole.concerns().forEach(concern -> said.add(concern.replaceFirst("^\\w+: ", "")));
    }
    return new Finding(
        weight,
        NAME,
        String.join("; ", said).replaceAll("\\.+$", "") + ".",
        List.of(
            Say.mm("fullThread", hole.fullThread()),
            Say.mm("shoulder", hole.shoulder()),
            Say.mm("drillTip", hole.drillTip()),
            Say.mm("left", hole.left())),
        hole.sources().stream()
            .flatMap(source -> Expected.doubt(source).stream())
            .distinct()
            .collect(Collectors.joining("; ")));
  }
}
