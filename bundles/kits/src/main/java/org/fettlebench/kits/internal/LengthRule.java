package org.fettlebench.kits.internal;

import java.util.List;
import java.util.Optional;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.fasteners.grip.Into;
import org.fettlebench.fasteners.grip.ScrewReach;
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
    Length length = fastener.length().get();
    Length through = passed.orElse(Length.ZERO);
    return joint
        .tapped()
        .map(hole -> tapped(thread, ScrewReach.of(thread, length, through, into(hole)), hole))
        .orElseGet(() -> nutted(thread, length, through));
  }

  private static Into into(Joint.TappedHole hole) {
    return new Into(
        hole.metal().isPresent() ? Into.Kind.BLIND : Into.Kind.THROUGH, hole.fullThread());
  }

  private static List<Finding> tapped(ScrewThread thread, ScrewReach screw, Joint.TappedHole hole) {
    List<Finding.Figure> figures =
        List.of(Say.mm("reach", screw.reach()), Say.mm("fullThread", hole.fullThread()));
    return switch (screw.verdict()) {
      case DOES_NOT_HOLD -> finding(Weight.FAULT, tooShort(screw.reach()), figures);
      case BOTTOMS -> {
        boolean far = screw.beyond().compareTo(thread.pitch()) > 0;
        yield finding(far ? Weight.FAULT : Weight.CAUTION, tooLong(screw, hole), figures);
      }
      case SHALLOW ->
          List.of(
              new Finding(
                  Weight.CAUTION,
                  NAME,
                  "Only " + engaged(screw) + "; at least 1 is usual.",
                  figures,
                  Say.COMMON_PRACTICE));
      default ->
          finding(
              Weight.NOTE,
              engaged(screw)
                  + (screw.beyond().isPositive()
                      ? "; the screw comes out " + Say.size(screw.beyond()) + " beyond."
                      : "."),
              figures);
    };
  }

  private static String engaged(ScrewReach screw) {
    return Say.size(screw.engaged())
        + " of thread is engaged, "
        + Say.times(screw.engagedDiameters())
        + " diameters";
  }

  private static String tooShort(Length reach) {
    return reach.isPositive()
        ? "The screw is too short: it reaches only " + Say.size(reach) + " into the thread."
        : "The screw is too short: it does not reach the thread, by " + Say.size(reach.abs()) + ".";
  }

  private static String tooLong(ScrewReach screw, Joint.TappedHole hole) {
    return "The screw is too long: it would bottom, reaching "
        + Say.size(screw.reach())
        + " where the full thread ends at "
        + Say.size(hole.fullThread())
        + "; shorten it by "
        + Say.size(screw.beyond())
        + " or more.";
  }

  private List<Finding> nutted(ScrewThread thread, Length length, Length through) {
    Optional<Length> nut = heads.find("hexagon-nut", thread).flatMap(head -> head.height());
    if (nut.isEmpty()) {
      return List.of();
    }
    ScrewReach screw = ScrewReach.of(thread, length, through, new Into(Into.Kind.NUT, nut.get()));
    List<Finding.Figure> figures =
        List.of(Say.mm("reach", screw.reach()), Say.mm("nut", nut.get()));
    if (screw.verdict() == ScrewReach.Verdict.GOOD) {
      return finding(
          Weight.NOTE,
          "The screw fills its nut and stands " + Say.size(screw.beyond()) + " beyond.",
          figures);
    }
    return finding(
        screw.verdict() == ScrewReach.Verdict.SHALLOW ? Weight.CAUTION : Weight.FAULT,
        "The screw is too short: it lacks "
            + Say.size(screw.beyond().abs())
            + " to fill a hexagon nut.",
        figures);
  }

  private static List<Finding> finding(
      Weight weight, String sentence, List<Finding.Figure> figures) {
    return List.of(new Finding(weight, NAME, sentence, figures, ""));
  }
}
