package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

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

  private static Drawing drawn(Seat seat, double flatsMm) {
    SeatAnswer answer = new SeatChecker().check(Bench.ask(seat, Bench.hexagon(flatsMm)));
    return new SeatPainter().draw(answer, LengthUnit.MILLIMETRE);
  }

  static List<Seat> seats() {
    Seat lug =
        Bench.seat(
            List.of(
                new Point(0, -4.2),
                new Point(6, -4.9),
                new Point(18, -4.4),
                new Point(18, 4.7),
                new Point(12, 5.6),
                new Point(0, 5)),
            new Point(9, 0.2));
    return List.of(
        lug,
        lug.withIntended(new Point(9, -0.4)),
        lug.withIntended(new Point(4.3, 0)),
        lug.withIntended(new Point(13.6, 0)),
        Bench.with(lug, new Seat.Wall("wall", new Point(0, 4.4), new Point(18, 5.8), 12, 0.5))
            .withIntended(new Point(9, 1.2)),
        Bench.with(lug, new Seat.Wall("wall", new Point(2, 2), new Point(4, 9), 12, 0.5))
            .withIntended(new Point(5.5, 0)),
        lug.withNeighbours(List.of(new Seat.Neighbour("oiler", new Point(17.5, 0.3), 3))));
  }

  /** Words 2.1 mm a letter on a drawing 100 mm wide, as the painter guesses. */
  @ParameterizedTest
  @MethodSource("seats")
  void whatGovernsIsSaidClearOfEverythingDrawn(Seat seat) {
    Drawing drawing = drawn(seat, 8.23);
    Item.Label said =
        label(drawing, seat.walls().isEmpty() ? "" : "wall: ", "to spare", "fouls by");
    double mm = (drawing.frame().maxXMm() - drawing.frame().minXMm()) / 110;
    double wide = 2.1 * mm * said.words().length();
    double high = 3 * mm;
    double left =
        said.at().xMm()
            - switch (said.side()) {
              case LEFT -> wide;
              case RIGHT -> 0;
              default -> wide / 2;
            };
    double low =
        said.at().yMm()
            - switch (said.side()) {
              case BELOW -> high;
              case ABOVE -> 0;
              default -> high / 2;
            };
    Envelope box = new Envelope(left, left + wide, low, low + high);
    for (Item item : drawing.items()) {
      if (item instanceof Item.Circle circle && circle.line() == LineKind.GOVERNING) {
        Point middle = circle.centre();
        Geometry ring =
            new GeometryFactory().createPoint(new Coordinate(middle.xMm(), middle.yMm()));
        assertTrue(
            ring.distance(new GeometryFactory().toGeometry(box)) > circle.radiusMm(),
            said + " " + circle);
      }
      if (item instanceof Item.Path path && path.line() != LineKind.THIN) {
        for (int i = 0; i + 1 < path.points().size(); i++) {
          assertFalse(
              crosses(box, path.points().get(i), path.points().get(i + 1)), said + " " + path);
        }
      }
    }
  }

  private static boolean crosses(Envelope box, Point a, Point b) {
    Geometry words = new GeometryFactory().toGeometry(box);
    return words.intersects(
        new GeometryFactory()
            .createLineString(
                new Coordinate[] {
                  new Coordinate(a.xMm(), a.yMm()), new Coordinate(b.xMm(), b.yMm())
                }));
  }

  @ParameterizedTest
  @MethodSource("seats")
  void theNameOfTheBestCentreStandsOutsideTheHeadAndItsLineNotAcrossIt(Seat seat) {
    Drawing drawing = drawn(seat, 7.16);
    drawing.items().stream()
        .filter(item -> item instanceof Item.Label label && label.words().equals("best centre"))
        .map(Item.Label.class::cast)
        .forEach(
            label -> {
              double radius = 7.16 / Math.cos(Math.PI / 6) / 2;
              assertTrue(label.at().distanceMm(seat.intended()) > radius, label.toString());
              Point best = best(drawing);
              // A line that crossed the head would be longer than the head's radius and more.
              assertTrue(label.at().distanceMm(best) < radius + 0.06 * 20, label + " " + best);
            });
  }

  private static Point best(Drawing drawing) {
    return drawing.items().stream()
        .filter(item -> item instanceof Item.Marker marker && marker.mark() == Item.Mark.RING)
        .map(item -> ((Item.Marker) item).at())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void spokesEndWhereTheHoleMayNoLongerBe() {
    Seat seat = Bench.seat(Bench.rectangle(20, 12), new Point(8, 6));
    var question = Bench.ask(seat, Bench.round(6));
    SeatChecker seats = new SeatChecker();
    Drawing plain = new SeatPainter().draw(seats.check(question), LengthUnit.MILLIMETRE);
    Drawing drawing =
        new SeatPainter()
            .draw(seats.check(question), seats.rose(question, 4), LengthUnit.MILLIMETRE);
    // Closed form: a circle of radius 3 in a rectangle may move to 3 from each side.
    List<Item> more = new ArrayList<>(drawing.items());
    more.removeAll(plain.items());
    List<Point> ends =
        more.stream()
            .map(item -> ((Item.Path) item).points())
            .filter(points -> points.get(0).equals(seat.intended()))
            .map(points -> points.get(1))
            .toList();
    List<Point> wanted =
        List.of(new Point(17, 6), new Point(8, 9), new Point(3, 6), new Point(8, 3));
    assertEquals(4, ends.size());
    for (int i = 0; i < 4; i++) {
      assertEquals(0, ends.get(i).distanceMm(wanted.get(i)), 1e-9);
    }
  }

  private static Item.Label label(Drawing drawing, String begin, String... any) {
    return drawing.items().stream()
        .filter(Item.Label.class::isInstance)
        .map(Item.Label.class::cast)
        .filter(each -> each.words().startsWith(begin))
        .filter(each -> Arrays.stream(any).anyMatch(each.words()::contains))
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
