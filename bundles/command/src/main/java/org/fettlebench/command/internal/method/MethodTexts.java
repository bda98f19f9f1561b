package org.fettlebench.command.internal.method;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.command.internal.Footnotes;
import org.fettlebench.fits.ErrorLaw;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.PositionLaw;
import org.fettlebench.holes.chance.MethodEstimate;
import org.fettlebench.kits.ClubMethods;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;

/** Methods, their laws and estimates in words and as data. */
final class MethodTexts {
  /** The usual 19 holes in 20. */
  static final double SHOWN_CONFIDENCE = 0.95;

  private MethodTexts() {}

  static String table(List<MethodEstimate> estimates, ClubMethods.Asked asked, LengthUnit unit) {
    String symbol = unit.symbol();
    Footnotes notes = new Footnotes();
    Columns columns =
        new Columns()
            .right(1, 3, 4)
            .row(
                "method",
                "sigma " + symbol,
                "interval " + symbol,
                "95 % within " + symbol,
                "holes",
                "from");
    for (MethodEstimate each : estimates) {
      columns.row(
          each.before().id(),
          sigma(each, unit),
          each.holes() == 0 ? "-" : interval(each, unit),
          fine(each.now().errorRadiusMm(SHOWN_CONFIDENCE), unit),
          each.holes(),
          Figures.source(each.now().source()) + " " + notes.mark(each.before().title()));
    }
    return columns.text()
        + notes.text()
        + "\nsigma: standard deviation of the error along x and along y; within: radius of position"
        + " error, not a diameter."
        + told(estimates, asked, unit);
  }

  private static String told(
      List<MethodEstimate> estimates, ClubMethods.Asked asked, LengthUnit unit) {
    StringBuilder told = new StringBuilder();
    if (estimates.stream().anyMatch(each -> each.holes() > 0)) {
      told.append("\ninterval: sigma lies there with a chance of 95 %. ").append(prior(asked));
    }
    estimates.stream()
        .filter(each -> each.holes() > 0)
        .forEach(
            each ->
                each.offset()
                    .ifPresent(
                        offset ->
                            told.append("\n")
                                .append(each.before().id())
                                .append(": ")
                                .append(offset(offset, unit))));
    return told.toString();
  }

  /** Says how much what was known before counts. */
  static String prior(ClubMethods.Asked asked) {
    boolean some = asked.member().isPresent() || asked.machine().isPresent();
    return "What was known before ("
        + (some ? "what the others measured, else the table's figure" : "the table's figure")
        + ") counts as "
        + Data.rounded(asked.priorHoles(), 3).toPlainString()
        + " holes.";
  }

  static String offset(MethodEstimate.Offset offset, LengthUnit unit) {
    return "its holes lie off by x "
        + Figures.allowance(offset.xMm(), unit)
        + ", y "
        + Figures.allowance(offset.yMm(), unit)
        + " on the whole (by luck in "
        + luck(offset.luck())
        + " of cases): aim that much the other way, or find out why. sigma is about that offset.";
  }

  private static String luck(double share) {
    return share < 0.0005 ? "under 0.1 %" : String.format(Locale.ROOT, "%.1f %%", 100 * share);
  }

  static String sigma(MethodEstimate each, LengthUnit unit) {
    return both(fine(each.x().sigmaMm(), unit), fine(each.y().sigmaMm(), unit));
  }

  static String interval(MethodEstimate each, LengthUnit unit) {
    return both(
        fine(each.x().lowMm(), unit) + " to " + fine(each.x().highMm(), unit),
        fine(each.y().lowMm(), unit) + " to " + fine(each.y().highMm(), unit));
  }

  private static String both(String x, String y) {
    return x.equals(y) ? x : x + " x " + y;
  }

  static String fine(double millimetres, LengthUnit unit) {
    return Figures.fine(Length.ofMillimetres(millimetres), unit);
  }

  /** Returns a law in words, such as {@code bounded, 0.030 x 0.060 mm either way}. */
  static String law(ErrorLaw law, LengthUnit unit) {
    String symbol = " " + unit.symbol();
    if (law instanceof ErrorLaw.Normal normal) {
      return "normal, sigma "
          + both(fine(normal.sigmaXMm(), unit), fine(normal.sigmaYMm(), unit))
          + symbol;
    }
    if (law instanceof ErrorLaw.Bounded bounded) {
      return "bounded, "
          + both(fine(bounded.halfXMm(), unit), fine(bounded.halfYMm(), unit))
          + symbol
          + " either way";
    }
    return "anywhere in a circle of radius "
        + fine(((ErrorLaw.Circle) law).radiusMm(), unit)
        + symbol;
  }

  static Map<String, Object> data(MethodEstimate each) {
    Map<String, Object> data =
        Data.of(
            "id", each.before().id(),
            "title", each.before().title(),
            "steps", each.before().steps(),
            "before", methodData(each.before()),
            "now", methodData(each.now()),
            "measuredHoleCount", each.holes(),
            "priorHoleCount", Data.rounded(each.priorHoles(), 3),
            "axesTogether", each.together(),
            "sigmaX", spread(each.x()),
            "sigmaY", spread(each.y()));
    each.offset()
        .ifPresent(
            offset ->
                data.put(
                    "offset",
                    Data.of(
                        "xMm", Data.mm(offset.xMm()),
                        "yMm", Data.mm(offset.yMm()),
                        "luckPercent", Data.rounded(100 * offset.luck(), 4))));
    return data;
  }

  private static Object spread(MethodEstimate.Spread spread) {
    return Data.of(
        "sigmaMm", Data.mm(spread.sigmaMm()),
        "lowMm", Data.mm(spread.lowMm()),
        "highMm", Data.mm(spread.highMm()),
        "crediblePercent", Data.rounded(100 * MethodEstimate.CREDIBILITY, 3));
  }

  private static Object methodData(HoleMethod method) {
    return Data.of(
        "sigmaPerAxisMm", Data.mm(method.sigmaPerAxisMm()),
        "errorRadiusMm", Data.mm(method.errorRadiusMm(SHOWN_CONFIDENCE)),
        "withinErrorRadiusPercent", Data.rounded(100 * SHOWN_CONFIDENCE, 3),
        "offsetXMm", Data.mm(method.law().offsetXMm()),
        "offsetYMm", Data.mm(method.law().offsetYMm()),
        "laws", method.law().parts().stream().map(MethodTexts::part).collect(Collectors.toList()),
        "source", Figures.sourceData(method.source()));
  }

  private static Object part(PositionLaw.Part part) {
    Map<String, Object> data = Data.of("step", part.cause());
    if (part.law() instanceof ErrorLaw.Normal normal) {
      data.put("law", "normal");
      data.put("sigmaXMm", Data.mm(normal.sigmaXMm()));
      data.put("sigmaYMm", Data.mm(normal.sigmaYMm()));
    } else if (part.law() instanceof ErrorLaw.Bounded bounded) {
      data.put("law", "bounded");
      data.put("halfXMm", Data.mm(bounded.halfXMm()));
      data.put("halfYMm", Data.mm(bounded.halfYMm()));
    } else if (part.law() instanceof ErrorLaw.Circle circle) {
      data.put("law", "circle");
      data.put("radiusMm", Data.mm(circle.radiusMm()));
    }
    data.put("source", Figures.sourceData(part.source()));
    return data;
  }
}
