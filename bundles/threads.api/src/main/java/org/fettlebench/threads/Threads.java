package org.fettlebench.threads;

import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/** The thread series that are enabled now, and threads by their designation. */
@ProviderType
public interface Threads {
  /** Returns all series: the suite's own first, then those of modules. */
  List<ThreadSeries> series();

  /**
   * Finds a thread by any usual way of writing it: {@code 2BA}, {@code 2 B.A.}, {@code M6}, {@code
   * M6x0.75}, {@code 1/4-20 UNC}, {@code #10-32}, {@code 3/16 BSW}, {@code 1/4 x 40 ME}.
   */
  Optional<ScrewThread> find(String designation);

  /** Returns threads whose designation or size comes close to what was typed, closest first. */
  List<ScrewThread> near(String designation, int most);
}
