package org.fettlebench.desktop.castings.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.castings.CastingView;
import org.fettlebench.desktop.widgets.trial.TrialDesk;
import org.fettlebench.desktop.widgets.trial.Windowed;
import org.fettlebench.testkit.ScreenRobot;
import org.junit.jupiter.api.Test;

/** A bore typed from nothing, by the keyboard alone but for going to a field. */
class RoundLineTest {
  private static void type(ScreenRobot robot, Text field, String words) {
    robot.click(field);
    robot.press('a', SWT.CTRL);
    robot.type(words);
  }

  private static CastingSheet open(TrialDesk desk) {
    return RealPage.open(desk, RealPage.page(), 1060, 690);
  }

  /** Chooses a bore along y by its letter: bores begin with b, along x first. */
  private static void chooseBore(TrialDesk desk, CastingSheet sheet, ScreenRobot robot) {
    robot.click(sheet.table().line(0).field(0));
    robot.press(SWT.TAB);
    robot.type("b");
    desk.until("a bore", () -> sheet.bench().sketch().row(0).looks() == Looks.BORE_X);
    robot.type("b");
    desk.until("along y", () -> sheet.bench().sketch().row(0).looks() == Looks.BORE_Y);
  }

  /** A core of 20 mm for a bore of 24, its centre 0.6 off: moved along, 2 comes off each side. */
  @Test
  void aBoreIsTypedAndIsPutInTheMiddleOfItsCore() {
    Windowed.run(
        "casting-bore",
        desk -> {
          CastingSheet sheet = open(desk);
          ScreenRobot robot = new ScreenRobot(sheet.getDisplay());
          type(robot, sheet.forAll().cut().text(), "0.5");
          type(robot, sheet.forAll().mayBeOut().text(), "0.1");
          chooseBore(desk, sheet, robot);
          robot.press(SWT.TAB);
          robot.type("24");
          robot.press(SWT.TAB);
          robot.type("20");
          desk.until(
              "its centre is asked for",
              () -> sheet.bench().reply().next().contains("centre x on the drawing is missing"));
          type(robot, sheet.spots().centre(0).text(), "0");
          type(robot, sheet.spots().centre(2).text(), "0");
          type(robot, sheet.spots().at(0, 0).text(), "0.6");
          type(robot, sheet.spots().at(0, 2).text(), "0");
          desk.until("it is answered", () -> sheet.bench().reply().answer().isPresent());
          var placing = sheet.bench().reply().answer().orElseThrow();
          assertEquals(1.4, placing.spareMm(), 1e-5);
          assertEquals(0.6, placing.shift().xMm(), 1e-5);
          assertEquals(CastingView.FRONT, sheet.view(), "from its end");
          assertTrue(sheet.answer().words().startsWith("cleans up"), sheet.answer().words());
          sheet.bench().choose(0);
          robot.press('c', SWT.CTRL, SWT.SHIFT);
          desk.until("the table is copied", () -> desk.said().contains("Table copied."));
          Clipboard clipboard = new Clipboard(sheet.getDisplay());
          String copied = (String) clipboard.getContents(TextTransfer.getInstance());
          clipboard.dispose();
          assertTrue(copied.contains("bore\tbore y\t24\t0.5\t0.1\t2.00\t2.00\t1.40"), copied);
        });
  }

  @Test
  void aDiameterBelowNothingIsRefusedAndStays() {
    Windowed.run(
        "casting-bore-bad",
        desk -> {
          CastingSheet sheet = open(desk);
          ScreenRobot robot = new ScreenRobot(sheet.getDisplay());
          Sketch whole = CastingPicturesTest.sketch("cylinder");
          sheet.bench().apply(org.fettlebench.desktop.widgets.Change.of("opened", before -> whole));
          desk.settle();
          // It may stand below what is seen, so the keyboard goes there.
          sheet.table().go(4, 2);
          robot.type("-3");
          desk.until("it is refused", () -> sheet.bench().reply().wrong());
          assertEquals("-3", sheet.table().line(4).field(2).getText());
          assertTrue(
              sheet.answer().words().contains("rough diameter -3.0 mm is outside 0"),
              sheet.answer().words());
          assertFalse(sheet.bench().reply().answer().isPresent());
        });
  }
}
