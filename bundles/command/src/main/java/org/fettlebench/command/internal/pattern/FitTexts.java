package org.fettlebench.command.internal.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.fettlebench.command.internal.Cautions;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.holes.patterns.PatternFit;
import org.fettlebench.holes.patterns.PatternFit.Cure;
import org.fettlebench.holes.patterns.PatternFit.HoleFit;
import org.fettlebench.holes.patterns.PatternFit.Movement;
import org.fettlebench.holes.patterns.PatternFit.Opening;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** How measured holes go together, in words and as data. */
final class FitTexts {
  private FitTexts() {}

  static String text(PatternFit fit, LengthUnit unit) {
    List<String> text = new ArrayList<>();
    text.add(
        fit.question().name()
            + ": "
            + (fit.goes() ? "goes together" : "does not go together")
            + ", "
            + Figures.allowance(Math.abs(fit.roomMm()), unit)
            + (fit.goes() ? " to spare" : " lacking")
            + " at the worst hole (radius)");
    text.add("  move " + fit.question().lower().name() + " " + said(fit.movement(), unit));
    text.add(holes(fit, unit).text());
    if (fit.mirroredGoes()) {
      text.add(
          "It would go if one part had been read from its other side: check seen-from before"
              + " cutting metal.");
    }
    if (!fit.cures().isEmpty()) {
      text.add("Any one of these makes it go, least work first:");
    }
    for (Cure cure : fit.cures()) {
      text.add("  - " + said(cure, unit));
    }
    if (!fit.cures().isEmpty()) {
      text.add(
          "Directions are anticlockwise from x as seen from above, each part as it was measured;"
              + " looking at it from below, take 180 degrees less the figure.");
      text.add(Cautions.DRILLING);
    }
    return String.join("\n", text);
  }

  private static Columns holes(PatternFit fit, LengthUnit unit) {
    Columns columns =
        new Columns().indent(2).row("hole", "centres apart (radius)", "play", "room", "");
    for (HoleFit hole : fit.holes()) {
      columns.row(
          hole.upperNumber() == hole.lowerNumber()
              ? String.valueOf(hole.upperNumber())
              : hole.upperNumber() + " on " + hole.lowerNumber(),
          Figures.allowance(hole.apartMm(), unit),
          Figures.allowance(hole.playMm(), unit),
          Figures.allowance(hole.roomMm(), unit),
          hole.governs() ? "governs" : "");
    }
    return columns;
  }

  private static String said(Movement movement, LengthUnit unit) {
    return (movement.holesOn() == 0
            ? ""
            : "so that its hole " + (movement.holesOn() + 1) + " lies at hole 1, then ")
        + "by x "
        + Figures.allowance(movement.shiftXMm(), unit)
        + ", y "
        + Figures.allowance(movement.shiftYMm(), unit)
        + " and turn it "
        + String.format(Locale.ROOT, "%.3f", Math.abs(movement.turnDegrees()))
        + " degrees "
        + (movement.turnDegrees() < 0 ? "clockwise" : "anticlockwise")
        + " about the middle of its holes";
  }

  private static String said(Cure cure, LengthUnit unit) {
    Opening first = cure.openings().get(0);
    if (cure.every()) {
      return "open every hole of "
          + cure.part()
          + " by "
          + Figures.allowance(first.openToMm() - first.fromMm(), unit)
          + " on the diameter (the first to "
          + Figures.size(first.openToMm(), unit)
          + ")";
    }
    List<String> each = new ArrayList<>();
    for (Opening opening : cure.openings()) {
      each.add(
          "in "
              + cure.part()
              + " open hole "
              + opening.number()
              + " to "
              + Figures.size(opening.openToMm(), unit)
              + ", or file it "
              + Figures.allowance(opening.fileMm(), unit)
              + " towards "
              + String.format(Locale.ROOT, "%.0f", opening.fileDegrees())
              + " degrees");
    }
    return String.join("; ", each);
  }

  static Map<String, Object> data(PatternFit fit) {
    return Data.of(
        "pattern", fit.question().name(),
        "goesTogether", fit.goes(),
        "roomRadiusMm", Data.mm(fit.roomMm()),
        "fastenerDiameterMm", Data.mm(fit.question().fastenerMm()),
        "moved", fit.question().lower().name(),
        "movement", data(fit.movement()),
        "holes", fit.holes().stream().map(FitTexts::data).toList(),
        "cures", fit.cures().stream().map(FitTexts::data).toList(),
        "wouldGoMirrored", fit.mirroredGoes());
  }

  private static Object data(Movement movement) {
    return Data.of(
        "about", data(movement.about()),
        "turnDegrees", Data.rounded(movement.turnDegrees(), 6),
        "shiftXMm", Data.mm(movement.shiftXMm()),
        "shiftYMm", Data.mm(movement.shiftYMm()),
        "holesOn", movement.holesOn());
  }

  private static Object data(Point point) {
    return Data.of("xMm", Data.mm(point.xMm()), "yMm", Data.mm(point.yMm()));
  }

  private static Object data(HoleFit hole) {
    return Data.of(
        "upperNumber", hole.upperNumber(),
        "lowerNumber", hole.lowerNumber(),
        "apartRadiusMm", Data.mm(hole.apartMm()),
        "playRadiusMm", Data.mm(hole.playMm()),
        "roomRadiusMm", Data.mm(hole.roomMm()),
        "governs", hole.governs());
  }

  private static Object data(Cure cure) {
    return Data.of(
        "part", cure.part(),
        "every", cure.every(),
        "openings", cure.openings().stream().map(FitTexts::data).toList(),
        "movement", data(cure.movement()));
  }

  private static Object data(Opening opening) {
    return Data.of(
        "hole", opening.number(),
        "fromDiameterMm", Data.mm(opening.fromMm()),
        "openToDiameterMm", Data.mm(opening.openToMm()),
        "fileMm", Data.mm(opening.fileMm()),
        "fileDegrees", Data.rounded(opening.fileDegrees(), 3));
  }
}
