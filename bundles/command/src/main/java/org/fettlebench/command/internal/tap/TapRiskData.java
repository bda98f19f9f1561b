package org.fettlebench.command.internal.tap;

import java.util.List;
import java.util.Map;
import org.fettlebench.command.internal.Cautions;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.command.internal.hole.WorkWords;
import org.fettlebench.tooling.risk.Assumed;
import org.fettlebench.tooling.risk.TapCure;
import org.fettlebench.tooling.risk.TapJob;
import org.fettlebench.tooling.risk.TapRisk;

/** A tap risk as data for machines. */
final class TapRiskData {
  private TapRiskData() {}

  static Map<String, Object> of(TapRisk risk, TapHole hole) {
    TapJob job = risk.job();
    return Data.of(
        "thread", job.thread().designation(),
        "material", WorkWords.data(job.material()),
        "holeName", hole.name(),
        "holeMm", Data.mm(hole.diameter()),
        "holeIn", Data.in(hole.diameter()),
        "holeBecause", hole.why(),
        "percentOfThread", Data.rounded(risk.percentOfThread(), 3),
        "depthMm", Data.mm(job.depth()),
        "depthIn", Data.in(job.depth()),
        "through", job.through(),
        "tap", job.tap().word(),
        "flutes", risk.flutes(),
        "coreDiameterMm", Data.mm(risk.core()),
        "cuttingTorqueNm", Data.rounded(risk.cuttingTorqueNm(), 6),
        "breakingTorqueNm", Data.rounded(risk.breakingTorqueNm(), 6),
        "ratio", Data.rounded(risk.ratio(), 4),
        "ratioLeast", Data.rounded(risk.ratioLeast(), 4),
        "ratioMost", Data.rounded(risk.ratioMost(), 4),
        "verdict", risk.verdict().words(),
        "cures", risk.cures().stream().map(TapRiskData::cure).toList(),
        "assumed", risk.assumed().stream().map(TapRiskData::assumed).toList(),
        "notes", risk.notes(),
        "cautions", List.of(Cautions.DRILLING));
  }

  private static Object cure(TapCure cure) {
    return Data.of(
        "what", cure.words(),
        "holeMm", Data.mm(cure.job().hole()),
        "depthMm", Data.mm(cure.job().depth()),
        "tap", cure.job().tap().word(),
        "material", cure.job().material().id(),
        "cuttingTorqueNm", Data.rounded(cure.cuttingTorqueNm(), 6),
        "ratio", Data.rounded(cure.ratio(), 4),
        "ratioMost", Data.rounded(cure.ratioMost(), 4));
  }

  private static Object assumed(Assumed assumed) {
    return Data.of(
        "what", assumed.what(),
        "figure", assumed.figure(),
        "source", Figures.sourceData(assumed.source()));
  }
}
