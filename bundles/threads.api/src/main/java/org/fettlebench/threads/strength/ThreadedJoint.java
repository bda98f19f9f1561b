package org.fettlebench.threads.strength;

import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ScrewThread;

/**
 * A screw in a nut or tapped hole.
 *
 * @param thread of both
 * @param threadClass class or classes for the worst sizes; the most usual if not said
 * @param screw material of the screw
 * @param nut material of the nut or the part with the tapped hole
 * @param engagement full threads engaged, above 0
 * @param hole diameter of the tapped hole where it is known; else the largest of the class
 */
public record ThreadedJoint(
    ScrewThread thread,
    Optional<String> threadClass,
    Material screw,
    Material nut,
    Length engagement,
    Optional<Length> hole) {
  /**
   * Checks the lengths.
   *
   * @throws MeasureException if there is no engagement or the hole leaves no thread
   */
  public ThreadedJoint {
    if (!engagement.isPositive()) {
      throw new MeasureException("length of engagement " + engagement + " must be above 0 mm");
    }
    if (hole.isPresent()
        && !(hole.get().isPositive() && hole.get().compareTo(thread.major()) < 0)) {
      throw new MeasureException(
          "hole %s leaves no thread: it must be below the major diameter %s of %s"
              .formatted(hole.get(), thread.major(), thread.designation()));
    }
  }
}
