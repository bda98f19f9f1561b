package org.fettlebench.command.internal.seat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.command.internal.method.Placings;
import org.fettlebench.fits.Reach;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatAnswer.Governing;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Spanner;
import org.fettlebench.holes.chance.MethodEstimate;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** An answered seat question in words and as data. */
final class SeatTexts {
  private final SeatAnswer answer;
  private final List<SeatCure> cures;
  private final MethodEstimate method;

  /**
   * Takes what is told.
   *
   * @param method how the hole is placed, as known now
   */
  SeatTexts(SeatAnswer answer, List<SeatCure> cures, MethodEstimate method) {
    this.answer = answer;
    this.cures = cures;
    this.method = method;
  }

  String text(List<Reach> rose, LengthUnit unit) {
    SeatQuestion question = answer.question();
    StringBuilder text =
        new StringBuilder(question.seat().name())
            .append(", ")
            .append(question.head().title())
            .append(": ")
            .append(answer.verdict().word())
            .append('\n')
            .append(parts(question, unit))
            .append(figures(unit).text())
            .append("\n  how far the hole may be out: ")
            .append(SeatWords.directions(rose, unit));
    if (!question.head().caveat().isEmpty()) {
      text.append("\n  the head's sizes are less than certain: ").append(question.head().caveat());
    }
    answer
        .cautions()
        .forEach(caution -> text.append("\n  ").append(LengthFormat.turned(caution, unit)));
    if (!cures.isEmpty()) {
      text.append("\nCures, best first");
      for (SeatCure cure : cures) {
        text.append("\n  - ").append(LengthFormat.turned(cure.sentence(), unit));
      }
    }
    return text.toString();
  }

  /** Says what lies under the head and what turns it. */
  private static String parts(SeatQuestion question, LengthUnit unit) {
    StringBuilder text = new StringBuilder();
    question
        .head()
        .washer()
        .ifPresent(
            washer ->
                text.append("  on ")
                    .append(washer.title())
                    .append(", ")
                    .append(Figures.size(washer.diameterMm(), unit))
                    .append(washer.caveat().isEmpty() ? "" : " (" + washer.caveat() + ")")
                    .append('\n'));
    question
        .head()
        .spanner()
        .ifPresent(
            spanner ->
                text.append("  with room for ")
                    .append(spanner.spoken())
                    .append(", head ")
                    .append(Figures.size(spanner.headDiameterMm(), unit))
                    .append("; ")
                    .append(spanner.standing())
                    .append('\n'));
    return text.toString();
  }

  private Columns figures(LengthUnit unit) {
    Governing governing = answer.governing();
    SeatQuestion question = answer.question();
    Columns columns = new Columns().indent(2);
    columns
        .row(
            "allowance at the intended centre",
            Figures.allowance(answer.allowanceAtIntendedMm(), unit))
        .row(
            "error to be expected",
            Figures.allowance(question.expectedErrorMm(), unit) + ", " + question.errorMeans());
    return Placings.spread(columns, method, unit)
        .row(
            "governed by",
            governing.name()
                + ", which the "
                + governing.meets()
                + " would meet: "
                + Figures.size(governing.distanceMm(), unit)
                + " from the centre, "
                + Figures.size(governing.neededMm(), unit)
                + " needed")
        .row("best centre", centre(answer.best(), unit))
        .row("allowance there", Figures.allowance(answer.allowanceAtBestMm(), unit));
  }

  private static String centre(Point point, LengthUnit unit) {
    return "x " + Figures.size(point.xMm(), unit) + ", y " + Figures.size(point.yMm(), unit);
  }

  Map<String, Object> data(List<Reach> rose) {
    SeatQuestion question = answer.question();
    Map<String, Object> data =
        Data.of(
            "seat", question.seat().name(),
            "head", head(question),
            "holeDiameterMm", Data.mm(question.holeDiameterMm()),
            "expectedErrorMm", Data.mm(question.expectedErrorMm()),
            "errorMeans", question.errorMeans(),
            "method", Placings.data(method));
    data.putAll(result(answer));
    data.put(
        "allowanceByDirection",
        rose.stream()
            .map(
                reach ->
                    Data.of(
                        "bearingDegrees",
                        reach.bearingDegrees(),
                        "allowanceMm",
                        maybe(reach.allowanceMm()).map(Data::mm)))
            .toList());
    data.put("allowed", answer.allowed().stream().map(SeatTexts::region).toList());
    data.put("cautions", answer.cautions());
    data.put("cures", cures.stream().map(SeatTexts::cure).toList());
    return data;
  }

  private static Map<String, Object> result(SeatAnswer answer) {
    return Data.of(
        "verdict", answer.verdict().word(),
        "allowanceMm", Data.mm(answer.allowanceAtIntendedMm()),
        "intended", point(answer.question().seat().intended()),
        "best", point(answer.best()),
        "allowanceAtBestMm", Data.mm(answer.allowanceAtBestMm()),
        "spannerFromDegrees", maybe(answer.spannerFromDegrees()),
        "governing", governing(answer.governing()));
  }

  private static Object head(SeatQuestion question) {
    return Data.of(
        "title", question.head().title(),
        "sweepDiameterMm", Data.mm(question.head().sweepDiameterMm()),
        "acrossFlatsMm", maybe(question.head().acrossFlatsMm()).map(Data::mm),
        "heightMm", maybe(question.head().heightMm()).map(Data::mm),
        "washerFaceMm", maybe(question.head().bearingDiameterMm()).map(Data::mm),
        "washer", question.head().washer().map(SeatTexts::washer),
        "spanner", question.head().spanner().map(SeatTexts::spanner),
        "caveat", Data.said(question.head().caveat()));
  }

  private static Object washer(SeatedHead.Washer washer) {
    return Data.of(
        "title", washer.title(),
        "diameterMm", Data.mm(washer.diameterMm()),
        "thicknessMm", Data.mm(washer.thicknessMm()),
        "caveat", Data.said(washer.caveat()));
  }

  private static Object spanner(Spanner spanner) {
    return Data.of(
        "kind", spanner.kind().name().toLowerCase(Locale.ROOT),
        "title", spanner.title(),
        "headDiameterMm", Data.mm(spanner.headDiameterMm()),
        "heightMm", maybe(spanner.heightMm()).map(Data::mm),
        "liftMm", Data.mm(spanner.liftMm()),
        "standing", spanner.standing());
  }

  private static Optional<Double> maybe(OptionalDouble value) {
    return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
  }

  private static Object governing(Governing governing) {
    return Data.of(
        "kind", governing.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '),
        "name", governing.name(),
        "meets", governing.meets(),
        "nearest", point(governing.nearest()),
        "distanceMm", Data.mm(governing.distanceMm()),
        "neededMm", Data.mm(governing.neededMm()));
  }

  private static Object cure(SeatCure cure) {
    Map<String, Object> data =
        Data.of(
            "kind", cure.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '),
            "sentence", cure.sentence());
    data.putAll(result(cure.after()));
    return data;
  }

  private static Object region(SeatAnswer.Region region) {
    return Data.of(
        "shell", region.shell().stream().map(SeatTexts::point).toList(),
        "holes",
            region.holes().stream()
                .map(hole -> hole.stream().map(SeatTexts::point).toList())
                .toList());
  }

  private static Object point(Point point) {
    return Data.of("xMm", Data.mm(point.xMm()), "yMm", Data.mm(point.yMm()));
  }
}
