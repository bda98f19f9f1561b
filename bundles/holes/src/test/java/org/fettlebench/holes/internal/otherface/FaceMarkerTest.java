package org.fettlebench.holes.internal.otherface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.fettlebench.drawing.Item;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Verdict;
import org.fettlebench.fits.internal.SeatChecker;
import org.fettlebench.holes.correct.ExpectedError;
import org.fettlebench.holes.correct.HoleException;
import org.fettlebench.holes.otherface.FaceMark;
import org.fettlebench.holes.otherface.FaceMark.EdgeDistance;
import org.fettlebench.holes.otherface.MarkQuestion;
import org.fettlebench.holes.otherface.MarkQuestion.Faces;
import org.fettlebench.holes.otherface.MarkQuestion.Hole;
import org.fettlebench.holes.otherface.Turn;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class FaceMarkerTest {
  private static final double EXACT = 1e-9;

  /** An upper face of 20 by 12; below it is larger all round, by 1, 2, 3 and 4 at each side. */
  private static final Faces FACES =
      new Faces(
          List.of(new Point(0, 0), new Point(20, 0), new Point(20, 12), new Point(0, 12)),
          List.of(new Point(-4, -1), new Point(22, -1), new Point(22, 15), new Point(-4, 15)));

  private static final Point TARGET = new Point(5, 8);
  private static final Hole HOLE =
      new Hole(3, 10, new ExpectedError("dotting", 0.2, "a test"), 0.01, "a test");

  private final FaceMarker marker = new FaceMarker(new SeatChecker());

  private static MarkQuestion ask(Faces faces, Turn turn, Integer... chosen) {
    return new MarkQuestion("foot", TARGET, HOLE, faces, turn, List.of(chosen), Optional.empty());
  }

  private EdgeDistance from(FaceMark mark, int edge) {
    return mark.distances().stream().filter(d -> d.edge() == edge).findFirst().orElseThrow();
  }

  @Test
  void turnedSidewaysTheLeftIsTheRight() {
    FaceMark mark = marker.mark(ask(FACES, Turn.SIDEWAYS));
    assertEquals(new Point(-5, 8), mark.mark());
    // Edge 4 runs up the left side as seen from above, at x = -4: now it is at the right hand.
    assertEquals("right-hand edge, corner 4 to 1", from(mark, 4).name());
    assertEquals(9, from(mark, 4).distanceMm(), EXACT);
    assertEquals(new Point(4, 8), from(mark, 4).foot());
    assertEquals("left-hand edge, corner 2 to 3", from(mark, 2).name());
    assertEquals(17, from(mark, 2).distanceMm(), EXACT);
    assertEquals("near edge, corner 1 to 2", from(mark, 1).name());
    assertEquals("far edge, corner 3 to 4", from(mark, 3).name());
    assertEquals(7, from(mark, 3).distanceMm(), EXACT);
  }

  @Test
  void turnedEndwaysTheFarIsTheNear() {
    FaceMark mark = marker.mark(ask(FACES, Turn.ENDWAYS));
    assertEquals(new Point(5, -8), mark.mark());
    assertEquals("left-hand edge, corner 4 to 1", from(mark, 4).name());
    assertEquals("near edge, corner 3 to 4", from(mark, 3).name());
    assertEquals("far edge, corner 1 to 2", from(mark, 1).name());
    assertEquals(9, from(mark, 1).distanceMm(), EXACT);
  }

  @Test
  void aFaceTurnedOverRunsTheOtherWayRound() {
    for (Turn turn : Turn.values()) {
      FaceMark mark = marker.mark(ask(FACES, turn));
      assertTrue(area(FACES.far().points()) > 0);
      assertEquals(-area(FACES.far().points()), area(mark.face()), EXACT, turn.words());
    }
  }

  private static double area(List<Point> corners) {
    double twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % corners.size());
      twice += a.xMm() * b.yMm() - b.xMm() * a.yMm();
    }
    return twice / 2;
  }

  static IntStream seeds() {
    return IntStream.range(0, 100);
  }

  /** An uneven four-sided face with its sides running in or out below. */
  private static Faces any(Random random) {
    List<Point> upper = new ArrayList<>();
    List<Point> far = new ArrayList<>();
    double[][] box = {{0, 0}, {20, 0}, {20, 14}, {0, 14}};
    for (double[] corner : box) {
      upper.add(
          new Point(corner[0] + random.nextGaussian() / 2, corner[1] + random.nextGaussian() / 2));
      far.add(
          new Point(corner[0] + random.nextGaussian() / 2, corner[1] + random.nextGaussian() / 2));
    }
    return new Faces(upper, far);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void turningTwiceIsNotTurningAtAll(int seed) {
    Random random = new Random(seed);
    Point place = new Point(random.nextGaussian(), random.nextGaussian());
    for (Turn turn : Turn.values()) {
      assertEquals(place, turn.seen(turn.seen(place)));
    }
    // One way and then the other is half a turn about the datum.
    assertEquals(
        new Point(-place.xMm(), -place.yMm()), Turn.ENDWAYS.seen(Turn.SIDEWAYS.seen(place)));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void bothWaysOfTurningShowTheSameFaceHalfATurnApart(int seed) {
    Faces faces = any(new Random(seed));
    FaceMark sideways = marker.mark(ask(faces, Turn.SIDEWAYS));
    FaceMark endways = marker.mark(ask(faces, Turn.ENDWAYS));
    for (int i = 0; i < 4; i++) {
      Point one = sideways.face().get(i);
      assertEquals(new Point(0 - one.xMm(), 0 - one.yMm()), plain(endways.face().get(i)));
    }
    assertEquals(sideways.distances().size(), endways.distances().size());
    for (EdgeDistance one : sideways.distances()) {
      assertEquals(one.distanceMm(), from(endways, one.edge()).distanceMm(), EXACT);
    }
    assertEquals(sideways.metalMm(), endways.metalMm(), EXACT);
  }

  private static Point plain(Point point) {
    return new Point(point.xMm() + 0.0, point.yMm() + 0.0);
  }

  /** What is told must be what a calliper reads: from the untouched part, by its own geometry. */
  @ParameterizedTest
  @MethodSource("seeds")
  void distancesAreThoseOfTheRealFace(int seed) {
    Faces faces = any(new Random(seed));
    FaceMark mark = marker.mark(ask(faces, Turn.SIDEWAYS));
    for (EdgeDistance told : mark.distances()) {
      Point a = faces.far().points().get(told.edge() - 1);
      Point b = faces.far().points().get(told.edge() % 4);
      double real =
          Math.abs(
                  (b.xMm() - a.xMm()) * (TARGET.yMm() - a.yMm())
                      - (b.yMm() - a.yMm()) * (TARGET.xMm() - a.xMm()))
              / a.distanceMm(b);
      assertEquals(real, told.distanceMm(), EXACT);
      assertEquals(told.distanceMm(), mark.mark().distanceMm(told.foot()), EXACT);
    }
  }

  /** A person at the turned part, going by the two distances, must come to the target. */
  @ParameterizedTest
  @MethodSource("seeds")
  void markingByTheTwoDistancesComesOutAtTheTarget(int seed) {
    Faces faces = any(new Random(seed));
    for (Turn turn : Turn.values()) {
      FaceMark mark = marker.mark(ask(faces, turn));
      EdgeDistance one = mark.pair().get(0);
      EdgeDistance two = mark.pair().get(1);
      // Seen with that face up, the metal lies to the right of each edge from its first corner to
      // its second, since the corners ran the other way round from above.
      double[] first = line(one);
      double[] second = line(two);
      double det = first[0] * second[1] - first[1] * second[0];
      Point scribed =
          new Point(
              (first[2] * second[1] - first[1] * second[2]) / det,
              (first[0] * second[2] - first[2] * second[0]) / det);
      assertEquals(0, turn.seen(scribed).distanceMm(TARGET), 1e-9);
    }
  }

  /** Returns a, b and c of the scribed line a x + b y = c, so far to the right of an edge. */
  private static double[] line(EdgeDistance edge) {
    double length = edge.start().distanceMm(edge.end());
    double a = (edge.end().yMm() - edge.start().yMm()) / length;
    double b = -(edge.end().xMm() - edge.start().xMm()) / length;
    return new double[] {a, b, a * edge.start().xMm() + b * edge.start().yMm() + edge.distanceMm()};
  }

  @ParameterizedTest
  @EnumSource
  void cornersMayRunEitherWayRound(Turn turn) {
    List<Point> reversed = new ArrayList<>(FACES.far().points());
    Collections.reverse(reversed);
    FaceMark one = marker.mark(ask(FACES, turn));
    FaceMark other = marker.mark(ask(new Faces(FACES.upper(), Outline.of(reversed)), turn));
    assertEquals(one.mark(), other.mark());
    for (EdgeDistance distance : one.distances()) {
      String side = distance.name().split(",")[0];
      assertTrue(
          other.distances().stream()
              .anyMatch(
                  d ->
                      d.name().startsWith(side)
                          && Math.abs(d.distanceMm() - distance.distanceMm()) < EXACT),
          side);
    }
  }

  @Test
  void choosesTwoEdgesThatCross() {
    List<EdgeDistance> pair = marker.mark(ask(FACES, Turn.SIDEWAYS)).pair();
    assertEquals(1, EdgePair.crossing(pair.get(0), pair.get(1)), EXACT);
    List<EdgeDistance> said = marker.mark(ask(FACES, Turn.SIDEWAYS, 3, 2)).pair();
    assertEquals(List.of(3, 2), said.stream().map(EdgeDistance::edge).toList());
  }

  @Test
  void anEdgeThatEndsBeforeTheMarkCannotBeMeasuredFrom() {
    // A notch: the short edge 3 ends at x = 3, the mark stands at 5.
    Faces notched =
        new Faces(
            FACES.upper().points(),
            List.of(
                new Point(0, 0),
                new Point(22, 0),
                new Point(22, 15),
                new Point(3, 15),
                new Point(3, 12),
                new Point(0, 12)));
    FaceMark mark = marker.mark(ask(notched, Turn.SIDEWAYS));
    assertEquals(
        List.of(1, 2, 3, 6), mark.distances().stream().map(EdgeDistance::edge).sorted().toList());
    HoleException wrong =
        assertThrows(HoleException.class, () -> marker.mark(ask(notched, Turn.SIDEWAYS, 1, 5)));
    assertTrue(wrong.getMessage().contains("1, 2, 3, 6"), wrong.getMessage());
  }

  @Test
  void anEdgeBehindAnotherIsOutOfReach() {
    // A slot from x = 8 to 9 stands between the mark and the right-hand edge.
    Faces slotted =
        new Faces(
            FACES.upper().points(),
            List.of(
                new Point(0, 0),
                new Point(8, 0),
                new Point(8, 10),
                new Point(9, 10),
                new Point(9, 0),
                new Point(20, 0),
                new Point(20, 12),
                new Point(0, 12)));
    FaceMark mark = marker.mark(ask(slotted, Turn.SIDEWAYS));
    assertTrue(mark.distances().stream().noneMatch(d -> d.edge() == 6), "edge 6 is hidden");
    assertTrue(mark.distances().stream().anyMatch(d -> d.edge() == 2), "the slot's side serves");
  }

  /** Of a rounded corner the straight part serves, an arc does not; the mirror keeps both. */
  @Test
  void arcsAreNoEdgesToMarkFrom() {
    Outline far =
        Outline.of(FACES.far().points())
            .withCorner(0, Outline.Corner.sharp(new Point(-4, -1)).withRounded(2))
            .withCorner(2, Outline.Corner.sharp(new Point(22, 15)).withThrough(new Point(9, 17)));
    FaceMark mark = marker.mark(ask(new Faces(FACES.upper(), far), Turn.SIDEWAYS));
    assertEquals(
        List.of(1, 2, 4), mark.distances().stream().map(EdgeDistance::edge).sorted().toList());
    assertEquals(9, from(mark, 4).distanceMm(), EXACT);
    assertEquals(0, from(mark, 4).end().distanceMm(new Point(4, 1)), EXACT);
    assertTrue(mark.face().stream().anyMatch(place -> place.yMm() > 16.9), "bulges away still");
  }

  @Test
  void theWanderOverTheDepthIsAdded() {
    assertEquals(0.1, HOLE.wanderMm(), EXACT);
    assertEquals(0.3, HOLE.errorAboveMm(), EXACT);
    Seat seat = Seat.flat("foot", FACES.upper(), new Point(9, 6));
    SeatedHead head =
        new SeatedHead(
            "round",
            7.5,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            "");
    SeatQuestion question = new SeatQuestion(seat, head, 3, 0.2, "a test");
    // Room at 5, 8 is 4 - 3.75 = 0.25: enough for the marking alone, not for the wander too.
    FaceMark mark =
        marker.mark(
            new MarkQuestion(
                "foot", TARGET, HOLE, FACES, Turn.SIDEWAYS, List.of(), Optional.of(question)));
    assertEquals(Verdict.TIGHT, mark.above().orElseThrow().verdict());
    assertEquals(0.25, mark.above().orElseThrow().allowanceAtIntendedMm(), 1e-6);
    assertEquals(0.3, mark.above().orElseThrow().question().expectedErrorMm(), EXACT);
    assertTrue(mark.cautions().get(0).contains("drill a pilot first"), mark.cautions().get(0));
  }

  @Test
  void metalIsThatToTheNearestEdgeOfTheFarFace() {
    FaceMark mark = marker.mark(ask(FACES, Turn.SIDEWAYS));
    assertEquals(7 - 1.5, mark.metalMm(), EXACT);
    Faces narrow =
        new Faces(
            FACES.upper().points(),
            List.of(new Point(4, 0), new Point(20, 0), new Point(20, 12), new Point(4, 12)));
    FaceMark thin = marker.mark(ask(narrow, Turn.SIDEWAYS));
    assertEquals(-0.5, thin.metalMm(), EXACT);
    assertTrue(thin.cautions().get(0).contains("breaks out of the far face by 0.50 mm"));
  }

  private void refused(String words, MarkQuestion question) {
    HoleException wrong = assertThrows(HoleException.class, () -> marker.mark(question));
    assertTrue(wrong.getMessage().contains(words), wrong.getMessage());
  }

  @Test
  void refusesWhatCannotBeMarked() {
    List<Point> upper = FACES.upper().points();
    List<Point> aside =
        List.of(new Point(8, 0), new Point(20, 0), new Point(20, 12), new Point(8, 12));
    refused("3.00 mm (0.118 in) off the far face", ask(new Faces(upper, aside), Turn.SIDEWAYS));
    refused("off the upper face", ask(new Faces(aside, upper), Turn.SIDEWAYS));
    refused("parallel", ask(FACES, Turn.SIDEWAYS, 1, 3));
    refused("two different edges", ask(FACES, Turn.SIDEWAYS, 1));
    refused("two different edges", ask(FACES, Turn.SIDEWAYS, 2, 2));
    refused("edge 5 is outside 1 to 4", ask(FACES, Turn.SIDEWAYS, 1, 5));
    refused("at least 3", ask(new Faces(upper, upper.subList(0, 2)), Turn.SIDEWAYS));
    List<Point> crossing = List.of(upper.get(0), upper.get(2), upper.get(1), upper.get(3));
    refused("crosses or touches itself", ask(new Faces(upper, crossing), Turn.SIDEWAYS));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, 1.1, Double.NaN})
  void refusesAWanderThatCannotBe(double bad) {
    Hole hole = new Hole(3, 10, HOLE.marking(), bad, "a test");
    refused(
        "outside 0 to 1",
        new MarkQuestion("foot", TARGET, hole, FACES, Turn.SIDEWAYS, List.of(), Optional.empty()));
    Hole flat = new Hole(3, bad < 0 || Double.isNaN(bad) ? bad : 0, HOLE.marking(), 0, "a test");
    refused(
        "depth from face to face",
        new MarkQuestion("foot", TARGET, flat, FACES, Turn.SIDEWAYS, List.of(), Optional.empty()));
  }

  @Test
  void drawsTheFaceAsSeenWithBothDistances() {
    FaceMark mark = marker.mark(ask(FACES, Turn.SIDEWAYS, 4, 3));
    List<Item> items = marker.draw(mark, LengthUnit.MILLIMETRE).items();
    List<String> figures =
        items.stream()
            .filter(Item.Dimension.class::isInstance)
            .map(item -> ((Item.Dimension) item).words())
            .toList();
    assertEquals(List.of("9.00 mm", "7.00 mm"), figures);
    Item.Label second = label(items, "2");
    Item.Label first = label(items, "1");
    assertTrue(second.at().xMm() < first.at().xMm(), "corner 2 is at the left hand now");
    List<Item> above = marker.drawAbove(mark, LengthUnit.MILLIMETRE).items();
    assertTrue(label(above, "2").at().xMm() > label(above, "1").at().xMm());
  }

  private static Item.Label label(List<Item> items, String words) {
    return items.stream()
        .filter(Item.Label.class::isInstance)
        .map(Item.Label.class::cast)
        .filter(item -> item.words().equals(words))
        .findFirst()
        .orElseThrow();
  }
}
