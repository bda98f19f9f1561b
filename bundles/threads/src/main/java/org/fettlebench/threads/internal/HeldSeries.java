package org.fettlebench.threads.internal;

import java.util.List;
import java.util.Optional;
import org.fettlebench.threads.ThreadSeries;

/**
 * A series with what its table says beyond the series itself.
 *
 * @param series the series
 * @param aliases other names of it
 * @param limits rule for the minor diameter of the nut
 * @param order for sorting the suite's own; {@link Integer#MAX_VALUE} when the table has none
 */
record HeldSeries(ThreadSeries series, List<String> aliases, Optional<String> limits, int order) {
  HeldSeries {
    aliases = List.copyOf(aliases);
  }
}
