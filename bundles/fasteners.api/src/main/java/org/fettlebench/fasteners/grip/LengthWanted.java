package org.fettlebench.fasteners.grip;

import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ScrewThread;

/**
 * Lengths of screw under the head that will do.
 *
 * @param least to engage one diameter (all of a thread or nut that is shallower); a nut is filled
 * @param most before the screw bottoms; empty when nothing stands in its way
 */
public record LengthWanted(Length least, Optional<Length> most) {
  /**
   * Returns the lengths for a joint.
   *
   * @throws MeasureException if the thickness passed is below 0
   */
  public static LengthWanted of(ScrewThread thread, Length passed, Into into) {
    ScrewReach.requirePassed(passed);
    Length usual = Length.ofMillimetres(thread.major().millimetres() * ScrewReach.USUAL_DIAMETERS);
    boolean all = into.kind() == Into.Kind.NUT || into.fullThread().compareTo(usual) < 0;
    Length least = passed.plus(all ? into.fullThread() : usual);
    return new LengthWanted(
        least,
        into.kind() == Into.Kind.BLIND
            ? Optional.of(passed.plus(into.fullThread()))
            : Optional.empty());
  }
}
