package org.fettlebench.holes.internal.patterns;

import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Sketch;
import org.fettlebench.drawing.Tone;
import org.fettlebench.holes.patterns.MeasuredPattern.Hole;
import org.fettlebench.holes.patterns.PatternDrawings;
import org.fettlebench.holes.patterns.PatternFit;
import org.fettlebench.holes.patterns.PatternFit.Cure;
import org.fettlebench.holes.patterns.PatternFit.HoleFit;
import org.fettlebench.holes.patterns.PatternFit.Opening;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.osgi.service.component.annotations.Component;

/** Draws measured patterns as put together: upper holes in full line, lower ones hidden. */
@Component
public final class PatternPainter implements PatternDrawings {
  @Override
  public Drawing draw(PatternFit fit, LengthUnit unit) {
    return new Work(fit, unit).draw();
  }

  /** One drawing in the making. */
  private static final class Work {
    private final PatternFit fit;
    private final LengthUnit unit;
    private final Sketch sketch = new Sketch();

    Work(PatternFit fit, LengthUnit unit) {
      this.fit = fit;
      this.unit = unit;
    }

    Drawing draw() {
      fit.cures().stream().findFirst().ifPresent(this::file);
      fit.holes().forEach(this::pair);
      return sketch.drawing(title(), fit.question().fastenerMm());
    }

    private String title() {
      return fit.question().name()
          + ": "
          + (fit.goes() ? "goes together, " : "does not go together, ")
          + said(Math.abs(fit.roomMm()))
          + (fit.goes() ? " to spare at the worst hole" : " lacking at the worst hole");
    }

    private void pair(HoleFit hole) {
      double upper = radius(fit.question().upper().holes().get(hole.upperNumber() - 1));
      double lower = radius(fit.question().lower().holes().get(hole.lowerNumber() - 1));
      LineKind line = hole.governs() ? LineKind.GOVERNING : LineKind.OUTLINE;
      sketch.circle(line, hole.upper(), upper);
      sketch.circle(LineKind.HIDDEN, hole.lower(), lower);
      sketch.marker(hole.upper(), Item.Mark.CROSS);
      sketch.marker(hole.lower(), Item.Mark.SALTIRE);
      sketch.label(
          hole.upper().moved(0, Math.max(upper, lower)),
          number(hole) + ": " + said(hole.roomMm()),
          Item.Side.ABOVE,
          hole.governs());
    }

    private static String number(HoleFit hole) {
      return hole.upperNumber() == hole.lowerNumber()
          ? String.valueOf(hole.upperNumber())
          : hole.upperNumber() + " on " + hole.lowerNumber();
    }

    /** What is to be filed of the upper part, as a crescent; the lower part is told in words. */
    private void file(Cure cure) {
      if (cure.every() || !cure.part().equals(fit.question().upper().name())) {
        return;
      }
      for (Opening opening : cure.openings()) {
        Point centre = fit.question().upper().holes().get(opening.number() - 1).centre();
        double radius = opening.fromMm() / 2;
        sketch.area(
            Tone.ALLOWED,
            Crescent.outline(centre, radius, opening.fileMm(), opening.fileDegrees()));
        sketch.label(
            centre.moved(0, -radius - opening.fileMm()),
            "file " + said(opening.fileMm()),
            Item.Side.BELOW,
            true);
      }
    }

    private double radius(Hole hole) {
      return hole.clearanceMm().orElse(fit.question().fastenerMm()) / 2;
    }

    private String said(double millimetres) {
      return LengthFormat.allowance(Length.ofMillimetres(millimetres), unit);
    }
  }
}
