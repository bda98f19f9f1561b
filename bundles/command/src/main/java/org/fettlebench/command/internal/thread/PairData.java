package org.fettlebench.command.internal.thread;

import java.util.Map;
import org.fettlebench.command.internal.Data;
import org.fettlebench.threads.identify.CrossPair;

/** Two threads that could be crossed, as data for machines. */
final class PairData {
  private PairData() {}

  static Map<String, Object> of(CrossPair pair) {
    return Data.of(
        "first", pair.first().designation(),
        "second", pair.second().designation(),
        "diameterDifferenceMm", Data.mm(pair.diameterDifference()),
        "pitchDifferenceMm", Data.mm(pair.pitchDifference()),
        "sameThread", pair.kind() == CrossPair.Kind.SAME,
        "outcome", pair.kind().words());
  }
}
