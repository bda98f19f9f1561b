package org.fettlebench.desktop.threads.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Page;
import org.fettlebench.desktop.widgets.DrawingCanvas;
import org.fettlebench.desktop.widgets.LongList;
import org.fettlebench.measure.LengthUnit;
import org.junit.jupiter.api.Test;

/** The face of a thread and its hole. */
class ThreadsPageTest extends PageTrial {
  @Test
  void theAnswerNamesADrillThatIsHeldAndWhereItIs() throws IOException {
    run(
        robot -> {
          type("2ba");
          assertTrue(
              says("2 BA: drill No 22 (3.99 mm) leaves 73 % of thread"),
              "near spellings are understood");
          assertTrue(says("It is in Drill stand / "));
          assertTrue(says("Wanted is 75 %, as wall charts take it"));
        });
  }

  @Test
  void anUnknownThreadBringsNearMissesAsButtons() throws IOException {
    run(
        robot -> {
          type("2 BX");
          assertTrue(says("is no thread that is known"));
          find(root, Button.class, "2 BA")
              .orElseThrow()
              .notifyListeners(SWT.Selection, new Event());
          assertTrue(says("2 BA: drill"));
        });
  }

  @Test
  void theArrowKeysGoAlongTheRuleAndTheDrawingFollows() throws IOException {
    run(
        robot -> {
          DrawingCanvas profile = find(root, DrawingCanvas.class, "").orElseThrow();
          String before = profile.drawing().orElseThrow().title();
          find(root, DrillRule.class, "").orElseThrow().setFocus();
          robot.press(SWT.ARROW_RIGHT);
          assertFalse(before.equals(profile.drawing().orElseThrow().title()), before);
          robot.press(SWT.ARROW_LEFT);
          assertEquals(before, profile.drawing().orElseThrow().title());
        });
  }

  @Test
  void theWholeCatalogueIsOneSwitchAway() throws IOException {
    run(
        robot -> {
          LongList<?> list = find(root, LongList.class, "").orElseThrow();
          int held = list.model().size();
          Button all = find(root, Button.class, "not held too").orElseThrow();
          all.setSelection(true);
          all.notifyListeners(SWT.Selection, new Event());
          assertTrue(list.model().size() > held, held + " held");
        });
  }

  @Test
  void aWrongPerCentIsRefusedWithTheRemedyAndTheRestStays() throws IOException {
    run(
        robot -> {
          Text percent = find(root, Text.class, "usual").orElseThrow();
          percent.setText("120");
          assertTrue(says("outside above 0 to 100"));
          percent.setText("50");
          assertTrue(says("Wanted is 50 %, as asked"));
        });
  }

  @Test
  void figuresFollowTheUnit() throws IOException {
    run(
        robot -> {
          assertTrue(says("drill No 22 (3.99 mm) leaves"));
          desk.unit(LengthUnit.INCH);
          assertTrue(says("drill No 22 (0.157 in) leaves"));
        });
  }

  @Test
  void theFindBoxKnowsThreadsAndDrills() throws IOException {
    assertEquals("2 BA", page.find("2ba").get(0).key());
    Page.Found drill = page.find("No 22").get(0);
    assertEquals("drill No 22", drill.key());
    assertEquals("drill, 3.99 mm (0.157 in)", drill.detail());
    run(
        robot -> {
          page.show(drill);
          assertTrue(desk.said().get(0).startsWith("No 22 is 3.99 mm"), desk.said().toString());
          page.show(page.find("M6 x 0.75").get(0));
          assertTrue(says("M6 x 0.75: drill"));
        });
  }

  @Test
  void theLastThreadIsRemembered() throws IOException {
    run(
        robot -> {
          type("4 BA");
          assertEquals("4 BA", desk.remembered("threads", "thread", ""));
        });
  }

  @Test
  void aLeftHandIsSaidAndAKindNotCarriedIsNamed() throws IOException {
    run(
        robot -> {
          type("M6 LH");
          assertTrue(says("M6: drill"));
          assertTrue(says("Left-hand: the tap must be so too"));
          assertEquals("M6 LH", desk.remembered("threads", "thread", ""));
          type("Rc 1/4");
          assertTrue(says("taper pipe threads (ISO 7-1"));
          type("M6");
          assertFalse(says("Left-hand"));
        });
  }
}
