package org.fettlebench.tooling.drilled;

import java.util.List;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;
import org.fettlebench.tooling.DrillSize;

/**
 * What to drill before reaming.
 *
 * @param reamed diameter to be reamed
 * @param undersizeLeast least metal for the reamer, on the diameter
 * @param undersizeMost most metal for the reamer, on the diameter
 * @param drillOversize how much larger than the drill the hole is counted to come out
 * @param drillLeast smallest drill: reamed - most undersize - oversize
 * @param drillMost largest drill: reamed - least undersize - oversize
 * @param drills those at hand within, nearest to the middle first
 * @param source of the undersize
 */
public record ReamingChoice(
    Length reamed,
    Length undersizeLeast,
    Length undersizeMost,
    Length drillOversize,
    Length drillLeast,
    Length drillMost,
    List<DrillSize> drills,
    Source source) {
  /** Copies what could change. */
  public ReamingChoice {
    drills = List.copyOf(drills);
  }
}
