package org.fettlebench.holes.internal.correct;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Sketch;
import org.fettlebench.drawing.Tone;
import org.fettlebench.holes.correct.CorrectionAnswer;
import org.fettlebench.holes.correct.CorrectionAnswer.Filing;
import org.fettlebench.holes.correct.CorrectionQuestion;
import org.fettlebench.holes.correct.Direction;
import org.fettlebench.holes.internal.Say;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** Draws the hole alone: as found, the crescent to file with its figure, the finished hole. */
final class HolePicture {
  private static final int HATCHES = 12;

  private final CorrectionAnswer answer;
  private final LengthUnit unit;
  private final Sketch sketch = new Sketch();
  private final Point target;
  private final Point found;
  private final double drilledRadius;
  private final double finishRadius;

  HolePicture(CorrectionAnswer answer, LengthUnit unit) {
    this.answer = answer;
    this.unit = unit;
    CorrectionQuestion question = answer.question();
    this.target = question.target();
    this.found = question.found().centre();
    this.drilledRadius = question.found().diameterMm() / 2;
    this.finishRadius = question.finishDiameterMm() / 2;
  }

  Drawing draw() {
    double reach = Math.max(finishRadius, drilledRadius + answer.errorMm());
    sketch.disc(Tone.PART, target, 1.25 * reach);
    sketch.disc(Tone.EMPTY, found, drilledRadius);
    answer.filing().filter(filing -> answer.errorMm() > 0).ifPresent(this::hatch);
    sketch.circle(LineKind.OUTLINE, found, drilledRadius);
    sketch.circle(LineKind.HIDDEN, target, finishRadius);
    sketch.centreLines(target, 1.15 * reach);
    answer.filing().ifPresentOrElse(this::crescent, this::error);
    sketch.marker(target, Item.Mark.CROSS);
    sketch.marker(found, Item.Mark.SALTIRE);
    sizes(reach);
    return sketch.drawing(title(), 0.02 * reach);
  }

  private String title() {
    return answer
        .filing()
        .map(
            filing ->
                "the hole: file "
                    + Say.figure(filing.deepestMm(), unit)
                    + " off the side towards "
                    + filing.towards())
        .orElse(
            answer.error().isEmpty()
                ? "the hole: on target"
                : "the hole, out by " + Say.figure(answer.errorMm(), unit));
  }

  /** The filed outline about the target, thick where metal comes off, with its figure. */
  private void crescent(Filing filing) {
    double filed = filing.filedDiameterMm() / 2;
    double towards = filing.towards().degrees();
    sketch.path(LineKind.GOVERNING, Sketch.arc(target, filed, towards - 150, towards + 150), false);
    Direction way = filing.towards();
    Point rim = found.moved(drilledRadius * way.dx(), drilledRadius * way.dy());
    Point deep = target.moved(filed * way.dx(), filed * way.dy());
    sketch.dimension(deep, rim, 0, "file " + Say.figure(filing.deepestMm(), unit), true);
  }

  private void error() {
    if (answer.errorMm() > 0) {
      sketch.dimension(target, found, 0, "out " + Say.figure(answer.errorMm(), unit), true);
    }
  }

  /** Hatches the metal to come off, at 45 degrees, between the filed circle and the hole. */
  private void hatch(Filing filing) {
    double filed = filing.filedDiameterMm() / 2;
    for (int i = -HATCHES; i <= HATCHES; i++) {
      double offset = filed * i / HATCHES;
      Optional<double[]> outer = chord(target, filed, offset);
      if (outer.isEmpty()) {
        continue;
      }
      List<Double> ends = new ArrayList<>(List.of(outer.get()[0], outer.get()[1]));
      chord(found, drilledRadius, offset)
          .ifPresent(
              inner -> {
                ends.add(inner[0]);
                ends.add(inner[1]);
              });
      Collections.sort(ends);
      for (int j = 0; j + 1 < ends.size(); j += 2) {
        sketch.line(LineKind.HATCH, on(offset, ends.get(j)), on(offset, ends.get(j + 1)));
      }
    }
  }

  /** Returns where a line at 45 degrees, so far from the target, crosses a circle. */
  private Optional<double[]> chord(Point centre, double radius, double offset) {
    double dx = centre.xMm() - target.xMm();
    double dy = centre.yMm() - target.yMm();
    double across = (dy - dx) / Math.sqrt(2);
    double along = (dx + dy) / Math.sqrt(2);
    double half = radius * radius - (offset - across) * (offset - across);
    if (!(half > 0)) {
      return Optional.empty();
    }
    double reach = Math.sqrt(half);
    return Optional.of(new double[] {along - reach, along + reach});
  }

  private Point on(double offset, double along) {
    double share = 1 / Math.sqrt(2);
    return target.moved((along - offset) * share, (along + offset) * share);
  }

  /** The finished size stands below, the filed one above, clear of the hole. */
  private void sizes(double reach) {
    across(finishRadius, -1.25 * reach, "finished ");
    answer
        .filing()
        .ifPresent(filing -> across(filing.filedDiameterMm() / 2, 1.25 * reach, "filed "));
  }

  private void across(double radius, double level, String what) {
    Point left = target.moved(-radius, level);
    Point right = target.moved(radius, level);
    sketch.line(LineKind.THIN, target.moved(-radius, 0), left);
    sketch.line(LineKind.THIN, target.moved(radius, 0), right);
    sketch.dimension(left, right, 0, what + Say.size(2 * radius, unit), false);
  }
}
