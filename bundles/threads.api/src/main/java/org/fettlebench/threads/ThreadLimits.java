package org.fettlebench.threads;

import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/** What the standards allow of a finished thread. */
@ProviderType
public interface ThreadLimits {
  /**
   * Returns the limits of the minor diameter of the nut thread in the usual class of the thread's
   * series: ISO 965-1 6H (the coarsest grade there is where the pitch has no grade 6), ASME B1.1
   * 2B, BS 84 medium, BS 93, ISO 228-1; rounded as the standard prints them. Empty where the series
   * names no such rule or the rule has nothing for the pitch; nothing is guessed.
   */
  Optional<DiameterLimits> minorOfNut(ScrewThread thread);
}
