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
   * Returns what would make a head that is tight or fouls sit, best first, each re-checked and each
   * at least clearing or bettering the verdict.
   *
   * @param answer the answer to cure
   * @param otherHeads heads that would hold as well, in order of preference
   * @param methods ways of placing the hole
   * @param confidence chance asked that the hole is within its expected error, between 0 and 1
   */
  List<SeatCure> cures(
      SeatAnswer answer, List<SeatedHead> otherHeads, List<HoleMethod> methods, double confidence);
}
