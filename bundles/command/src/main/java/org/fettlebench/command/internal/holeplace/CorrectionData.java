package org.fettlebench.command.internal.holeplace;

import java.util.Locale;
import java.util.Map;
import org.fettlebench.command.internal.Data;
import org.fettlebench.holes.correct.CorrectionAnswer;
import org.fettlebench.holes.correct.CorrectionAnswer.Filing;
import org.fettlebench.holes.correct.CorrectionAnswer.WayOut;
import org.fettlebench.holes.correct.CorrectionQuestion;
import org.fettlebench.holes.correct.CorrectionQuestion.Rules;

/** A correction as data. */
final class CorrectionData {
  private CorrectionData() {}

  static Map<String, Object> of(String name, CorrectionAnswer answer) {
    CorrectionQuestion question = answer.question();
    Rules rules = question.rules();
    return Data.of(
        "seat", name,
        "outcome", answer.outcome().word(),
        "target", PlaceData.point(question.target()),
        "found", PlaceData.point(question.found().centre()),
        "drilledDiameterMm", Data.mm(question.found().diameterMm()),
        "withinMm", Data.mm(question.found().withinMm()),
        "finishDiameterMm", Data.mm(question.finishDiameterMm()),
        "errorMm", Data.mm(answer.errorMm()),
        "error", answer.error().map(PlaceData::direction),
        "curableMm", Data.mm(answer.curableMm()),
        "cleanUpPerSideMm", Data.mm(rules.cleanUp().perSideMm()),
        "cleanUpMeans", rules.cleanUp().means(),
        "filingError", PlaceData.error(rules.filing()),
        "plugWallMm", Data.mm(rules.bushWallMm()),
        "plugWallMeans", rules.bushMeans(),
        "cautions", answer.cautions(),
        "asIs", answer.asIs().map(PlaceData::seat),
        "filing", answer.filing().map(CorrectionData::filing),
        "waysOut", answer.waysOut().stream().map(CorrectionData::wayOut).toList());
  }

  private static Map<String, Object> filing(Filing filing) {
    return Data.of(
        "towards", PlaceData.direction(filing.towards()),
        "edge", Data.said(filing.edge()),
        "deepestMm", Data.mm(filing.deepestMm()),
        "quartersMm", Data.mm(filing.quartersMm()),
        "filedDiameterMm", Data.mm(filing.filedDiameterMm()),
        "lastCutPerSideMm", Data.mm(filing.lastCutMm()),
        "file", filing.file().map(PlaceData::cutter),
        "between", filing.between().map(PlaceData::cutter),
        "finish", filing.finish().map(PlaceData::cutter),
        "after", filing.after().map(PlaceData::seat));
  }

  private static Map<String, Object> wayOut(WayOut way) {
    return Data.of(
        "kind", way.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '),
        "sentence", way.sentence(),
        "centre", PlaceData.point(way.centre()),
        "diameterMm", Data.mm(way.diameterMm()),
        "toGet", way.toGet().map(PlaceData::cutter),
        "after", way.after().map(PlaceData::seat));
  }
}
