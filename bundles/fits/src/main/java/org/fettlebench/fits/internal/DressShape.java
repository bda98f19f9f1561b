package org.fettlebench.fits.internal;

import java.util.List;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Sketch;
import org.fettlebench.drawing.Tone;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.measure.Point;

/** What goes with a head as seen from above: the washer under it, the room its spanner takes. */
final class DressShape {
  private final SeatedHead head;
  private final Point at;
  private final Tiers tiers;

  DressShape(SeatAnswer answer) {
    this.head = answer.question().head();
    this.at = answer.question().seat().intended();
    this.tiers = Tiers.of(head, Math.toRadians(answer.spannerFromDegrees().orElse(0)));
  }

  /** Returns how far head, washer and spanner reach from the centre. */
  double reachMm() {
    return tiers.all().stream().mapToDouble(tier -> tier.sweep().radiusMm()).max().orElse(0);
  }

  /** Fills in the washer, which lies under the head. */
  void fill(Sketch sketch) {
    head.washer().ifPresent(washer -> sketch.disc(Tone.HEAD, at, washer.diameterMm() / 2));
  }

  /** Draws the washer's edge, and thinly where the spanner goes. */
  void lines(Sketch sketch) {
    head.washer().ifPresent(washer -> sketch.circle(LineKind.OUTLINE, at, washer.diameterMm() / 2));
    if (head.spanner().isPresent() && head.acrossFlatsMm().isPresent()) {
      Sweep sweep = tiers.all().get(tiers.all().size() - 1).sweep();
      if (sweep.round()) {
        sketch.circle(LineKind.THIN, at, sweep.radiusMm());
      } else {
        sketch.path(LineKind.THIN, moved(sweep.corners()), true);
      }
    }
  }

  private List<Point> moved(List<Point> corners) {
    return corners.stream().map(corner -> at.moved(corner.xMm(), corner.yMm())).toList();
  }
}
