package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Finding.Weight;
import org.fettlebench.kits.Joint;
import org.fettlebench.kits.JointCase;
import org.fettlebench.kits.JointRule;
import org.fettlebench.measure.Length;
import org.fettlebench.tooling.HoleChooser.PercentWanted;
import org.fettlebench.tooling.TappingChoice;

/** Says which per cent of thread the hole to tap leaves, planned or already drilled. */
final class TappingRule implements JointRule {
  static final String NAME = "tapping";

  /** Less thread than this is no sound joint; common practice, no source. */
  static final double LEAST_PERCENT = 50;

  /** More thread than this breaks taps; common practice, no source. */
  static final double MOST_PERCENT = 90;

  /** Below this nothing worth the name is left to hold; common practice, no source. */
  private static final double HARDLY_A_THREAD = 30;

  @Override
  public String title() {
    return "the hole to tap";
  }

  @Override
  public List<Finding> look(JointCase joint) {
    List<Finding> findings = new ArrayList<>();
    joint.joint().tapped().ifPresent(hole -> findings.add(finding(joint, hole)));
    return findings;
  }

  /** Returns whether a drill may be used as it is. */
  static boolean sound(TappingChoice choice) {
    return choice.concern().isEmpty()
        && choice.percentOfThread() >= LEAST_PERCENT
        && choice.percentOfThread() <= MOST_PERCENT;
  }

  private static Finding finding(JointCase joint, Joint.TappedHole hole) {
    return hole.drilled()
        .map(size -> drilled(joint, size))
        .orElseGet(() -> planned(joint, joint.percentWanted()));
  }

  private static Finding drilled(JointCase joint, Length size) {
    double percent = joint.thread().percentOfThread(size);
    Weight weight = weight(percent);
    String judgement =
        weight == Weight.NOTE
            ? "which will do"
            : percent > MOST_PERCENT
                ? "too small to tap: open it out first"
                : "too large for "
                    + joint.thread().designation()
                    + ": a larger thread, a bush or an insert would cure it";
    return new Finding(
        weight,
        NAME,
        "The hole already drilled, "
            + Say.size(size)
            + ", leaves "
            + Say.percent(percent)
            + " of thread ("
            + joint.thread().form().title()
            + " basic depth), "
            + judgement
            + ".",
        List.of(Say.mm("drilled", size), new Finding.Figure("percentOfThread", percent)),
        weight == Weight.NOTE ? "" : Say.COMMON_PRACTICE);
  }

  private static Weight weight(double percent) {
    if (percent >= LEAST_PERCENT && percent <= MOST_PERCENT) {
      return Weight.NOTE;
    }
    return percent > 100 || percent < HARDLY_A_THREAD ? Weight.FAULT : Weight.CAUTION;
  }

  private static Finding planned(JointCase joint, Optional<PercentWanted> wanted) {
    String asked =
        wanted
            .map(
                percent ->
                    Say.percent(percent.percent())
                        + " of thread is asked ("
                        + percent.source().citation()
                        + "). ")
            .orElse("");
    String standing = wanted.flatMap(percent -> Expected.doubt(percent.source())).orElse("");
    Optional<TappingChoice> best = joint.tapping().stream().filter(TappingRule::sound).findFirst();
    if (best.isEmpty()) {
      String nearest =
          joint.tapping().stream()
              .findFirst()
              .map(
                  choice ->
                      "the nearest, "
                          + choice.drill().name()
                          + ", would leave "
                          + Say.percent(choice.percentOfThread())
                          + choice.concern().map(concern -> ", " + concern).orElse("")
                          + ".")
              .orElse("none is near.");
      return new Finding(
          Weight.CAUTION,
          NAME,
          asked + "No drill at hand will do: " + nearest,
          List.of(),
          standing);
    }
    return new Finding(
        Weight.NOTE,
        NAME,
        asked + chosen(best.get()) + aside(joint.tapping().get(0), best.get()) + ".",
        List.of(
            Say.mm("tappingDrill", best.get().drill().diameter()),
            new Finding.Figure("percentOfThread", best.get().percentOfThread())),
        standing);
  }

  private static String chosen(TappingChoice choice) {
    return choice.drill().name()
        + " leaves "
        + Say.percent(choice.percentOfThread())
        + choice
            .percentAsDrilled()
            .map(percent -> ", about " + Say.percent(percent) + " as drills cut")
            .orElse("");
  }

  /** Says why a drill that is nearer to what was asked is not taken. */
  private static String aside(TappingChoice nearest, TappingChoice chosen) {
    return nearest.drill().equals(chosen.drill())
        ? ""
        : "; "
            + nearest.drill().name()
            + " would be nearer with "
            + Say.percent(nearest.percentOfThread())
            + nearest.concern().map(concern -> ", but " + concern).orElse("");
  }
}
