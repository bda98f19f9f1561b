package org.fettlebench.fits;

import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/** Answers seat questions; pure, and quick enough to follow a pointer. */
@ProviderType
public interface Seats {
  /**
   * Answers a question.
   *
   * @throws SeatException if the outline crosses itself, has no area, or a figure is out of range
   */
  SeatAnswer check(SeatQuestion question);

  /**
   * Returns how far the hole may be out in every direction.
   *
   * @param question what is asked
   * @param directions how many, evenly round from x on, from 1 to 3600
   * @throws SeatException as {@link #check} does
   */
  List<Reach> rose(SeatQuestion question, int directions);

  /**
   * Returns what would make a head that is tight or fouls sit, best first, each re-checked and each
   * at least clearing or bettering the verdict. Washers, spanners and the head itself are taken
   * from the question; an other head that is the same but for its spanner counts as another
   * spanner.
   *
   * @param answer the answer to cure
   * @param otherHeads heads that would hold as well, in order of preference
   * @param methods ways of placing the hole
   * @param confidence chance asked that the hole is within its expected error, between 0 and 1
   */
  List<SeatCure> cures(
      SeatAnswer answer, List<SeatedHead> otherHeads, List<HoleMethod> methods, double confidence);
}
