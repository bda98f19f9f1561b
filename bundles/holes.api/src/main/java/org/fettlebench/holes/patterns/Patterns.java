package org.fettlebench.holes.patterns;

import org.fettlebench.holes.chance.Chance;
import org.osgi.annotation.versioning.ProviderType;

/** Answers questions of holes in two parts; pure. */
@ProviderType
public interface Patterns {
  /** Returns the chance that one movement lets every fastener enter, with its standard error. */
  Chance chance(PatternQuestion question);

  /**
   * Returns the play that the simulated parts need; sizes of holes in the question do not count.
   */
  PlayNeeded needed(PatternQuestion question);

  /**
   * Compares drilling both parts on their own with drilling the first and spotting the other.
   *
   * @param question as for {@link #chance}
   * @param upperFirst whether the upper part is drilled first, else the lower
   * @param spotting how a spotted hole lands against the hole it is spotted through
   */
  SpottingAnswer spotting(PatternQuestion question, boolean upperFirst, PlacingLaw spotting);

  /** Finds the movement that leaves most room, and what would make the parts go together. */
  PatternFit fit(MeasuredPattern measured);
}
