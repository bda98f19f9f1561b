package org.fettlebench.fasteners;

import org.fettlebench.threads.ScrewThread;
import org.osgi.annotation.versioning.ProviderType;

/** Countersinks, counterbores and spot faces for the heads that are known. */
@ProviderType
public interface HeadSinks {
  /**
   * Works out the cut for a head: a countersink for a countersunk head, a counterbore for another
   * round head, a spot face for a hexagon, nut or washer.
   *
   * @param thread of the screw
   * @param head listed for it, or as measured
   * @param wanted how it is to sit
   * @throws org.fettlebench.measure.MeasureException if the hole is as large as the head, or a
   *     round head's height is not known
   */
  HeadSink of(ScrewThread thread, Head head, SinkWanted wanted);
}
