package org.fettlebench.castings.internal;

import static org.fettlebench.castings.internal.TrialDrawings.all;
import static org.fettlebench.castings.internal.TrialDrawings.draw;
import static org.fettlebench.castings.internal.TrialDrawings.face;
import static org.fettlebench.castings.internal.TrialDrawings.label;
import static org.fettlebench.castings.internal.TrialDrawings.lines;
import static org.fettlebench.castings.internal.TrialDrawings.place;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fettlebench.castings.CastingView;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.Spot;
import org.fettlebench.castings.Towards;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Flat faces on the drawing: where their lines and words stand. */
class FlatPictureTest {
  /** A block 100 by 60 with a slot from 40 to 60, measured without saying where along it. */
  private static Placing slotted(Spot left, Spot right) {
    return place(
        face("left", Towards.LEFT, 0, new Spot(-2, 0, 0)),
        face("right", Towards.RIGHT, 100, new Spot(102, 0, 0)),
        face("foot", Towards.DOWN, 0, new Spot(0, 0, -1)),
        face("top", Towards.UP, 60, new Spot(0, 0, 61)),
        face("slot left", Towards.RIGHT, 40, left),
        face("slot right", Towards.LEFT, 60, right));
  }

  private static List<Point> finished(Drawing drawing, double x) {
    return all(drawing, Item.Path.class).stream()
        .filter(path -> path.line() == LineKind.OUTLINE || path.line() == LineKind.GOVERNING)
        .map(Item.Path::points)
        .filter(line -> line.stream().allMatch(at -> Math.abs(at.xMm() - x) < 1e-3))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aSlotMeasuredAnywhereIsDrawnInTheMiddle() {
    Drawing front = draw(slotted(new Spot(41, 0, 0), new Spot(59, 0, 0)), CastingView.FRONT);
    // Half of 60, in the middle: from 15 to 45.
    assertEquals(List.of(15.0, 45.0), heights(finished(front, 40)));
    assertEquals(List.of(15.0, 45.0), heights(finished(front, 60)));
    // Names in the slot stand at different heights: 16 and 84 hundredths of it.
    double one = label(front, "slot left\n").at().yMm();
    double other = label(front, "slot right\n").at().yMm();
    assertEquals(0.84 * 30 - 0.16 * 30, Math.abs(one - other), 1e-6);
  }

  @Test
  void aSlotMeasuredInTwoSpotsIsDrawnBetweenThem() {
    Placing placing =
        place(
            face("left", Towards.LEFT, 0, new Spot(-2, 0, 0)),
            face("right", Towards.RIGHT, 100, new Spot(102, 0, 0)),
            face("foot", Towards.DOWN, 0, new Spot(0, 0, -1)),
            face("top", Towards.UP, 60, new Spot(0, 0, 61)),
            face("step", Towards.RIGHT, 40, new Spot(42, 0, 10), new Spot(42, 0, 30)));
    assertEquals(List.of(10.0, 30.0), heights(finished(draw(placing, CastingView.FRONT), 40)));
  }

  private static List<Double> heights(List<Point> line) {
    return line.stream().map(at -> Math.round(at.yMm() * 1e4) / 1e4).sorted().toList();
  }

  /** The middle is taken by a spot, so words stand beside it: 12 in a hundred to one side. */
  @Test
  void wordsStandClearOfSpots() {
    Placing placing =
        place(
            face(
                "foot",
                Towards.DOWN,
                0,
                new Spot(0, 0, -1),
                new Spot(50, 0, -1),
                new Spot(100, 0, -1)),
            face("top", Towards.UP, 60, new Spot(0, 0, 61), new Spot(100, 0, 61)));
    Drawing front = draw(placing, CastingView.FRONT);
    assertEquals(38, label(front, "foot").at().xMm(), 1e-6);
    assertEquals(50, label(front, "top").at().xMm(), 1e-6, "the middle is free");
    assertEquals(Item.Side.BELOW, label(front, "foot").side());
    assertEquals(Item.Side.ABOVE, label(front, "top").side());
    assertEquals(5, all(front, Item.Marker.class).size());
  }

  /** The rough skins of neighbours meet: at -2, -1 at the lower left of the slotted block. */
  @Test
  void roughSkinsMeetAtTheCorners() {
    Drawing front = draw(slotted(new Spot(41, 0, 0), new Spot(59, 0, 0)), CastingView.FRONT);
    List<List<Point>> thin = lines(front, LineKind.THIN);
    for (Point corner :
        List.of(new Point(-2, -1), new Point(102, -1), new Point(-2, 61), new Point(102, 61))) {
      long ends =
          thin.stream()
              .flatMap(line -> List.of(line.get(0), line.get(line.size() - 1)).stream())
              .filter(end -> end.distanceMm(corner) < 1e-6)
              .count();
      assertEquals(2, ends, corner.toString());
    }
    assertTrue(front.frame().minXMm() < -2 && front.frame().maxXMm() > 102);
    assertTrue(front.frame().minXMm() > -6 && front.frame().maxXMm() < 106);
  }

  @ParameterizedTest
  @CsvSource({
    "foot, foot",
    "the face that looks left, the face that/looks left",
    "incomprehensibilities, incomprehensibilities",
    "a b c d e f g h i j k, a b c d e f g h i/j k",
  })
  void longNamesTakeMoreLines(String name, String lines) {
    assertEquals(lines.replace('/', '\n'), FaceLabel.wrapped(name));
  }
}
