package org.fettlebench.kits.internal;

import java.util.List;
import java.util.Optional;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.kits.Fastener;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Finding.Weight;
import org.fettlebench.kits.Joint;
import org.fettlebench.kits.JointCase;
import org.fettlebench.kits.JointRule;
import org.fettlebench.measure.Length;
import org.fettlebench.threads.ScrewThread;

/** Says whether a screw reaches far enough into its thread, and not too far. */
final class LengthRule implements JointRule {
  static final String NAME = "length";

  private final Heads heads;

  LengthRule(Heads heads) {
    this.heads = heads;
  }

  @Override
  public String title() {
    return "length of the screw";
  }

  @Override
  public List<Finding> look(JointCase joint) {
    return look(joint.joint(), joint.thread(), joint.joint().fastener());
  }

  /** Looks at another fastener in the joint's place. */
  List<Finding> look(Joint joint, ScrewThread thread, Fastener fastener) {
    if (fastener.length().isEmpty() || fastener.style().equals(Trade.STUD)) {
      return List.of();
    }
    Optional<Length> passed = joint.clearance().flatMap(Joint.ClearanceHole::depth);
    if (joint.clearance().isPresent() && passed.isEmpty()) {
      return List.of(
          Finding.of(
              Weight.NOTE,
              NAME,
              "The screw's length is not checked: the thickness it passes through is not given."));
    }
    Length reach = fastener.length().get().minus(passed.orElse(Length.ZERO));
    return joint
        .tapped()
        .map(hole -> tapped(hole, thread, reach))
        .orElseGet(() -> nutted(thread, reach));
  }

  private static List<Finding> tapped(Joint.TappedHole hole, ScrewThread thread, Length reach) {
    List<Finding.Figure> figures =
        List.of(Say.mm("reach", reach), Say.mm("fullThread", hole.fullThread()));
    Length beyond = reach.minus(hole.fullThread());
    if (reach.compareTo(thread.pitch()) < 0) {
      return finding(
          Weight.FAULT,
          reach.isPositive()
              ? "The screw is too short: it reaches only " + Say.size(reach) + " into the thread."
              : "The screw is too short: it does not reach the thread, by "
                  + Say.size(reach.abs())
                  + ".",
          figures);
    }
    if (hole.metal().isPresent() && beyond.isPositive()) {
      boolean far = beyond.compareTo(thread.pitch()) > 0;
      return finding(
          far ? Weight.FAULT : Weight.CAUTION,
          "The screw is too long: it would bottom, reaching "
              + Say.size(reach)
              + " where the full thread ends at "
              + Say.size(hole.fullThread())
              + "; shorten it by "
              + Say.size(beyond)
              + " or more.",
          figures);
    }
    Length engaged = reach.compareTo(hole.fullThread()) < 0 ? reach : hole.fullThread();
    double diameters = engaged.millimetres() / thread.major().millimetres();
    if (diameters < 1) {
      return List.of(
          new Finding(
              Weight.CAUTION,
              NAME,
              "Only "
                  + Say.size(engaged)
                  + " of thread is engaged, "
                  + Say.times(diameters)
                  + " diameters; at least 1 is usual.",
              figures,
              Say.COMMON_PRACTICE));
    }
    return finding(
        Weight.NOTE,
        Say.size(engaged)
            + " of thread is engaged, "
            + Say.times(diameters)
            + " diameters"
            + (beyond.isPositive()
                ? "; the screw comes out " + Say.size(beyond) + " beyond."
                : "."),
        figures);
  }

  private List<Finding> nutted(ScrewThread thread, Length reach) {
    Optional<Length> nut = heads.find("hexagon-nut", thread).flatMap(head -> head.height());
    if (nut.isEmpty()) {
      return List.of();
    }
    Length spare = reach.minus(nut.get());
    List<Finding.Figure> figures = List.of(Say.mm("reach", reach), Say.mm("nut", nut.get()));
    if (spare.nanometres() >= 0) {
      return finding(
          Weight.NOTE,
          "The screw fills its nut and stands " + Say.size(spare) + " beyond.",
          figures);
    }
    return finding(
        reach.isPositive() ? Weight.CAUTION : Weight.FAULT,
        "The screw is too short: it lacks " + Say.size(spare.abs()) + " to fill a hexagon nut.",
        figures);
  }

  private static List<Finding> finding(
      Weight weight, String sentence, List<Finding.Figure> figures) {
    return List.of(new Finding(weight, NAME, sentence, figures, ""));
  }
}
