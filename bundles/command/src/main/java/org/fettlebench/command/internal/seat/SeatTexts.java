package org.fettlebench.command.internal.seat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatAnswer.Governing;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** An answered seat question in words and as data. */
final class SeatTexts {
  private SeatTexts() {}

  static String text(SeatAnswer answer, List<SeatCure> cures, LengthUnit unit) {
    SeatQuestion question = answer.question();
    StringBuilder text =
        new StringBuilder(question.seat().name())
            .append(", ")
            .append(question.head().title())
            .append(": ")
            .append(answer.verdict().word())
            .append('\n')
            .append(figures(answer, unit).text());
    if (!question.head().caveat().isEmpty()) {
      text.append("\n  the head's sizes are less than certain: ").append(question.head().caveat());
    }
    if (!cures.isEmpty()) {
      text.append("\nCures, best first");
      for (SeatCure cure : cures) {
        text.append("\n  - ").append(cure.sentence());
      }
    }
    return text.toString();
  }

  private static Columns figures(SeatAnswer answer, LengthUnit unit) {
    Governing governing = answer.governing();
    SeatQuestion question = answer.question();
    return new Columns()
        .indent(2)
        .row(
            "allowance at the intended centre",
            Figures.allowance(answer.allowanceAtIntendedMm(), unit))
        .row(
            "error to be expected",
            Figures.allowance(question.expectedErrorMm(), unit) + ", " + question.errorMeans())
        .row(
            "governed by",
            governing.name()
                + ": "
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

  static Map<String, Object> data(SeatAnswer answer, List<SeatCure> cures) {
    SeatQuestion question = answer.question();
    Map<String, Object> data =
        Data.of(
            "seat", question.seat().name(),
            "head", head(question),
            "holeDiameterMm", Data.mm(question.holeDiameterMm()),
            "expectedErrorMm", Data.mm(question.expectedErrorMm()),
            "errorMeans", question.errorMeans());
    data.putAll(result(answer));
    data.put("allowed", answer.allowed().stream().map(SeatTexts::region).toList());
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
        "governing", governing(answer.governing()));
  }

  private static Object head(SeatQuestion question) {
    return Data.of(
        "title", question.head().title(),
        "sweepDiameterMm", Data.mm(question.head().sweepDiameterMm()),
        "acrossFlatsMm", maybe(question.head().acrossFlatsMm()).map(Data::mm),
        "heightMm", maybe(question.head().heightMm()).map(Data::mm),
        "caveat", Data.said(question.head().caveat()));
  }

  private static Optional<Double> maybe(OptionalDouble value) {
    return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
  }

  private static Object governing(Governing governing) {
    return Data.of(
        "kind", governing.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '),
        "name", governing.name(),
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
