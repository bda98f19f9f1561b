package org.fettlebench.desktop.castings.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.CastingView;
import org.fettlebench.castings.Placing;
import org.fettlebench.desktop.widgets.trial.TrialDesk;
import org.fettlebench.desktop.widgets.trial.Windowed;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.testkit.ScreenRobot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A person at the page, with real keys and a real pointer. */
class CastingPageTest {
  private final CastingPage page = RealPage.page();

  private CastingSheet open(TrialDesk desk) {
    return RealPage.open(desk, page, 1060, 690);
  }

  private static Deeds deeds(TrialDesk desk, CastingSheet sheet) {
    Deeds deeds = new Deeds(desk, sheet.bench(), RealPage.FILES, RealPage::cards);
    deeds.draws(sheet.canvas()::drawing, sheet.canvas()::picture);
    return deeds;
  }

  private static void type(ScreenRobot robot, Text field, String words) {
    robot.click(field);
    robot.press('a', SWT.CTRL);
    robot.type(words);
  }

  /** Types into a figure's field and waits until all of it was taken. */
  private static void typeFigure(
      TrialDesk desk, ScreenRobot robot, Text field, String words, Supplier<Entry> taken) {
    type(robot, field, words);
    Entry wanted = Entry.read(words, desk.unit());
    desk.until(words + " is taken", () -> taken.get().equals(wanted));
  }

  private static double spare(CastingSheet sheet) {
    return sheet.bench().reply().answer().map(Placing::spareMm).orElse(Double.NaN);
  }

  /** Types a plate 12 mm thick out of a rough one of 14 mm: 1 off each side, 0.4 to spare. */
  private static void typePlate(TrialDesk desk, CastingSheet sheet, ScreenRobot robot) {
    type(robot, sheet.forAll().cut().text(), "0.5");
    type(robot, sheet.forAll().mayBeOut().text(), "0.1");
    type(robot, sheet.table().line(0).field(0), "face");
    robot.press(SWT.TAB);
    robot.type("d");
    desk.until("it looks down", () -> sheet.bench().sketch().row(0).looks() == Looks.DOWN);
    robot.press(SWT.TAB);
    robot.type("0");
    robot.press(SWT.TAB);
    robot.type("0");
    desk.until("there is a second line", () -> sheet.table().count() == 2);
    // The way opposite is offered; Enter in the first line went down to it.
    assertEquals(Looks.UP, sheet.bench().sketch().row(1).looks());
    type(robot, sheet.table().line(1).field(1), "12");
    robot.press(SWT.TAB);
    robot.type("14");
    desk.until("it is answered", () -> Math.abs(spare(sheet) - 0.4) < 1e-6);
  }

  @Test
  void fromTheFirstFigureToTheCard(@TempDir Path folder) {
    Windowed.run(
        "casting-to-card",
        desk -> {
          CastingSheet sheet = open(desk);
          ScreenRobot robot = new ScreenRobot(sheet.getDisplay());
          desk.until(
              "the first field has the keyboard",
              () -> sheet.table().line(0).field(0).isFocusControl());
          typePlate(desk, sheet, robot);
          assertEquals(0.4, spare(sheet), 1e-6);
          assertTrue(sheet.answer().words().startsWith("cleans up\n0.40 mm (0.016 in) to spare"));
          assertEquals("1.00|0.40", sheet.table().line(1).answer());
          assertEquals(CastingView.FRONT, sheet.view());
          assertTrue(sheet.canvas().drawing().orElseThrow().title().contains("cleans up"));
          Deeds deeds = deeds(desk, sheet);
          for (String ending : List.of("svg", "png", "pdf")) {
            Path picture = folder.resolve("plate." + ending);
            deeds.picture(picture);
            String head = ending.equals("svg") ? "<svg" : ending.toUpperCase(java.util.Locale.ROOT);
            assertTrue(read(picture).contains(head), ending);
          }
          deeds.card(folder.resolve("card.pdf"));
          assertTrue(read(folder.resolve("card.pdf")).startsWith("%PDF"));
          Path saved = folder.resolve("plate.casting.toml");
          deeds.save(saved);
          deeds.fresh();
          assertEquals(Sketch.EMPTY, sheet.bench().sketch());
          deeds.open(saved);
          assertEquals(0.4, spare(sheet), 1e-6);
          assertEquals(List.of(), desk.complaints());
        });
  }

  private static String read(Path file) {
    try {
      return new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  @Test
  void whatIsWronglyTypedStaysAndSaysWhyAndComesBackRight() {
    Windowed.run(
        "casting-bad-input",
        desk -> {
          CastingSheet sheet = open(desk);
          ScreenRobot robot = new ScreenRobot(sheet.getDisplay());
          typePlate(desk, sheet, robot);
          for (int column = 1; column <= FaceLine.LAST; column++) {
            Text field = sheet.table().line(1).field(column);
            String before = field.getText();
            type(robot, field, "1,200x");
            desk.until(
                "it is refused",
                () -> sheet.bench().reply().wrong() && field.getText().equals("1,200x"));
            assertTrue(
                sheet.answer().words().startsWith("cannot be\nup, "), sheet.answer().words());
            String name = "face " + column;
            type(robot, sheet.table().line(0).field(0), name);
            desk.until("it is named", () -> sheet.bench().sketch().row(0).name().equals(name));
            assertEquals("1,200x", field.getText(), "other typing does not touch it");
            type(robot, field, before);
            if (before.isEmpty()) {
              robot.press(SWT.BS);
            }
            desk.until("it is whole again", () -> sheet.bench().reply().answer().isPresent());
          }
          type(robot, sheet.table().line(1).field(3), "-1");
          desk.until("a cut below nothing is refused", () -> sheet.bench().reply().wrong());
          assertTrue(sheet.answer().words().contains("least cut -1.0 mm is outside 0"));
        });
  }

  @Test
  void everythingIsUndoneAndDoneAgain() {
    Windowed.run(
        "casting-undo",
        desk -> {
          CastingSheet sheet = open(desk);
          ScreenRobot robot = new ScreenRobot(sheet.getDisplay());
          typePlate(desk, sheet, robot);
          Sketch whole = sheet.bench().sketch();
          while (sheet.bench().canUndo()) {
            Sketch before = sheet.bench().sketch();
            robot.press('z', SWT.CTRL);
            desk.until("a step is undone", () -> !sheet.bench().sketch().equals(before));
          }
          assertEquals(Sketch.EMPTY, sheet.bench().sketch());
          assertEquals("", sheet.table().line(0).field(0).getText());
          while (sheet.bench().canRedo()) {
            Sketch before = sheet.bench().sketch();
            robot.press('y', SWT.CTRL);
            desk.until("a step is done again", () -> !sheet.bench().sketch().equals(before));
          }
          assertEquals(whole, sheet.bench().sketch());
          assertEquals("12", sheet.table().line(1).field(1).getText());
        });
  }

  /** The rough back is lowered to 12.8: 0.4 off each side is 0.2 short of 0.5 and 0.1. */
  @Test
  void whatWillNotCleanUpSaysWhatGives() {
    Windowed.run(
        "casting-short",
        desk -> {
          CastingSheet sheet = open(desk);
          ScreenRobot robot = new ScreenRobot(sheet.getDisplay());
          typePlate(desk, sheet, robot);
          typeFigure(
              desk,
              robot,
              sheet.table().line(1).field(2),
              "12.8",
              () -> sheet.bench().sketch().row(1).measured());
          assertEquals(-0.2, spare(sheet), 1e-6);
          String said = sheet.answer().words();
          assertTrue(said.startsWith("will not clean up\nby 0.20 mm (0.008 in)"), said);
          assertTrue(said.contains("gives 0.40 mm (0.016 in) (deeper)"), said);
          assertTrue(said.contains("a cut of 0.30 mm"), said);
        });
  }

  @Test
  void theExampleIsOneClickAwayAndItsViewsAndSpotsAreThere() {
    Windowed.run(
        "casting-example",
        desk -> {
          CastingSheet sheet = open(desk);
          deeds(desk, sheet).example();
          desk.settle();
          ScreenRobot robot = new ScreenRobot(sheet.getDisplay());
          for (CastingView view : CastingView.values()) {
            robot.click(sheet.viewButtonOf(view));
            desk.until("the view is drawn", () -> sheet.view() == view);
            assertTrue(
                sheet.canvas().drawing().orElseThrow().title().contains(view.words()),
                view.words());
          }
          double before = spare(sheet);
          robot.click(sheet.table().line(2).field(0));
          desk.until("its spots are shown", () -> sheet.bench().row() == 2);
          typeFigure(
              desk,
              robot,
              sheet.spots().at(0, 0).text(),
              "61.3",
              () -> sheet.bench().sketch().row(2).readings().get(0).x());
          assertTrue(spare(sheet) < before - 0.01, "less is to spare");
          robot.click(sheet.forAll().turn(Axis.Y));
          desk.until(
              "it is not turned any more", () -> sheet.bench().sketch().moves().turns().isEmpty());
          desk.unit(LengthUnit.INCH);
          desk.settle();
          assertEquals("2.4134", sheet.spots().at(0, 0).text().getText());
          robot.press(SWT.DEL, SWT.CTRL);
          desk.until("a line is gone", () -> sheet.bench().sketch().rows().size() == 6);
          assertFalse(sheet.bench().sketch().names().contains("right end"));
          assertEquals("", read(desk));
        });
  }

  private static String read(TrialDesk desk) {
    return String.join("\n", desk.complaints());
  }

  @Test
  void aFaultyFileIsToldWithPlaceValueAndRemedyAndChangesNothing(@TempDir Path folder)
      throws IOException {
    Path faulty = folder.resolve("faulty.casting.toml");
    Files.writeString(
        faulty,
        Example.text().replace("towards = \"down\"", "towards = \"under\"").replace("60 mm", "60"));
    Windowed.run(
        "casting-faulty",
        desk -> {
          CastingSheet sheet = open(desk);
          deeds(desk, sheet).open(faulty);
          assertEquals(Sketch.EMPTY, sheet.bench().sketch());
          String said = read(desk);
          assertTrue(said.contains("faulty.casting.toml"), said);
          assertTrue(said.contains("under") && said.contains("left, right"), said);
          assertTrue(said.contains("60"), said);
        });
  }

  @Test
  void workInHandIsThereAgainAtTheNextStart() {
    Windowed.run(
        "casting-again",
        desk -> {
          CastingSheet sheet = open(desk);
          ScreenRobot robot = new ScreenRobot(sheet.getDisplay());
          type(robot, sheet.table().line(0).field(1), "4o");
          page.close();
          sheet.dispose();
          CastingSheet again = (CastingSheet) page.create(desk.shell(), desk);
          desk.shell().layout(true, true);
          desk.settle();
          assertEquals("4o", again.table().line(0).field(1).getText());
          assertTrue(again.bench().reply().wrong());
        });
  }
}
