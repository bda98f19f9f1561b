package org.fettlebench.holes.internal.otherface;

import java.util.List;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Sketch;
import org.fettlebench.drawing.Tone;
import org.fettlebench.fits.Outline;
import org.fettlebench.holes.internal.Say;
import org.fettlebench.holes.otherface.FaceMark;
import org.fettlebench.holes.otherface.FaceMark.EdgeDistance;
import org.fettlebench.holes.otherface.MarkQuestion;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** Draws both faces, each as the person sees it. */
final class FarFacePicture {
  private final FaceMark mark;
  private final LengthUnit unit;
  private final Sketch sketch = new Sketch();
  private final double size;

  private FarFacePicture(FaceMark mark, LengthUnit unit) {
    this.mark = mark;
    this.unit = unit;
    this.size =
        mark.face().stream().mapToDouble(corner -> corner.distanceMm(mark.mark())).max().orElse(1);
  }

  static Drawing far(FaceMark mark, LengthUnit unit) {
    FarFacePicture picture = new FarFacePicture(mark, unit);
    return picture.draw();
  }

  static Drawing above(FaceMark mark, LengthUnit unit) {
    FarFacePicture picture = new FarFacePicture(mark, unit);
    return picture.drawAbove();
  }

  private Drawing draw() {
    MarkQuestion question = mark.question();
    face(
        FaceMarker.seen(question.turn(), question.faces().far()),
        FaceMarker.seen(question.turn(), question.faces().upper()));
    hole(mark.mark());
    mark.pair().forEach(this::distance);
    return sketch.drawing(
        "far face with that face towards you, "
            + mark.question().turn().words()
            + ": mark "
            + String.join(
                " and ",
                mark.pair().stream()
                    .map(d -> Say.size(d.distanceMm(), unit) + " from the " + d.name())
                    .toList()),
        0.03 * size);
  }

  private Drawing drawAbove() {
    face(mark.question().faces().upper(), mark.question().faces().far());
    hole(mark.question().target());
    return sketch.drawing("upper face before the part is turned", 0.03 * size);
  }

  private void face(Outline front, Outline behind) {
    sketch.area(Tone.PART, front.points());
    sketch.path(LineKind.HIDDEN, behind.points(), true);
    sketch.path(LineKind.OUTLINE, front.points(), true);
    double least = front.points().stream().mapToDouble(Point::xMm).min().orElse(0);
    double most = front.points().stream().mapToDouble(Point::xMm).max().orElse(0);
    int number = 1;
    for (Outline.Corner corner : front.corners()) {
      Item.Side side = corner.at().xMm() < (least + most) / 2 ? Item.Side.LEFT : Item.Side.RIGHT;
      sketch.label(corner.at(), Integer.toString(number++), side, false);
    }
  }

  private void hole(Point at) {
    double radius = mark.question().hole().diameterMm() / 2;
    sketch.circle(LineKind.THIN, at, radius);
    sketch.centreLines(at, 1.4 * radius);
    sketch.marker(at, Item.Mark.CROSS);
  }

  /** The distance stands square to its edge, which is drawn heavier, with a square at the foot. */
  private void distance(EdgeDistance distance) {
    sketch.line(LineKind.GOVERNING, distance.start(), distance.end());
    double length = distance.start().distanceMm(distance.end());
    double ux = (distance.end().xMm() - distance.start().xMm()) / length;
    double uy = (distance.end().yMm() - distance.start().yMm()) / length;
    double nx = (mark.mark().xMm() - distance.foot().xMm()) / distance.distanceMm();
    double ny = (mark.mark().yMm() - distance.foot().yMm()) / distance.distanceMm();
    double s = 0.04 * size;
    Point foot = distance.foot();
    sketch.path(
        LineKind.THIN,
        List.of(
            foot.moved(s * ux, s * uy),
            foot.moved(s * (ux + nx), s * (uy + ny)),
            foot.moved(s * nx, s * ny)),
        false);
    sketch.dimension(foot, mark.mark(), 0, Say.size(distance.distanceMm(), unit), true);
  }
}
