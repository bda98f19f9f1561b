package org.fettlebench.castings;

import org.osgi.annotation.versioning.ProviderType;

/** Places finished parts inside rough castings; pure. */
@ProviderType
public interface Castings {
  /**
   * Finds the best placing.
   *
   * @throws CastingException if along an axis that may be shifted nothing holds the part from one
   *     side, so that there is no best place
   */
  Placing place(Casting casting);
}
