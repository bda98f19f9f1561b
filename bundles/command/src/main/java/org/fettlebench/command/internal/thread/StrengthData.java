package org.fettlebench.command.internal.thread;

import java.util.Map;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.threads.strength.JointStrength;
import org.fettlebench.threads.strength.Material;

/** A joint's strength and materials as data for machines. */
final class StrengthData {
  private StrengthData() {}

  static Map<String, Object> of(JointStrength joint) {
    return Data.of(
        "screw", of(joint.joint().screw()),
        "nut", of(joint.joint().nut()),
        "engagementMm", Data.mm(joint.joint().engagement()),
        "screwShearAreaMm2", Data.rounded(joint.screwShearAreaMm2(), 6),
        "nutShearAreaMm2", Data.rounded(joint.nutShearAreaMm2(), 6),
        "screwBreaksN", Data.rounded(joint.screwBreaksN(), 3),
        "screwThreadStripsN", Data.rounded(joint.screwThreadStripsN(), 3),
        "nutThreadStripsN", Data.rounded(joint.nutThreadStripsN(), 3),
        "givesWay", joint.givesWay().words(),
        "leastEngagementMm", Data.mm(joint.leastEngagement()),
        "leastEngagementIn", Data.in(joint.leastEngagement()),
        "notes", joint.notes());
  }

  static Map<String, Object> of(Material material) {
    return Data.of(
        "id", material.id(),
        "name", material.name(),
        "tensileMpa", Data.rounded(material.tensileMpa(), 3),
        "yieldMpa", material.yieldMpa().map(mpa -> Data.rounded(mpa, 3)),
        "proofMpa", material.proofMpa().map(mpa -> Data.rounded(mpa, 3)),
        "shearMpa", Data.rounded(material.threadShearMpa(), 3),
        "shearPrinted", material.shearMpa().isPresent(),
        "source", Figures.sourceData(material.source()));
  }
}
