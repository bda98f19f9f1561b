package org.fettlebench.threads.identify;

import java.util.List;
import org.fettlebench.threads.ScrewThread;
import org.osgi.annotation.versioning.ProviderType;

/** Names threads from measurements, and tells which could be crossed. */
@ProviderType
public interface ThreadIdentifier {
  /**
   * Returns the threads that best agree with what was measured, the likeliest first. When nothing
   * agrees the nearest are returned all the same, with {@link Candidate#agrees} false.
   *
   * @param most how many at most, 1 or more
   * @throws IllegalArgumentException if {@code most} is below 1
   */
  List<Candidate> identify(Measured measured, int most);

  /**
   * Returns all pairs among some series that could be crossed, by the first's series and size.
   *
   * @param series ids; empty for all series
   */
  List<CrossPair> pairs(List<String> series, CrossingRule rule);

  /** Returns the pairs of one thread with all others, the nearest first. */
  List<CrossPair> pairsOf(ScrewThread thread, CrossingRule rule);
}
