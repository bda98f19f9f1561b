package org.fettlebench.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Consumer;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;

class SketchTest {
  private static final Point A = new Point(1, 2);
  private static final Point B = new Point(5, 9);

  private static Drawing drawn(Consumer<Sketch> drawing) {
    Sketch sketch = new Sketch();
    drawing.accept(sketch);
    return sketch.drawing("title", 0.5);
  }

  private static Drawing.Frame box(double minX, double minY, double maxX, double maxY) {
    return new Drawing.Frame(minX - 0.5, minY - 0.5, maxX + 0.5, maxY + 0.5);
  }

  @Test
  void itemsAreKeptFromTheBottomUp() {
    Drawing drawing =
        drawn(
            sketch -> {
              sketch.area(Tone.PART, List.of(A, B, new Point(1, 9)));
              sketch.line(LineKind.OUTLINE, A, B);
              sketch.marker(A, Item.Mark.CROSS);
              sketch.label(B, "words", Item.Side.LEFT, true);
            });

    assertEquals(
        List.of(
            new Item.Area(Tone.PART, List.of(A, B, new Point(1, 9)), List.of()),
            new Item.Path(LineKind.OUTLINE, List.of(A, B), false),
            new Item.Marker(A, Item.Mark.CROSS),
            new Item.Label(B, "words", Item.Side.LEFT, true)),
        drawing.items());
    assertEquals("title", drawing.title());
  }

  @Test
  void everyItemTakesItsRoom() {
    assertEquals(box(1, 2, 5, 9), drawn(s -> s.line(LineKind.THIN, B, A)).frame());
    assertEquals(box(-2, -1, 4, 5), drawn(s -> s.circle(LineKind.THIN, A, 3)).frame());
    assertEquals(box(1, 2, 5, 9), drawn(s -> s.dimension(A, B, 7, "size", false)).frame());
    assertEquals(
        box(-2, -1, 5, 9),
        drawn(
                s -> {
                  s.marker(A, Item.Mark.RING);
                  s.label(B, "far", Item.Side.RIGHT, false);
                  s.reach(new Point(-2, -1));
                })
            .frame());
    Drawing.Frame disc = drawn(s -> s.disc(Tone.HEAD, A, 3)).frame();
    assertEquals(-2.5, disc.minXMm(), 1e-12);
    assertEquals(5.5, disc.maxYMm(), 1e-12);
  }

  @Test
  void anArcRunsFromEndToEndOnItsCircle() {
    List<Point> arc = Sketch.arc(A, 2, 90, 180);

    assertEquals(0, arc.get(0).distanceMm(new Point(1, 4)), 1e-12);
    assertEquals(0, arc.get(arc.size() - 1).distanceMm(new Point(-1, 2)), 1e-12);
    for (Point point : arc) {
      assertEquals(2, point.distanceMm(A), 1e-12);
      assertTrue(point.xMm() <= 1 + 1e-12 && point.yMm() >= 2 - 1e-12, point.toString());
    }
  }

  @Test
  void centreLinesReachAlikeToAllSides() {
    assertEquals(
        List.of(
            new Item.Path(LineKind.CENTRE, List.of(new Point(-3, 2), new Point(5, 2)), false),
            new Item.Path(LineKind.CENTRE, List.of(new Point(1, -2), new Point(1, 6)), false)),
        drawn(s -> s.centreLines(A, 4)).items());
  }

  @Test
  void anArrowPointsToItsTip() {
    List<Item> items =
        drawn(s -> s.arrow(LineKind.OUTLINE, new Point(0, 0), new Point(0, 10), 4)).items();

    assertEquals(
        new Item.Path(LineKind.OUTLINE, List.of(new Point(0, 0), new Point(0, 6)), false),
        items.get(0));
    assertEquals(
        new Item.Path(
            LineKind.OUTLINE, List.of(new Point(-1, 6), new Point(0, 10), new Point(1, 6)), true),
        items.get(1));
  }

  @Test
  void aDimensionPastWhatIsDrawnHasLinesFromThePointsMeasured() {
    Item.Dimension level = new Item.Dimension(new Point(0, 0), new Point(8, 0), 0, "8", true);
    Drawing near = drawn(s -> s.dimensionPast(level, new Point(0, -10)));

    assertEquals(
        List.of(
            new Item.Path(LineKind.THIN, List.of(new Point(0, -1), new Point(0, -11)), false),
            new Item.Path(LineKind.THIN, List.of(new Point(8, -1), new Point(8, -11)), false),
            new Item.Dimension(new Point(0, -10), new Point(8, -10), 0, "8", true)),
        near.items());
    assertEquals(box(0, -11, 8, -1), near.frame());
    // The plotter draws the rest of the way where the line stands off on paper.
    Item.Dimension off = new Item.Dimension(new Point(0, 0), new Point(8, 0), -7, "8", false);
    Drawing far = drawn(s -> s.dimensionPast(off, new Point(0, -10)));
    assertEquals(
        new Item.Path(LineKind.THIN, List.of(new Point(0, -1), new Point(0, -10)), false),
        far.items().get(0));
    assertEquals(List.of(off), drawn(s -> s.dimensionPast(off, new Point(0, 0))).items());
  }

  @Test
  void anEmptySketchIsNoDrawing() {
    assertThrows(IllegalArgumentException.class, () -> drawn(sketch -> {}));
  }
}
