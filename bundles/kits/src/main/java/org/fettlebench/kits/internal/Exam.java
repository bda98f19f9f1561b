package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Joint;
import org.fettlebench.kits.JointCase;
import org.fettlebench.kits.JointReport.Fetch;
import org.fettlebench.kits.internal.ToolRack.Pick;
import org.fettlebench.tooling.ClearanceChoice;
import org.fettlebench.tooling.TappingChoice;

/**
 * What was found out about one joint before fasteners are shared out.
 *
 * @param joint the joint
 * @param known all about it; empty when its thread is not known
 * @param tapping the drill for the hole to tap, if one is to be drilled
 * @param clearance the drill for the hole to pass, if one is to be drilled
 * @param taps to fetch
 * @param findings of all rules
 */
record Exam(
    Joint joint,
    Optional<JointCase> known,
    Optional<Pick<TappingChoice>> tapping,
    Optional<Pick<ClearanceChoice>> clearance,
    List<Fetch> taps,
    List<Finding> findings) {

  /** Makes the exam of a joint that cannot be examined. */
  static Exam refused(Joint joint, Finding why) {
    return new Exam(
        joint, Optional.empty(), Optional.empty(), Optional.empty(), List.of(), List.of(why));
  }

  Optional<SeatAnswer> seat() {
    return known.flatMap(JointCase::seat);
  }

  /** Returns whether the fastener itself, rather than the work, is what fails. */
  boolean fastenerFails() {
    return findings.stream()
        .filter(finding -> finding.weight() == Finding.Weight.FAULT)
        .anyMatch(
            finding ->
                finding.rule().equals(SeatRule.NAME)
                    || finding.rule().equals(LengthRule.NAME)
                    || finding.rule().equals(ClearanceRule.NAME));
  }

  /** Returns the tools to fetch. */
  List<Fetch> tools() {
    List<Fetch> fetch = new ArrayList<>();
    tapping.ifPresent(
        pick ->
            fetch.add(
                new Fetch(
                    Fetch.Role.TAPPING_DRILL,
                    pick.choice().drill().name() + " drill",
                    pick.state(),
                    pick.from(),
                    Say.percent(pick.choice().percentOfThread()) + " of thread")));
    fetch.addAll(taps);
    clearance.ifPresent(
        pick ->
            fetch.add(
                new Fetch(
                    Fetch.Role.CLEARANCE_DRILL,
                    pick.choice().drill().name() + " drill",
                    pick.state(),
                    pick.from(),
                    Say.allowanceMm(pick.choice().clearance().millimetres()) + " of clearance")));
    return fetch;
  }
}
