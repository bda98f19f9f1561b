package org.fettlebench.threads.strength;

import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ScrewThread;
import org.osgi.annotation.versioning.ProviderType;

/** How strong a thread is. The figures guide a choice; they approve no pressure part. */
@ProviderType
public interface ThreadStrength {
  /**
   * Returns the tensile stress area: ISO 898-1 for ISO, ASME B1.1 for Unified; for other forms of
   * the mean of effective and minor diameter, which is common practice.
   */
  StressArea stressArea(ScrewThread thread);

  /**
   * Returns what gives way first in a joint, and at what load.
   *
   * @throws MeasureException if the thread has no such class, or the hole is so large that the
   *     screw's thread does not reach it
   */
  JointStrength of(ThreadedJoint joint);

  /**
   * Returns the torque that tightens a screw to a preload, with one friction for thread and head:
   * the power screw formula with the head's friction at 0.625 of the diameter (Shigley, Mechanical
   * Engineering Design, 9th edition, chapter 8).
   *
   * @param preloadN above 0, in newtons
   * @param friction coefficient, 0.02 to 0.6
   * @return newton metres
   * @throws MeasureException if a value is outside its range
   */
  double torqueNm(ScrewThread thread, double preloadN, double friction);

  /**
   * Returns the torque that tightens a screw to a preload by a nut factor K, which stands for all
   * friction together: T = K F d (Shigley, Mechanical Engineering Design, 9th edition, equation
   * 8-27; factors by condition in its table 8-15: 0.30 black, 0.20 zinc plated, 0.18 lubricated).
   *
   * @param preloadN above 0, in newtons
   * @param nutFactor K, 0.05 to 0.6
   * @return newton metres
   * @throws MeasureException if a value is outside its range
   */
  double torqueByNutFactorNm(ScrewThread thread, double preloadN, double nutFactor);
}
