package org.fettlebench.kits.internal;

import java.util.Map;
import org.fettlebench.kits.KitReport;
import org.fettlebench.kits.KitReports;
import org.fettlebench.measure.LengthUnit;
import org.osgi.service.component.annotations.Component;

/** Puts kit reports into words and data. */
@Component
public class KitReportsService implements KitReports {
  @Override
  public String summary(KitReport report) {
    return ReportSummary.of(report);
  }

  @Override
  public String text(KitReport report, LengthUnit unit) {
    return new ReportText(ReportUnits.first(report, unit), unit).lines();
  }

  @Override
  public KitReport inUnit(KitReport report, LengthUnit first) {
    return ReportUnits.first(report, first);
  }

  @Override
  public Map<String, Object> data(KitReport report) {
    return ReportData.of(report);
  }
}
