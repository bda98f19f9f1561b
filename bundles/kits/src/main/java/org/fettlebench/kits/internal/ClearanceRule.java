package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Finding.Weight;
import org.fettlebench.kits.Joint;
import org.fettlebench.kits.JointCase;
import org.fettlebench.kits.JointRule;
import org.fettlebench.measure.Length;
import org.fettlebench.tooling.ClearanceChoice;
import org.fettlebench.tooling.ClearanceFit;

/**
 * Says how freely the fastener passes its plain hole, and how far that hole may be out against the
 * threaded one: the difference of hole and fastener is shared between the two (ASME Y14.5, fixed
 * fastener: H - F = T1 + T2, T being diameters of zones).
 */
final class ClearanceRule implements JointRule {
  static final String NAME = "clearance";

  /** A drill may be larger than the listed hole by this part of the thread; common practice. */
  private static final double LARGEST_EXCESS_OF_MAJOR = 0.05;

  /** On small threads, the steps between drills ask for this much; common practice, no source. */
  private static final double LARGEST_EXCESS_MM = 0.1;

  /** Clearance above this part of the thread is a sloppy hole; common practice, no source. */
  private static final double SLOPPY_OF_MAJOR = 0.2;

  @Override
  public String title() {
    return "the hole to pass";
  }

  /** Returns whether a drill is near enough to the hole that is listed. */
  static boolean sound(ClearanceChoice choice) {
    double excess = choice.drill().diameter().minus(choice.listed()).millimetres();
    double major = choice.drill().diameter().minus(choice.clearance()).millimetres();
    return excess <= Math.max(LARGEST_EXCESS_MM, LARGEST_EXCESS_OF_MAJOR * major);
  }

  @Override
  public List<Finding> look(JointCase joint) {
    List<Finding> findings = new ArrayList<>();
    Optional<Joint.ClearanceHole> hole = joint.joint().clearance();
    if (hole.isEmpty()) {
      return findings;
    }
    Optional<Length> diameter =
        hole.get().drilled().or(() -> joint.clearance().map(choice -> choice.drill().diameter()));
    if (hole.get().drilled().isPresent()) {
      findings.add(drilled(joint, hole.get().drilled().get()));
    } else {
      findings.add(planned(joint, hole.get()));
    }
    diameter.flatMap(size -> mating(joint, size)).ifPresent(findings::add);
    return findings;
  }

  private static Finding drilled(JointCase joint, Length size) {
    Length clearance = size.minus(joint.thread().major());
    List<Finding.Figure> figures = List.of(Say.mm("drilled", size), Say.mm("clearance", clearance));
    String hole = "The hole already drilled, " + Say.size(size) + ", ";
    if (!clearance.isPositive()) {
      return new Finding(
          Weight.FAULT,
          NAME,
          hole
              + "does not pass "
              + joint.thread().designation()
              + " of "
              + Say.size(joint.thread().major())
              + ": open it out.",
          figures,
          "");
    }
    boolean sloppy =
        clearance.millimetres() > SLOPPY_OF_MAJOR * joint.thread().major().millimetres();
    return new Finding(
        sloppy ? Weight.CAUTION : Weight.NOTE,
        NAME,
        hole
            + "leaves "
            + Say.allowanceMm(clearance.millimetres())
            + (sloppy
                ? " of clearance, which is much: use a washer, a larger fastener or a bush."
                : " of clearance."),
        figures,
        sloppy ? Say.COMMON_PRACTICE : "");
  }

  private static Finding planned(JointCase joint, Joint.ClearanceHole hole) {
    return joint
        .clearance()
        .map(choice -> planned(joint, hole, choice))
        .orElseGet(
            () ->
                Finding.of(
                    Weight.CAUTION,
                    NAME,
                    "No drill at hand makes a "
                        + word(hole.fit())
                        + " hole for "
                        + joint.thread().designation()
                        + "."));
  }

  private static Finding planned(
      JointCase joint, Joint.ClearanceHole hole, ClearanceChoice choice) {
    String listed =
        choice.fit() == hole.fit()
            ? "the " + word(hole.fit()) + " hole listed is "
            : "no "
                + word(hole.fit())
                + " hole is listed for "
                + joint.thread().designation()
                + ", and the "
                + word(choice.fit())
                + " one is ";
    return new Finding(
        choice.fit() == hole.fit() ? Weight.NOTE : Weight.CAUTION,
        NAME,
        choice.drill().name()
            + " passes it with "
            + Say.allowanceMm(choice.clearance().millimetres())
            + " of clearance; "
            + listed
            + Say.size(choice.listed())
            + ".",
        List.of(
            Say.mm("clearanceDrill", choice.drill().diameter()),
            Say.mm("listed", choice.listed()),
            Say.mm("clearance", choice.clearance())),
        Expected.doubt(choice.source()).orElse(""));
  }

  /** Two figures that look the same when rounded would not say why the one is more. */
  private static String more(double half, double needed) {
    return Say.allowanceMm(half).equals(Say.allowanceMm(needed))
        ? "a little more"
        : Say.allowanceMm(needed);
  }

  private static String word(ClearanceFit fit) {
    return fit.name().toLowerCase(Locale.ROOT);
  }

  /** Compares what the clearance allows with what two holes placed on their own will need. */
  private static Optional<Finding> mating(JointCase joint, Length hole) {
    double half = hole.minus(joint.thread().major()).millimetres() / 2;
    if (joint.joint().tapped().isEmpty()
        || joint.method().isEmpty()
        || !(half > 0)
        || joint.method().get().id().equals("spot-through")) {
      return Optional.empty();
    }
    // Two equal independent errors: their difference has a spread sqrt(2) times that of one.
    double needed = Math.sqrt(2) * joint.method().get().errorRadiusMm(joint.kit().confidence());
    if (needed <= half) {
      return Optional.empty();
    }
    return Optional.of(
        new Finding(
            Weight.NOTE,
            "mating holes",
            "The two holes may be out against each other by "
                + Say.allowanceMm(half)
                + ", but "
                + more(half, needed)
                + " is to be expected when each is placed by "
                + joint.method().get().title().toLowerCase(Locale.ROOT)
                + ": spot the one through the other.",
            List.of(Say.mm("matingAllowance", half), Say.mm("matingError", needed)),
            Expected.doubt(joint.method().get().source()).orElse("")));
  }
}
