package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Finding.Weight;
import org.fettlebench.kits.Joint;
import org.fettlebench.kits.Kit;

/** The short usual cautions for the work that a kit plans. */
final class Cautions {
  static final String PRESSURE = "pressure";
  static final String PRESSURE_SENTENCE =
      "This holds pressure: threads, stays, bushes and fastenings follow the design as approved, the"
          + " rules of the club's boiler inspector and local law. These figures do not replace that"
          + " examination.";

  private static final String DRILLING =
      "Drilling: clamp the work, guard the drill, take the chuck key out, wear eye protection, and"
          + " mind the swarf. Never put a finger in the hole.";
  private static final String TAPPING =
      "Tapping: keep the tap square and turn it back to clear the chips. A broken tap is glass-hard"
          + " and sharp: leave it to its extractor.";

  private Cautions() {}

  static List<Finding> of(Kit kit) {
    List<Finding> cautions = new ArrayList<>();
    for (String seat : kit.idleSeats()) {
      cautions.add(
          Finding.of(
              Weight.CAUTION,
              SeatRule.NAME,
              "No joint uses the seat \"" + seat + "\": it is not checked."));
    }
    if (kit.joints().stream().anyMatch(Cautions::drills)) {
      cautions.add(Finding.of(Weight.CAUTION, "drilling", DRILLING));
    }
    if (kit.joints().stream().anyMatch(joint -> joint.tapped().isPresent())) {
      cautions.add(Finding.of(Weight.CAUTION, "tapping", TAPPING));
    }
    if (kit.joints().stream().anyMatch(Joint::holdsPressure)) {
      cautions.add(
          Finding.of(
              Weight.CAUTION,
              PRESSURE,
              PRESSURE_SENTENCE.replace("This holds pressure", "Joints here hold pressure")));
    }
    return cautions;
  }

  private static boolean drills(Joint joint) {
    return joint.clearance().filter(hole -> hole.drilled().isEmpty()).isPresent()
        || joint.tapped().filter(hole -> hole.drilled().isEmpty()).isPresent();
  }
}
