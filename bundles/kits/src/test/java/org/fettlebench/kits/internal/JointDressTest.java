package org.fettlebench.kits.internal;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fettlebench.kits.Finding;
import org.junit.jupiter.api.Test;

/** What goes with a joint's head, its washer and its spanner, counts on its seat. */
class JointDressTest {
  private static final String TIGHT =
      """
      [kit]
      name = "k"
      [[seat]]
      name = "land"
      outline = [["-8 mm", "-8 mm"], ["8 mm", "-8 mm"], ["8 mm", "8 mm"], ["-8 mm", "8 mm"]]
      centre = ["0 mm", "0 mm"]
        [[seat.wall]]
        name = "barrel"
        from = ["-8 mm", "8 mm"]
        to = ["8 mm", "8 mm"]
        height = "20 mm"
      [[joint]]
      name = "cover"
      count = 1
      fastener = "M6 hexagon x 12 mm"
      clearance = { fit = "medium", depth = "3 mm" }
      seat = "land"
      method = "jig"
      """;

  private static String seatFinding(String kit) {
    return Bench.check(kit, "").joints().get(0).findings().stream()
        .filter(finding -> finding.rule().equals(SeatRule.NAME))
        .map(finding -> finding.sentence() + " " + finding.standing())
        .findFirst()
        .orElseThrow();
  }

  /** A hexagon M6 sweeps 11.5 mm; a ring by the rule 1.5 x 10 + 4 = 19 mm, which 16 mm lacks. */
  @Test
  void theSeatOfAJointHonoursItsWasherAndSpanner() {
    assertTrue(seatFinding(TIGHT).startsWith("M6 hexagon clears"), seatFinding(TIGHT));
    String ringed = seatFinding(TIGHT + "spanner = { kind = \"ring\", diameter = \"19 mm\" }\n");
    assertTrue(ringed.contains(", with room for a ring spanner as measured, fouls"), ringed);
    assertTrue(ringed.contains("barrel, which the ring spanner's rim would meet"), ringed);
    assertTrue(ringed.endsWith("as measured"), ringed);
    String wide = seatFinding(TIGHT + "washer = { diameter = \"18 mm\", thickness = \"1 mm\" }\n");
    assertTrue(wide.startsWith("M6 hexagon on its washer fouls"), wide);
  }

  @Test
  void aHoleThatTheHeadWouldDropThroughIsSaidOfItsJoint() {
    String kit = TIGHT.replace("depth = \"3 mm\"", "depth = \"3 mm\", drilled = \"10.5 mm\"");
    List<Finding> findings = Bench.check(kit, "").joints().get(0).findings();
    assertTrue(
        findings
            .get(0)
            .sentence()
            .startsWith("It cannot be checked: hole diameter 10.5 mm is wider"),
        findings.toString());
  }
}
