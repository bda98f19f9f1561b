package org.fettlebench.desktop.seats.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.club.KitShelf;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.desktop.widgets.trial.TrialDesk;
import org.fettlebench.desktop.widgets.trial.Windowed;
import org.fettlebench.fits.Verdict;
import org.fettlebench.measure.Point;
import org.fettlebench.testkit.ScreenRobot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is done on the page beyond the first answer: arcs, names, readings, the other face. */
class SeatPageWorkTest {
  private final SeatPage page = RealPage.page(mock(KitShelf.class));

  private SeatView open(TrialDesk desk) {
    return RealPage.open(desk, page, 1060, 690);
  }

  /** A flat 20 x 12 mm with the hole 6 mm from its left and 4 mm from its near edge. */
  private static Sketch uneven() {
    Sketch sketch =
        Sketches.byCorners(
            List.of(new Point(0, 0), new Point(20, 0), new Point(20, 12), new Point(0, 12)));
    Sketch headed = sketch.with(sketch.top().listed("5 BA", "hexagon"));
    return headed.with(headed.hole().at(new Point(6, 4)).by("jig"));
  }

  private static void select(Button button, boolean on) {
    button.setSelection(on);
    button.notifyListeners(SWT.Selection, new Event());
  }

  private static <T extends Control> T in(Composite parent, Class<T> kind, String toolTip) {
    for (Control child : parent.getChildren()) {
      if (kind.isInstance(child)
          && (toolTip.isEmpty() || toolTip.equals(String.valueOf(child.getToolTipText())))) {
        return kind.cast(child);
      }
    }
    throw new AssertionError("no " + kind.getSimpleName() + " " + toolTip);
  }

  @Test
  void aSideIsMadeAnArcAndDraggedByItsTop() {
    Windowed.run(
        "arc",
        desk -> {
          SeatView view = open(desk);
          view.bench().begin(uneven());
          view.bench().choose(Optional.of(Handle.of(Handle.Kind.CORNER, 1)));
          desk.settle();
          Combo way = in(view.side().things().fields(), Combo.class, "");
          assertEquals("straight", way.getText());
          way.select(1);
          way.notifyListeners(SWT.Selection, new Event());
          Shape shape = view.bench().sketch().shape();
          assertEquals(1.8, Arcs.bulgeMm(shape.outline(shape.corners()), 1).orElseThrow(), 1e-9);
          Handle top = Handle.of(Handle.Kind.ARC, 1);
          assertEquals(new Point(21.8, 6), Handles.at(view.bench().sketch(), top).orElseThrow());
          view.bench().apply(Change.of("dragged", s -> Handles.moved(s, top, new Point(26, 6))));
          Shape round = view.bench().sketch().shape();
          // Half a circle over a side of 12.
          assertEquals(6, Arcs.radiusMm(round.outline(round.corners()), 1).orElseThrow(), 1e-9);
          assertTrue(view.bench().reply().answer().isPresent());
          assertEquals(
              4,
              Handles.of(view.bench().sketch()).stream()
                  .filter(each -> each.handle().kind() == Handle.Kind.CORNER)
                  .count());
          view.undo();
          view.undo();
          assertFalse(view.bench().sketch().shape().bent(uneven().shape().given()));
        });
  }

  @Test
  void wallsHaveNamesThatStandInTheAnswer() {
    Windowed.run(
        "name",
        desk -> {
          SeatView view = open(desk);
          view.bench().begin(uneven());
          view.side().things().wall();
          desk.settle();
          Text name = in(view.side().things().fields(), Text.class, "");
          name.setText("steam chest");
          assertEquals("steam chest", view.bench().sketch().shape().walls().get(0).name());
          name.setText("");
          assertEquals("steam chest", view.bench().sketch().shape().walls().get(0).name());
          view.name().setText("lug of the left cylinder");
          assertEquals("lug of the left cylinder", view.bench().sketch().name());
        });
  }

  @Test
  void theWheelNeverChangesWhatAListHasChosen() {
    Windowed.run(
        "wheel",
        desk -> {
          SeatView view = open(desk);
          view.bench().begin(uneven());
          Event wheel = new Event();
          wheel.count = -3;
          wheel.doit = true;
          view.side().hole().method().notifyListeners(SWT.MouseWheel, wheel);
          assertFalse(wheel.doit);
        });
  }

  /** Turned like a page of a book, what is 6 mm from the left edge is 6 mm from the right one. */
  @Test
  void fromTheOtherFaceTheHandIsTheOtherAndTheThicknessIsAsked(@TempDir Path folder) {
    Windowed.run(
        "other-face",
        desk -> {
          SeatView view = open(desk);
          Sketch sketch = uneven();
          Shape shape = sketch.shape().withUnderside(Optional.of(sketch.shape().given()));
          view.bench().begin(sketch.with(shape));
          desk.settle();
          select(view.views().button(ViewChoice.OTHER_FACE), true);
          assertEquals(ViewChoice.OTHER_FACE, view.choice());
          assertTrue(view.told().get(0).startsWith("Type above the drawing how thick"));
          view.views().depth().text().setText("12 mm");
          String told = view.told().get(0);
          assertTrue(told.contains("6.00 mm (0.236 in) from the right-hand edge"), told);
          assertTrue(told.contains("4.00 mm (0.157 in) from the near edge"), told);
          assertFalse(told.contains("left-hand") || told.contains("far edge"), told);
          desk.picture(Windowed.folder().resolve("seats-other-face.png"));
          Path pdf = Windowed.folder().resolve("seats-other-face.pdf");
          view.deeds().card(pdf);
          assertTrue(Files.isRegularFile(pdf));
          assertTrue(
              String.join("", desk.said()).contains("the marking-out card"),
              desk.said().toString());
          view.bench()
              .apply(
                  Change.of(
                      "turned endways",
                      s ->
                          s.with(
                              s.hole()
                                  .with(
                                      s.hole()
                                          .practice()
                                          .with(
                                              s.hole()
                                                  .practice()
                                                  .over()
                                                  .turned(
                                                      org.fettlebench.holes.otherface.Turn
                                                          .ENDWAYS))))));
          told = view.told().get(0);
          assertTrue(told.contains("6.00 mm (0.236 in) from the left-hand edge"), told);
          assertTrue(told.contains("4.00 mm (0.157 in) from the far edge"), told);
        });
  }

  @Test
  void anArcIsNoEdgeToMarkFrom() {
    Windowed.run(
        "arc-other-face",
        desk -> {
          SeatView view = open(desk);
          Sketch sketch = uneven();
          Shape bent = Handles.bent(sketch.shape(), each -> Arcs.bulged(each, 3, 3));
          Shape shape = bent.withUnderside(Optional.of(bent.corners()));
          view.bench().begin(sketch.with(shape));
          desk.settle();
          view.views().depth().text().setText("12 mm");
          view.view(ViewChoice.OTHER_FACE);
          String told = view.told().get(0);
          // The left side is an arc, seen on the right: the other one is measured from.
          assertTrue(told.contains("14.00 mm (0.551 in) from the left-hand edge"), told);
        });
  }

  @Test
  void aThirdReadingIsTakenInAndMarginsAreTheirOwn() {
    Windowed.run(
        "readings",
        desk -> {
          SeatView view = open(desk);
          view.bench().begin(uneven());
          desk.settle();
          select(view.side().found().there(), true);
          view.side().found().pin().text().setText("2 mm");
          view.side().found().rows().read(0).text().setText("5.1 mm");
          view.side().found().rows().read(1).text().setText("14.9 mm");
          Point at = view.bench().sketch().hole().found().orElseThrow().centre();
          assertEquals(0, at.distanceMm(new Point(6.1, 4.1)), 1e-9, at.toString());
          select(in(view.side().found().rows(), Button.class, "null"), true);
          assertEquals(3, view.bench().sketch().hole().practice().readings().entries().size());
          Combo from = view.side().found().rows().from(2);
          from.select(from.indexOf("edge 4 to 1"));
          from.notifyListeners(SWT.Selection, new Event());
          view.side().found().rows().read(2).text().setText("7.06 mm");
          at = view.bench().sketch().hole().found().orElseThrow().centre();
          // 20 - 13.9 = 6.1 by one reading, 6.06 by the other: the middle.
          assertEquals(0, at.distanceMm(new Point(6.08, 4.1)), 1e-9, at.toString());
          assertTrue(view.side().found().told().contains("The readings agree"));
          view.side().found().margins().cleanUp().text().setText("0.2 mm");
          assertTrue(view.told().get(2).contains("0.20 mm (0.008 in) a side (as said"));
          view.undo();
          assertTrue(view.told().get(2).contains("common practice, no source"));
        });
  }

  @Test
  void aCureIsDrawnBeforeItIsDoneAndUndoLooksBack() {
    Windowed.run(
        "look",
        desk -> {
          SeatView view = open(desk);
          view.deeds().example();
          desk.until("cures are found", () -> !view.side().cures().cures().isEmpty());
          Sketch before = view.bench().sketch();
          var cure = view.side().cures().cures().get(0);
          select(view.side().cures().look(cure), true);
          assertEquals(before, view.bench().sketch());
          assertTrue(view.head().words().startsWith(cure.after().verdict().word()));
          assertTrue(view.told().get(0).contains("Nothing is changed yet"));
          ScreenRobot robot = new ScreenRobot(view.getDisplay());
          robot.press('z', SWT.CTRL);
          desk.until("it is drawn as it is", () -> view.bench().looking().isEmpty());
          assertEquals(before, view.bench().sketch());
          assertEquals(Verdict.FOULS, view.bench().reply().answer().orElseThrow().verdict());
        });
  }

  @Test
  void spokesAreSwitchedOff() {
    Windowed.run(
        "spokes",
        desk -> {
          SeatView view = open(desk);
          view.bench().begin(uneven());
          desk.settle();
          int with = view.canvas().drawing().orElseThrow().items().size();
          select(view.legend().box(), false);
          int without = view.canvas().drawing().orElseThrow().items().size();
          assertEquals(16, with - without, "eight spokes, each with its end");
        });
  }
}
