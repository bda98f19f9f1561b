package org.fettlebench.kits;

import java.util.List;
import java.util.Optional;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.BlindHole;
import org.fettlebench.tooling.ClearanceChoice;
import org.fettlebench.tooling.HoleChooser.PercentWanted;
import org.fettlebench.tooling.TappingChoice;

/**
 * All that is known about a joint when rules look at it. What the kit does not say, no table has or
 * nothing at hand serves is empty; a rule then has nothing to say. Sizes are exact lengths; what
 * the seat's geometry gave is in millimetres.
 *
 * @param kit the kit
 * @param joint the joint
 * @param thread its thread
 * @param head its head, where a table has it
 * @param seat the answered seat question, where the seat was measured
 * @param tapping tapping drills at hand, best first; empty when nothing is tapped
 * @param clearance the clearance drill at hand for the fit asked
 * @param blindHole depths, where the hole must stay blind
 * @param holdings what is at hand
 * @param method how the hole will be placed, where the joint says it and it is known
 * @param percentWanted per cent of thread asked and where that comes from, where a hole is tapped
 */
public record JointCase(
    Kit kit,
    Joint joint,
    ScrewThread thread,
    Optional<Head> head,
    Optional<SeatAnswer> seat,
    List<TappingChoice> tapping,
    Optional<ClearanceChoice> clearance,
    Optional<BlindHole> blindHole,
    Holdings holdings,
    Optional<HoleMethod> method,
    Optional<PercentWanted> percentWanted) {
  /** Copies what could change. */
  public JointCase {
    tapping = List.copyOf(tapping);
  }

  /** Makes a case without a known method and without a per cent of thread. */
  @SuppressWarnings("checkstyle:ParameterNumber")
  public JointCase(
      Kit kit,
      Joint joint,
      ScrewThread thread,
      Optional<Head> head,
      Optional<SeatAnswer> seat,
      List<TappingChoice> tapping,
      Optional<ClearanceChoice> clearance,
      Optional<BlindHole> blindHole,
      Holdings holdings) {
    this(
        kit,
        joint,
        thread,
        head,
        seat,
        tapping,
        clearance,
        blindHole,
        holdings,
        Optional.empty(),
        Optional.empty());
  }
}
