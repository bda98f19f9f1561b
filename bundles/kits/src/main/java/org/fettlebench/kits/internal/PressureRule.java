package org.fettlebench.kits.internal;

import java.util.List;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Finding.Weight;
import org.fettlebench.kits.JointCase;
import org.fettlebench.kits.JointRule;

/** Reminds of what the suite cannot judge where pressure is held. */
final class PressureRule implements JointRule {
  @Override
  public String title() {
    return "parts that hold pressure";
  }

  @Override
  public List<Finding> look(JointCase joint) {
    return joint.joint().holdsPressure()
        ? List.of(Finding.of(Weight.CAUTION, Cautions.PRESSURE, Cautions.PRESSURE_SENTENCE))
        : List.of();
  }
}
