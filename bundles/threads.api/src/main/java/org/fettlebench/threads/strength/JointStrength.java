package org.fettlebench.threads.strength;

import java.util.List;
import org.fettlebench.measure.Length;

/**
 * What a screw and its thread can bear along the axis, at the weakest sizes that the class allows.
 *
 * @param joint what was asked
 * @param stressArea of the screw
 * @param screwShearAreaMm2 of the screw's thread over the engagement, at the nut's minor diameter
 * @param nutShearAreaMm2 of the nut's thread over the engagement, at the screw's major diameter
 * @param screwBreaksN load at which the screw breaks, in newtons
 * @param screwThreadStripsN load at which the screw's thread strips
 * @param nutThreadStripsN load at which the nut's thread strips
 * @param givesWay what has the least load
 * @param leastEngagement length of full thread at which neither thread strips before the screw
 *     breaks
 * @param notes assumptions and cautions, to be shown with the figures
 */
public record JointStrength(
    ThreadedJoint joint,
    StressArea stressArea,
    double screwShearAreaMm2,
    double nutShearAreaMm2,
    double screwBreaksN,
    double screwThreadStripsN,
    double nutThreadStripsN,
    GivesWay givesWay,
    Length leastEngagement,
    List<String> notes) {
  /** Copies what could change. */
  public JointStrength {
    notes = List.copyOf(notes);
  }
}
