package org.fettlebench.desktop.seats.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.fettlebench.desktop.seats.internal.Snapping.Snapped;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What pointer and keys do to a sketch, without a window. */
class EditingTest {
  private static final Handle CORNER_2 = Handle.of(Handle.Kind.CORNER, 2);

  @Test
  void everythingMayBeTakenHoldOf() {
    Sketch full = Sketches.full();
    Sketch bent = full.with(Handles.bent(full.shape(), outline -> Arcs.bulged(outline, 1, 2)));
    Set<Handle.Kind> kinds =
        Handles.of(bent).stream().map(each -> each.handle().kind()).collect(Collectors.toSet());
    assertEquals(Set.of(Handle.Kind.values()), kinds);
  }

  @Test
  void whatIsMovedIsThereAndNothingElseMoves() {
    Sketch sketch = Sketches.full();
    for (Handles.Placed each : Handles.of(sketch)) {
      Point to = each.at().moved(0.3, -0.2);
      Sketch moved = Handles.moved(sketch, each.handle(), to);
      Point at = Handles.at(moved, each.handle()).orElseThrow();
      assertEquals(0, at.distanceMm(to), 1e-12, each.handle().words());
      boolean wall = each.handle().kind().name().startsWith("WALL");
      long changed =
          Handles.of(sketch).stream()
              .filter(other -> !Handles.at(moved, other.handle()).equals(Optional.of(other.at())))
              .count();
      assertEquals(wall ? each.handle().kind() == Handle.Kind.WALL ? 3 : 2 : 1, changed);
    }
  }

  @Test
  void tabGoesThroughAllThereAndBack() {
    Sketch sketch = Sketches.full();
    List<Handle> there = new ArrayList<>();
    Optional<Handle> at = Handles.next(sketch, Optional.empty(), false);
    while (at.isPresent()) {
      there.add(at.get());
      at = Handles.next(sketch, at, false);
    }
    assertEquals(Handles.of(sketch).size(), there.size());
    assertEquals(Handle.CENTRE, there.get(0));
    Handle last = there.get(there.size() - 1);
    assertEquals(Optional.of(last), Handles.next(sketch, Optional.empty(), true));
    assertEquals(Optional.empty(), Handles.next(sketch, Optional.of(Handle.CENTRE), true));
  }

  @Test
  void theNearestHandleWithinReachIsHit() {
    Sketch sketch = Sketches.byCorners(Sketches.square(12));
    assertEquals(Optional.of(CORNER_2), Handles.hit(sketch, new Point(11.8, 11.9), 0.5));
    assertEquals(Optional.of(Handle.CENTRE), Handles.hit(sketch, new Point(6.2, 6), 0.5));
    assertEquals(Optional.empty(), Handles.hit(sketch, new Point(9, 9), 0.5));
  }

  @Test
  void whatIsRemovedIsGoneButTheLeastStays() {
    Sketch sketch = Sketches.full();
    assertEquals(sketch, Handles.removed(sketch, Handle.CENTRE));
    Sketch three = Handles.removed(sketch, CORNER_2);
    assertEquals(3, three.shape().corners().size());
    assertEquals(three, Handles.removed(three, Handle.of(Handle.Kind.CORNER, 0)));
    assertTrue(
        Handles.removed(sketch, Handle.of(Handle.Kind.WALL_TO, 0)).shape().walls().isEmpty());
    assertTrue(Handles.removed(sketch, Handle.FOUND).hole().found().isEmpty());
    Sketch under = sketch;
    for (int i = 0; i < 2; i++) {
      under = Handles.removed(under, Handle.of(Handle.Kind.UNDERSIDE, 0));
    }
    assertTrue(under.shape().underside().isEmpty());
  }

  @Test
  void aCornerIsAddedOnTheEdgeUnderThePointer() {
    Sketch sketch = Sketches.byCorners(Sketches.square(12));
    Sketch more = Edges.cornerAdded(sketch, new Point(12.2, 5), 0.5).orElseThrow();
    assertEquals(new Point(12, 5), more.shape().corners().get(2));
    assertEquals(5, more.shape().corners().size());
    assertTrue(Edges.cornerAdded(sketch, new Point(6, 6), 0.5).isEmpty());
    Sketch stations = Sketches.byStations(Row.ofMillimetres(0, 4, 4), Row.ofMillimetres(10, 4, 4));
    assertEquals(
        3,
        Edges.cornerAdded(stations, new Point(5, 4.1), 0.5)
            .orElseThrow()
            .shape()
            .stations()
            .rows()
            .size());
  }

  @Test
  void draggedThingsAreDrawnToCornersThenEdgesThenLinesThenSteps() {
    Sketch sketch = Sketches.byCorners(Sketches.square(12));
    Snapped corner = Snapping.snap(sketch, Handle.CENTRE, new Point(11.9, 0.1), 0.3, 0.1);
    assertEquals(new Point(12, 0), corner.at());
    Snapped edge = Snapping.snap(sketch, Handle.CENTRE, new Point(4.03, 0.2), 0.3, 0.1);
    assertEquals(0, edge.at().distanceMm(new Point(4.03, 0)), 1e-9);
    Snapped middle = Snapping.snap(sketch, Handle.CENTRE, new Point(6.2, 3.14), 0.3, 0.1);
    assertEquals(new Point(6, 3.1), middle.at());
    assertTrue(middle.onX() && !middle.onY());
    Snapped line = Snapping.snap(sketch, CORNER_2, new Point(9.14, -0.2), 0.3, 0.1);
    assertEquals(new Point(9.1, 0), line.at());
    Snapped step = Snapping.snap(sketch, CORNER_2, new Point(9.26, 7.71), 0.1, 0.5);
    assertEquals(new Point(9.5, 7.5), step.at());
  }

  @ParameterizedTest
  @CsvSource({
    "MILLIMETRE, 1000, 0.01",
    "MILLIMETRE, 45, 0.1",
    "MILLIMETRE, 4, 1",
    "MILLIMETRE, 0.001, 100",
    "INCH, 2000, 0.0254",
    "INCH, 45, 0.127",
    "INCH, 10, 1.27"
  })
  void stepsAreWholeInTheUnitAndWideEnoughToSee(LengthUnit unit, double scale, double mm) {
    assertEquals(mm, Snapping.stepMm(unit, scale), 1e-12);
  }

  @Test
  void nudgesDoNotAddUpWhatRoundingLeaves() {
    Sketch sketch = Sketches.byCorners(Sketches.square(12));
    for (int i = 0; i < 1000; i++) {
      sketch = Nudge.moved(sketch, CORNER_2, 0.01, 0);
    }
    assertEquals(new Point(22, 12), sketch.shape().corners().get(2));
    assertEquals(0.127, Nudge.stepMm(LengthUnit.INCH, false), 1e-12);
  }

  @Test
  void aWholeDragIsUndoneAtOnceAndDoneAgain() {
    Bench bench = new Bench(RealPage.book());
    bench.begin(Sketches.byCorners(Sketches.square(12)));
    for (int i = 1; i <= 50; i++) {
      double x = 12 + 0.01 * i;
      bench.apply(
          new Change<>("moved", "drag 1", s -> Handles.moved(s, CORNER_2, new Point(x, 12))));
    }
    bench.apply(new Change<>("moved", "drag 2", s -> Handles.moved(s, CORNER_2, new Point(9, 9))));
    bench.undo();
    assertEquals(new Point(12.5, 12), bench.sketch().shape().corners().get(2));
    bench.undo();
    assertEquals(new Point(12, 12), bench.sketch().shape().corners().get(2));
    assertFalse(bench.canUndo());
    bench.redo();
    bench.redo();
    assertEquals(new Point(9, 9), bench.sketch().shape().corners().get(2));
    assertTrue(bench.redo().isEmpty());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void anyRunOfChangesIsUndoneToTheBeginning(long seed) {
    Random random = new Random(seed);
    Bench bench = new Bench(RealPage.book());
    // Without a head nothing is checked, so that many changes are quick.
    Sketch begin = Sketches.full().with(Sketch.EMPTY.top());
    bench.begin(begin);
    List<Sketch> states = new ArrayList<>(List.of(begin));
    for (int i = 0; i < 300; i++) {
      List<Handles.Placed> all = Handles.of(bench.sketch());
      Handles.Placed each = all.get(random.nextInt(all.size()));
      Point to = each.at().moved(random.nextGaussian(), random.nextGaussian());
      boolean remove = random.nextInt(20) == 0;
      boolean done =
          bench.apply(
              Change.of(
                  "step " + i,
                  s ->
                      remove
                          ? Handles.removed(s, each.handle())
                          : Handles.moved(s, each.handle(), to)));
      if (done) {
        states.add(bench.sketch());
      }
    }
    for (int i = states.size() - 2; i >= 0; i--) {
      bench.undo();
      assertEquals(states.get(i), bench.sketch(), "seed " + seed + ", state " + i);
    }
    assertFalse(bench.canUndo());
  }

  @Test
  void whatIsGoneIsNotChosenAnyMore() {
    Bench bench = new Bench(RealPage.book());
    bench.begin(Sketches.full());
    bench.choose(Optional.of(Handle.of(Handle.Kind.WALL, 0)));
    bench.apply(Change.of("removed", s -> Handles.removed(s, Handle.of(Handle.Kind.WALL, 0))));
    assertEquals(Optional.empty(), bench.chosen());
  }
}
