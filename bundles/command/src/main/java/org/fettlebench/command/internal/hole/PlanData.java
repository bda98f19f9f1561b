package org.fettlebench.command.internal.hole;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.fettlebench.command.internal.Cautions;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.tooling.BlindHole;
import org.fettlebench.tooling.ClearanceChoice;
import org.fettlebench.tooling.ListedDrill;
import org.fettlebench.tooling.TapLead;
import org.fettlebench.tooling.TappingChoice;

/** A hole plan as data for machines. */
final class PlanData {
  private PlanData() {}

  static Map<String, Object> of(Plan plan, HeldDrills held) {
    List<Object> blind = new ArrayList<>();
    for (int i = 0; i < plan.blind().size(); i++) {
      blind.add(blind(plan.leads().get(i), plan.blind().get(i)));
    }
    Map<String, Object> data =
        Data.of(
            "thread", plan.thread().designation(),
            "material", Data.said(plan.wanted().material()),
            "wantedPercent", Data.rounded(plan.wanted().percent(), 3),
            "wantedPercentSource", plan.wanted().source().map(Figures::sourceData),
            "suggested", plan.suggested().map(choice -> choice.drill().name()),
            "tapping", plan.tapping().stream().map(choice -> tapping(choice, held)).toList(),
            "listed", plan.listed().stream().map(PlanData::listed).toList(),
            "clearance", plan.clearance().stream().map(choice -> clearance(choice, held)).toList(),
            "blindHole", blind,
            "pointAngleDegrees", Data.rounded(plan.pointDegrees(), 3),
            "wanting", plan.wanting(),
            "cautions", List.of(Cautions.DRILLING));
    data.putAll(plan.from().data());
    return data;
  }

  private static Object tapping(TappingChoice choice, HeldDrills held) {
    Map<String, Object> data = DrillWords.data(choice.drill());
    data.putAll(
        Data.of(
            "threadPercent", Data.rounded(choice.percentOfThread(), 3),
            "asDrilledPercent", choice.percentAsDrilled().map(p -> Data.rounded(p, 3)),
            "oversizeMm", choice.oversize().map(Data::mm),
            "concern", choice.concern(),
            "places", held.places(choice.drill())));
    return data;
  }

  private static Object listed(ListedDrill listed) {
    Map<String, Object> data = DrillWords.data(listed.drill());
    data.putAll(
        Data.of(
            "threadPercent", Data.rounded(listed.percentOfThread(), 3),
            "sources", listed.sources().stream().map(Figures::sourceData).toList()));
    return data;
  }

  private static Object clearance(ClearanceChoice choice, HeldDrills held) {
    Map<String, Object> data = Data.of("fit", choice.fit().name().toLowerCase(Locale.ROOT));
    data.putAll(DrillWords.data(choice.drill()));
    data.putAll(
        Data.of(
            "listedMm", Data.mm(choice.listed()),
            "clearanceMm", Data.mm(choice.clearance()),
            "source", Figures.sourceData(choice.source()),
            "places", held.places(choice.drill())));
    return data;
  }

  private static Object blind(TapLead lead, BlindHole hole) {
    return Data.of(
        "lead", PlanText.word(lead),
        "fullThreadMm", Data.mm(hole.fullThread()),
        "tapLeadMm", Data.mm(hole.tapLead()),
        "chipRoomMm", Data.mm(hole.chipRoom()),
        "shoulderMm", Data.mm(hole.shoulder()),
        "pointLengthMm", Data.mm(hole.pointLength()),
        "drillTipMm", Data.mm(hole.drillTip()),
        "leftMm", Data.mm(hole.left()),
        "breaksThrough", hole.breaksThrough(),
        "concerns", hole.concerns(),
        "sources", hole.sources().stream().map(Figures::sourceData).toList());
  }
}
