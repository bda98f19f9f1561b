package org.fettlebench.tooling.internal.speed;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.tooling.speed.CuttingOperation;
import org.fettlebench.tooling.speed.SpeedJob;
import org.fettlebench.tooling.speed.SpindleFit;

/** What goes with a speed in words: what is assumed, and what to do where the machine cannot. */
final class SpeedNotes {
  private SpeedNotes() {}

  static List<String> of(SpeedJob job, SpindleFit fit) {
    List<String> notes = new ArrayList<>();
    notes.add(
        "the slower end is where to begin; sharp tools, coolant and a stiff machine allow more"
            + " (common practice, no source)");
    if (job.operation() == CuttingOperation.DRILL) {
      notes.add(
          "for small drill presses bestdrillbit.com advises about 75 per cent of a table's speed");
    }
    if (job.operation() == CuttingOperation.TAP) {
      notes.add("for taps turned by power; a tap turned by hand has no speed to keep");
    }
    if (fit == SpindleFit.FASTER) {
      notes.add(
          "slow the spindle by another pulley or back gear, turn it by hand, or cut less at once"
              + " with a smaller cutter");
    }
    if (fit == SpindleFit.SLOWER) {
      notes.add("feed by hand with light pressure and clear the chips often: small drills snap");
    }
    return notes;
  }
}
