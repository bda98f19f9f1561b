package org.fettlebench.kits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.fettlebench.kits.KitReport;
import org.fettlebench.measure.LengthUnit;
import org.junit.jupiter.api.Test;

class KitReportsTest {
  private static final String KIT =
      """
      [kit]
      name = "Trial"
      scale = "1:8"
      [[seat]]
      name = "boss"
      outline = [["0 in", "0 in"], ["3/8", "0 in"], ["3/8", "3/8"], ["0 in", "3/8"]]
      centre = ["3/16", "3/16"]
      [[joint]]
      name = "gland"
      part = "barrel"
      count = 2
      fastener = "2 BA hexagon x 1/2 in steel"
      clearance = { fit = "medium", depth = "3 mm" }
      seat = "boss"
      method = "centre-drill-by-eye"
      [[joint]]
      name = "tray"
      count = 1
      fastener = "4 BA hexagon x 3/8 in"
      clearance = { fit = "medium", depth = "1 mm" }
      """;

  private static final String STOCK =
      """
      kind,thread,style,diameter,length,material,place,quantity
      fastener,2 BA,hexagon,,1/2,steel,Drawer 3,9
      drill,,,No 11,,,Stand,1
      """;

  private final KitReportsService reports = new KitReportsService();
  private final KitReport report = Bench.check(KIT, STOCK);

  @Test
  void theSummarySaysWhatMatters() {
    assertEquals(
        "Trial: of 2 joints 1 is tight and 1 has no measured seat. Fasteners: 1 short."
            + " Missing to begin: 4 BA hexagon x 3/8 in and No 27 drill.",
        reports.summary(report));
  }

  @Test
  void theTextBeginsWithTheSummaryAndGoesJointByJoint() {
    String text = reports.text(report, LengthUnit.INCH);
    List<String> lines = text.lines().toList();
    assertEquals(reports.summary(report), lines.get(0));
    assertEquals("Asked: 95 % of holes within their expected error; scale 1:8.", lines.get(1));
    assertTrue(
        lines.contains(
            "gland (barrel): 2 off 2 BA hexagon x 1/2 in, steel: is tight, allowance 0.4 thou"
                + " (0.011 mm), complete"),
        text);
    assertTrue(
        lines.contains("  4 BA hexagon x 3/8 in: 0 of 1 there; not held, to buy or make; for tray"),
        text);
  }

  @Test
  void anotherUnitComesFirstInEverySentenceAndNothingElseChanges() {
    KitReport inches = reports.inUnit(report, LengthUnit.INCH);
    String sentence = inches.joints().get(0).findings().get(0).sentence();
    assertTrue(sentence.contains("out by 0.4 thou (0.011 mm)"), sentence);
    assertEquals(reports.summary(report), reports.summary(inches));
    assertEquals(
        report.joints().get(0).findings().get(0).figures(),
        inches.joints().get(0).findings().get(0).figures());
    assertEquals(report, reports.inUnit(inches, LengthUnit.MILLIMETRE), "there and back");
  }

  @Test
  @SuppressWarnings("unchecked")
  void theDataNamesItsUnits() {
    Map<String, Object> data = reports.data(report);
    Map<String, Object> gland = ((List<Map<String, Object>>) data.get("joints")).get(0);
    assertEquals("tight", gland.get("verdict"));
    assertEquals(0.0112, (double) gland.get("allowanceMm"), 0.0005);
    assertEquals(0.4895, (double) gland.get("expectedErrorMm"), 0.00005);
    assertEquals(true, data.get("wanting"));
    assertEquals(1, ((Map<String, Object>) data.get("counts")).get("tight"));
    everyNumberHasItsUnit("", data);
  }

  private static void everyNumberHasItsUnit(String key, Object value) {
    if (value instanceof Map<?, ?> map) {
      map.forEach((name, each) -> everyNumberHasItsUnit((String) name, each));
    } else if (value instanceof List<?> list) {
      list.forEach(each -> everyNumberHasItsUnit(key, each));
    } else if (value instanceof Double) {
      assertTrue(
          key.endsWith("Mm")
              || key.equals("confidence")
              || key.startsWith("percent")
              || key.endsWith("Percent")
              || key.endsWith("Diameters")
              || key.endsWith("Count"),
          key);
    }
  }
}
