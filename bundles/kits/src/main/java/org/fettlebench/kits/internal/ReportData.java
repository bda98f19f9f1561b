package org.fettlebench.kits.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.Verdict;
import org.fettlebench.kits.Fastener;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.JointReport;
import org.fettlebench.kits.JointReport.Supply;
import org.fettlebench.kits.KitReport;
import org.fettlebench.measure.Point;

/** A kit report as maps and lists. */
final class ReportData {
  private ReportData() {}

  static Map<String, Object> of(KitReport report) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("kit", report.kit().name());
    report.kit().scale().ifPresent(scale -> data.put("scaleOneTo", scale));
    data.put("confidence", report.kit().confidence());
    data.put("summary", ReportSummary.of(report));
    data.put("wanting", report.wanting());
    data.put("counts", counts(report));
    data.put("joints", report.joints().stream().map(ReportData::joint).toList());
    data.put("shortages", report.shortages().stream().map(ReportData::shortage).toList());
    data.put("cautions", report.cautions().stream().map(ReportData::finding).toList());
    return data;
  }

  private static Map<String, Object> counts(KitReport report) {
    Map<String, Object> counts = new LinkedHashMap<>();
    counts.put("joints", report.joints().size());
    for (Verdict verdict : Verdict.values()) {
      counts.put(verdict.word(), report.count(verdict));
    }
    counts.put("unmeasured", report.unmeasured());
    counts.put("failing", (int) report.joints().stream().filter(JointReport::fails).count());
    counts.put("complete", report.count(Supply.COMPLETE));
    counts.put("short", report.count(Supply.SHORT));
    counts.put("wrong", report.count(Supply.WRONG));
    counts.put("betterFromStock", report.count(Supply.BETTER_FROM_STOCK));
    return counts;
  }

  private static Map<String, Object> joint(JointReport report) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("joint", report.joint().name());
    data.put("part", report.joint().part());
    data.put("line", report.joint().line());
    data.put("count", report.joint().count());
    data.put("fastener", fastener(report.joint().fastener()));
    data.put("holdsPressure", report.joint().holdsPressure());
    data.put("supply", report.supply().words());
    data.put("fails", report.fails());
    report.seat().ifPresent(seat -> data.putAll(seat(seat)));
    data.put("findings", report.findings().stream().map(ReportData::finding).toList());
    data.put("cures", report.cures().stream().map(ReportData::cure).toList());
    data.put("substitutes", report.substitutes().stream().map(ReportData::substitute).toList());
    data.put("fetch", report.fetch().stream().map(ReportData::fetch).toList());
    return data;
  }

  private static Map<String, Object> fastener(Fastener fastener) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("title", fastener.title());
    data.put("thread", fastener.thread());
    data.put("style", fastener.style());
    fastener.length().ifPresent(length -> data.put("lengthMm", length.millimetres()));
    data.put("material", fastener.material());
    return data;
  }

  private static Map<String, Object> seat(SeatAnswer seat) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("verdict", seat.verdict().word());
    data.put("allowanceMm", seat.allowanceAtIntendedMm());
    data.put("allowanceAtBestMm", seat.allowanceAtBestMm());
    data.put("expectedErrorMm", seat.question().expectedErrorMm());
    data.put("errorMeans", seat.question().errorMeans());
    point(data, "intended", seat.question().seat().intended());
    point(data, "best", seat.best());
    Map<String, Object> governing = new LinkedHashMap<>();
    governing.put(
        "kind", seat.governing().kind().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    governing.put("name", seat.governing().name());
    governing.put("distanceMm", seat.governing().distanceMm());
    governing.put("neededMm", seat.governing().neededMm());
    data.put("governing", governing);
    return data;
  }

  private static void point(Map<String, Object> data, String name, Point point) {
    data.put(name + "XMm", point.xMm());
    data.put(name + "YMm", point.yMm());
  }

  private static Map<String, Object> finding(Finding finding) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("weight", finding.weight().word());
    data.put("rule", finding.rule());
    data.put("sentence", finding.sentence());
    data.put("standing", finding.standing());
    Map<String, Object> figures = new LinkedHashMap<>();
    finding.figures().forEach(figure -> figures.put(figure.name(), figure.value()));
    data.put("figures", figures);
    return data;
  }

  private static Map<String, Object> cure(SeatCure cure) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("kind", cure.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    data.put("sentence", cure.sentence());
    after(data, Optional.of(cure.after()));
    return data;
  }

  private static Map<String, Object> substitute(JointReport.Substitute substitute) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("fastener", fastener(substitute.fastener()));
    data.put("change", substitute.change());
    data.put("present", substitute.present());
    data.put("place", substitute.place());
    after(data, substitute.after());
    return data;
  }

  private static void after(Map<String, Object> data, Optional<SeatAnswer> seat) {
    seat.ifPresent(
        after -> {
          data.put("verdict", after.verdict().word());
          data.put("allowanceMm", after.allowanceAtIntendedMm());
        });
  }

  private static Map<String, Object> fetch(JointReport.Fetch fetch) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("role", fetch.role().words());
    data.put("what", fetch.what());
    data.put("count", fetch.count());
    data.put("state", fetch.state().words());
    data.put("from", fetch.from());
    data.put("figures", fetch.figures());
    return data;
  }

  private static Map<String, Object> shortage(KitReport.Shortage shortage) {
    List<String> joints = shortage.joints();
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("what", shortage.what());
    data.put("role", shortage.role().words());
    data.put("needed", shortage.needed());
    data.put("present", shortage.present());
    data.put("why", shortage.why());
    data.put("joints", joints);
    return data;
  }
}
