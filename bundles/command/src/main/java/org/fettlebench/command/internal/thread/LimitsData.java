package org.fettlebench.command.internal.thread;

import java.util.Map;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.threads.DiameterRange;
import org.fettlebench.threads.LimitsOfThread;

/** Limits as data for machines; an end that the standard leaves open is left out. */
final class LimitsData {
  private LimitsData() {}

  static Map<String, Object> of(LimitsOfThread limits) {
    return Data.of(
        "side", limits.side().word(),
        "threadClass", limits.threadClass(),
        "major", range(limits.major()),
        "effective", range(limits.effective()),
        "minor", range(limits.minor()),
        "notes", limits.notes());
  }

  private static Map<String, Object> range(DiameterRange range) {
    return Data.of(
        "leastMm", range.least().map(Data::mm),
        "mostMm", range.most().map(Data::mm),
        "leastIn", range.least().map(Data::in),
        "mostIn", range.most().map(Data::in),
        "source", Figures.sourceData(range.source()));
  }
}
