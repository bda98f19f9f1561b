package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.SvgWriter;
import org.fettlebench.drawing.Tone;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Spanner;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;

class SeatPainterTest {
  private final SeatAnswer answer =
      new SeatChecker()
          .check(
              Bench.ask(
                  Bench.with(
                      Bench.seat(Bench.rectangle(20, 12), new Point(8, 6)),
                      new Seat.Wall("barrel", new Point(0, 12), new Point(20, 12), 9, 1.5)),
                  Bench.hexagon(7)));

  @Test
  void theGoverningFeatureIsThickAndCarriesItsFigure() {
    Drawing drawing = new SeatPainter().draw(answer, LengthUnit.MILLIMETRE);

    List<Item.Path> thick =
        drawing.items().stream()
            .filter(Item.Path.class::isInstance)
            .map(Item.Path.class::cast)
            .filter(path -> path.line() == LineKind.GOVERNING)
            .toList();
    assertEquals(1, thick.size());
    assertEquals(List.of(new Point(0, 12), new Point(20, 12)), thick.get(0).points());
    assertTrue(words(drawing).contains("barrel: 0.46 mm to spare"), words(drawing).toString());
    assertTrue(words(drawing).contains("6.00 mm"), words(drawing).toString());
    assertTrue(words(drawing).contains("20.00 mm"), words(drawing).toString());
  }

  @Test
  void inchesWhenAsked() {
    List<String> words = words(new SeatPainter().draw(answer, LengthUnit.INCH));

    assertTrue(words.contains("0.787 in"), words.toString());
    assertTrue(words.contains("barrel: 0.018 in to spare"), words.toString());
  }

  @Test
  void allowedCentresAreTonedAndEverythingLiesInTheFrame() {
    Drawing drawing = new SeatPainter().draw(answer, LengthUnit.MILLIMETRE);
    Drawing.Frame frame = drawing.frame();

    assertTrue(
        drawing.items().stream()
            .anyMatch(item -> item instanceof Item.Area area && area.tone() == Tone.ALLOWED));
    for (Item item : drawing.items()) {
      if (item instanceof Item.Path path) {
        for (Point point : path.points()) {
          assertTrue(point.xMm() > frame.minXMm() && point.xMm() < frame.maxXMm());
          assertTrue(point.yMm() > frame.minYMm() && point.yMm() < frame.maxYMm());
        }
      }
    }
    assertTrue(SvgWriter.write(drawing, 120, 90).contains("barrel: 0.46 mm to spare"));
  }

  @Test
  void aFoulIsNamedBesideItsEdgeWhereNoSizeStands() {
    SeatAnswer fouls =
        new SeatChecker()
            .check(
                Bench.ask(
                    Bench.with(
                        Bench.seat(Bench.rectangle(9.2, 9.6), new Point(4.6, 3.4)),
                        new Seat.Wall("pipe", new Point(0, 9.6), new Point(9.2, 9.6), 9, 1)),
                    Bench.hexagon(7)));
    Drawing drawing = new SeatPainter().draw(fouls, LengthUnit.MILLIMETRE);

    Item.Label figure = label(drawing, "fouls by ");
    Item.Label best = label(drawing, "best centre");
    assertEquals(figure.side(), best.side());
    boolean right = figure.side() == Item.Side.RIGHT;
    double edge = right ? 9.2 : 0;
    assertTrue(right ? best.at().xMm() > edge : best.at().xMm() < edge, best.toString());
    assertTrue(Math.abs(figure.at().yMm() - best.at().yMm()) > 2, figure + " " + best);
    List<Item.Dimension> sizes =
        drawing.items().stream()
            .filter(Item.Dimension.class::isInstance)
            .map(Item.Dimension.class::cast)
            .toList();
    for (Item.Dimension size : sizes) {
      boolean upright = Math.abs(size.from().xMm() - size.to().xMm()) < 0.1;
      boolean otherSide = right ? size.from().xMm() < 4.6 : size.from().xMm() > 4.6;
      assertTrue(!upright || otherSide, size.toString());
    }
    // The height stands farther off, on paper, than the figure of the edge beside it.
    double[] off =
        sizes.stream()
            .filter(size -> Math.abs(size.from().xMm() - size.to().xMm()) < 0.1)
            .mapToDouble(size -> Math.abs(size.offsetMm()))
            .sorted()
            .toArray();
    assertEquals(2, off.length);
    assertTrue(off[1] - off[0] > 7, off[0] + " " + off[1]);
  }

  private static Item.Label label(Drawing drawing, String begin) {
    return drawing.items().stream()
        .filter(Item.Label.class::isInstance)
        .map(Item.Label.class::cast)
        .filter(each -> each.words().startsWith(begin))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> words(Drawing drawing) {
    return drawing.items().stream()
        .map(
            item ->
                item instanceof Item.Label label
                    ? label.words()
                    : item instanceof Item.Dimension dimension ? dimension.words() : "")
        .filter(words -> !words.isEmpty())
        .toList();
  }

  private static List<Double> radii(Spanner.Kind kind, LineKind line) {
    SeatedHead head =
        Bench.hexagon(7)
            .withWasher(new SeatedHead.Washer("washer", 9, 0.8, ""))
            .withSpanner(new Spanner(kind, "spanner", 14.5, OptionalDouble.empty(), 0, "measured"));
    Seat seat = Bench.seat(Bench.rectangle(20, 12), new Point(10, 6));
    Drawing drawing =
        new SeatPainter()
            .draw(new SeatChecker().check(Bench.ask(seat, head)), LengthUnit.MILLIMETRE);
    return drawing.items().stream()
        .filter(item -> item instanceof Item.Circle circle && circle.line() == line)
        .map(item -> ((Item.Circle) item).radiusMm())
        .toList();
  }

  @Test
  void theWasherIsDrawnAndWhereTheSpannerGoes() {
    assertEquals(List.of(4.5), radii(Spanner.Kind.RING, LineKind.OUTLINE));
    assertEquals(List.of(7.25), radii(Spanner.Kind.RING, LineKind.THIN));
    assertEquals(List.of(), radii(Spanner.Kind.OPEN, LineKind.THIN));
  }
}
