package org.fettlebench.holes.internal.correct;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Sketch;
import org.fettlebench.drawing.Tone;
import org.fettlebench.holes.correct.MeasuredHole;
import org.fettlebench.holes.correct.Reading;
import org.fettlebench.holes.internal.Say;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** Draws what was measured: references thick, the hole, a dimension for each reading. */
final class MeasuringPainter {
  private final MeasuredHole hole;
  private final LengthUnit unit;
  private final Sketch sketch = new Sketch();

  MeasuringPainter(MeasuredHole hole, LengthUnit unit) {
    this.hole = hole;
    this.unit = unit;
  }

  Drawing draw() {
    double radius = hole.question().holeDiameterMm() / 2;
    Point centre = hole.centre();
    sketch.disc(Tone.EMPTY, centre, radius);
    sketch.circle(LineKind.OUTLINE, centre, radius);
    sketch.centreLines(centre, radius * 1.3);
    sketch.marker(centre, Item.Mark.SALTIRE);
    sketch.marker(hole.question().near(), Item.Mark.CROSS);
    List<String> named = new ArrayList<>();
    for (Reading reading : hole.question().readings()) {
      Point from = reference(reading.from(), named);
      sketch.dimension(
          from,
          end(reading, from),
          named.size() > 1 ? 6.0 * (named.size() - 1) : 0,
          Say.size(reading.readingMm(), unit) + " " + reading.to().words(),
          false);
    }
    return sketch.drawing(
        "hole measured at x "
            + Say.size(centre.xMm(), unit)
            + ", y "
            + Say.size(centre.yMm(), unit)
            + ", within "
            + Say.figure(hole.withinMm(), unit),
        radius);
  }

  /** Draws what was measured from, once, and returns its point opposite the hole. */
  private Point reference(Reading.Reference from, List<String> named) {
    boolean known = named.contains(from.name());
    named.add(from.name());
    if (from instanceof Reading.Edge edge) {
      if (!known) {
        sketch.line(LineKind.OUTLINE, edge.start(), edge.end());
      }
      double dx = edge.end().xMm() - edge.start().xMm();
      double dy = edge.end().yMm() - edge.start().yMm();
      Point at = hole.centre();
      double share =
          ((at.xMm() - edge.start().xMm()) * dx + (at.yMm() - edge.start().yMm()) * dy)
              / (dx * dx + dy * dy);
      return edge.start().moved(share * dx, share * dy);
    }
    Reading.Spot spot = (Reading.Spot) from;
    if (!known && spot.diameterMm() > 0) {
      sketch.circle(LineKind.OUTLINE, spot.centre(), spot.diameterMm() / 2);
    }
    sketch.marker(spot.centre(), Item.Mark.RING);
    return spot.centre();
  }

  /** Returns the part of the hole that was measured to, on the line from the reference. */
  private Point end(Reading reading, Point from) {
    Point centre = hole.centre();
    double away = from.distanceMm(centre);
    double past =
        switch (reading.to()) {
          case CENTRE -> 0;
          case NEAR_RIM -> -hole.question().holeDiameterMm() / 2;
          case FAR_RIM -> hole.question().holeDiameterMm() / 2;
          case OVER_PIN -> hole.question().pinDiameterMm().orElseThrow() / 2;
          case TO_PIN -> -hole.question().pinDiameterMm().orElseThrow() / 2;
        };
    if (!(away > 0)) {
      return centre;
    }
    double share = past / away;
    return centre.moved((centre.xMm() - from.xMm()) * share, (centre.yMm() - from.yMm()) * share);
  }
}
