package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.fits.SeatDrawings;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** Draws a sketch: as answered, or as far as it goes. */
final class SeatPicture {
  private final SeatBook book;
  private final SeatDrawings drawings;

  SeatPicture(SeatBook book, SeatDrawings drawings) {
    this.book = book;
    this.drawings = drawings;
  }

  /** Returns the drawing; empty while there is nothing to draw. */
  Optional<Drawing> draw(Sketch sketch, Reply reply, LengthUnit unit, boolean spokes) {
    Optional<Drawing> bare =
        reply.answer().isPresent()
            ? reply
                .answer()
                .map(answer -> drawings.draw(answer, spokes ? book.rose(answer) : List.of(), unit))
            : bare(sketch);
    return bare.map(drawing -> withFound(drawing, sketch.hole().found()));
  }

  /** Draws the outline and what stands on it, while nothing can be said of it yet. */
  private static Optional<Drawing> bare(Sketch sketch) {
    Shape shape = sketch.shape();
    if (!shape.drawable()) {
      return Optional.empty();
    }
    List<Item> items = new ArrayList<>();
    items.add(new Item.Area(Tone.PART, shape.corners(), List.of()));
    shape.cavities().forEach(hollow -> items.add(new Item.Path(LineKind.HIDDEN, hollow, true)));
    shape.underside().ifPresent(under -> items.add(new Item.Path(LineKind.HIDDEN, under, true)));
    items.add(new Item.Path(LineKind.OUTLINE, shape.corners(), true));
    shape
        .walls()
        .forEach(
            wall ->
                items.add(
                    new Item.Path(LineKind.GOVERNING, List.of(wall.from(), wall.to()), false)));
    shape
        .neighbours()
        .forEach(
            head -> items.add(new Item.Circle(LineKind.OUTLINE, head.centre(), head.radiusMm())));
    sketch.centre().ifPresent(at -> items.add(new Item.Marker(at, Item.Mark.CROSS)));
    return Optional.of(new Drawing(sketch.name() + ": outline as measured", items, frame(sketch)));
  }

  private static Drawing.Frame frame(Sketch sketch) {
    double[] box = sketch.shape().box();
    for (Handles.Placed each : Handles.of(sketch)) {
      box[0] = Math.min(box[0], each.at().xMm());
      box[1] = Math.min(box[1], each.at().yMm());
      box[2] = Math.max(box[2], each.at().xMm());
      box[3] = Math.max(box[3], each.at().yMm());
    }
    double margin = 0.03 * Math.max(box[2] - box[0], box[3] - box[1]) + 0.01;
    return new Drawing.Frame(box[0] - margin, box[1] - margin, box[2] + margin, box[3] + margin);
  }

  private static Drawing withFound(Drawing drawing, Optional<SeatFile.Drilled> found) {
    if (found.isEmpty()) {
      return drawing;
    }
    SeatFile.Drilled hole = found.get();
    List<Item> items = new ArrayList<>(drawing.items());
    double radius = hole.diameterMm() / 2;
    items.add(new Item.Circle(LineKind.OUTLINE, hole.centre(), radius));
    items.add(new Item.Marker(hole.centre(), Item.Mark.SALTIRE));
    items.add(
        new Item.Label(
            hole.centre().moved(0, -radius), "hole as measured", Item.Side.BELOW, false));
    return new Drawing(drawing.title(), items, around(drawing.frame(), hole.centre(), radius));
  }

  private static Drawing.Frame around(Drawing.Frame frame, Point centre, double radius) {
    return new Drawing.Frame(
        Math.min(frame.minXMm(), centre.xMm() - radius),
        Math.min(frame.minYMm(), centre.yMm() - radius),
        Math.max(frame.maxXMm(), centre.xMm() + radius),
        Math.max(frame.maxYMm(), centre.yMm() + radius));
  }
}
