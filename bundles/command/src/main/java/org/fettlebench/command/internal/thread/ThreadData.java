package org.fettlebench.command.internal.thread;

import java.util.Map;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.threads.ScrewThread;

/** A thread as data for machines. */
final class ThreadData {
  private ThreadData() {}

  static Map<String, Object> of(ScrewThread thread) {
    return Data.of(
        "designation", thread.designation(),
        "series", thread.series(),
        "size", thread.size(),
        "form", thread.form().title(),
        "includedAngleDegrees", thread.form().includedAngleDegrees(),
        "threadsPerInch", thread.threadsPerInch().map(java.math.BigDecimal::new),
        "majorMm", Data.mm(thread.major()),
        "majorIn", Data.in(thread.major()),
        "pitchMm", Data.mm(thread.pitch()),
        "pitchIn", Data.in(thread.pitch()),
        "effectiveMm", Data.mm(thread.effective()),
        "effectiveIn", Data.in(thread.effective()),
        "minorInternalMm", Data.mm(thread.minorInternal()),
        "minorInternalIn", Data.in(thread.minorInternal()),
        "minorExternalMm", Data.mm(thread.minorExternal()),
        "minorExternalIn", Data.in(thread.minorExternal()),
        "source", Figures.sourceData(thread.source()));
  }
}
