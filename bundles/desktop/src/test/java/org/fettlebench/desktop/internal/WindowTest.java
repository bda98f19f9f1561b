package org.fettlebench.desktop.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Desk;
import org.fettlebench.measure.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The window as a person uses it: real keys and clicks on a real display. */
class WindowTest {
  @TempDir Path data;
  private final TrialPage one = new TrialPage("one", 10);
  private final TrialPage two = new TrialPage("two", 20);

  private static String front(TrialWindow trial) {
    return trial.window.parts().area().front().map(s -> s.identity().id()).orElse("none");
  }

  @Test
  void opensOnTheFirstPageAndMakesOnlyThat() throws Exception {
    TrialWindow.run(
        "opens",
        data,
        List.of(two, one),
        trial -> {
          assertEquals("one", front(trial));
          assertEquals(List.of("create", "refresh"), one.calls);
          assertEquals(List.of(), two.calls);
        });
    assertEquals(List.of("create", "refresh", "close"), one.calls);
  }

  @Test
  void altAndADigitGoesToAPageAndTheNextStartReturnsThere() throws Exception {
    TrialWindow.run(
        "alt-digit",
        data,
        List.of(one, two),
        trial -> {
          trial.robot.press('2', SWT.ALT);
          trial.robot.pumpUntil("page two is in front", () -> front(trial).equals("two"));
          assertTrue(two.field.isFocusControl(), "the page has the keyboard");
        });
    TrialPage again = new TrialPage("two", 20);
    TrialWindow.run(
        "remembered",
        data,
        List.of(new TrialPage("one", 10), again),
        trial -> assertEquals("two", front(trial)));
  }

  @Test
  void arrowsInTheListOfPagesGoThrough() throws Exception {
    TrialWindow.run(
        "arrows",
        data,
        List.of(one, two),
        trial -> {
          trial.window.parts().list().setFocus();
          trial.robot.press(SWT.ARROW_DOWN);
          trial.robot.pumpUntil("page two is in front", () -> front(trial).equals("two"));
          trial.robot.press(SWT.ARROW_UP);
          trial.robot.pumpUntil("page one is in front", () -> front(trial).equals("one"));
          trial.robot.press(SWT.CR);
          trial.robot.pumpUntil("the page has the keyboard", one.field::isFocusControl);
        });
  }

  @Test
  void aClickInTheListOfPagesGoesThere() throws Exception {
    TrialWindow.run(
        "click",
        data,
        List.of(one, two),
        trial -> {
          trial.robot.click(trial.window.parts().list(), 40, 38 + 19);
          trial.robot.pumpUntil("page two is in front", () -> front(trial).equals("two"));
          trial.robot.pumpUntil("the page has the keyboard", two.field::isFocusControl);
        });
  }

  @Test
  void pagesComeAndGoWithTheirBundles() throws Exception {
    TrialWindow.run(
        "come-and-go",
        data,
        List.of(one),
        trial -> {
          Thread bundle = new Thread(() -> trial.registry.add(two));
          bundle.start();
          trial.robot.pumpUntil(
              "page two has come", () -> trial.window.parts().area().slots().size() == 2);
          assertEquals("one", front(trial), "nothing moves under the person");
          trial.window.bring(1);
          trial.registry.remove(two);
          trial.robot.pumpUntil(
              "page two has gone", () -> trial.window.parts().area().slots().size() == 1);
          assertEquals("one", front(trial));
          assertTrue(two.calls.contains("close"));
          assertTrue(trial.window.status().said().contains("Page two"));
          bundle.join();
        });
  }

  @Test
  void aPageThatGoesWithTheKeyboardInItDoesNotPassItRound() throws Exception {
    AtomicInteger focused = new AtomicInteger();
    TrialPage leaving =
        new TrialPage("leaving", 5) {
          @Override
          public Control create(Composite parent, Desk newDesk) {
            Composite page = (Composite) super.create(parent, newDesk);
            new Text(page, SWT.BORDER).addListener(SWT.FocusIn, e -> focused.incrementAndGet());
            return page;
          }
        };
    TrialWindow.run(
        "passing-round",
        data,
        List.of(leaving, one),
        trial -> {
          assertTrue(leaving.field.isFocusControl());
          trial.registry.remove(leaving);
          trial.robot.pumpUntil(
              "the page has gone", () -> trial.window.parts().area().slots().size() == 1);
          assertEquals(0, focused.get());
          assertTrue(leaving.field.isDisposed());
        });
  }

  @Test
  void theFindBoxTakesAPersonToTheThing() throws Exception {
    TrialWindow.run(
        "find",
        data,
        List.of(one, two),
        trial -> {
          trial.robot.press('f', SWT.MOD1);
          trial.robot.pumpUntil(
              "the find box has the keyboard", trial.window.parts().find().field()::isFocusControl);
          trial.robot.type("pump");
          trial.robot.pumpUntil(
              "both answers are there", () -> trial.window.parts().find().answers().size() == 2);
          trial.robot.press(SWT.ARROW_DOWN);
          trial.robot.press(SWT.CR);
          trial.robot.pumpUntil("the thing is shown", () -> two.calls.contains("show body"));
          assertEquals("two", front(trial));
          assertEquals("", trial.window.parts().find().field().getText());
        });
  }

  @Test
  void controlKReachesTheFindBoxToo() throws Exception {
    TrialWindow.run(
        "find-k",
        data,
        List.of(one),
        trial -> {
          trial.robot.press('k', SWT.MOD1);
          trial.robot.pumpUntil(
              "the find box has the keyboard", trial.window.parts().find().field()::isFocusControl);
        });
  }

  @Test
  void theUnitSwitchReachesEveryPageAndIsRemembered() throws Exception {
    TrialWindow.run(
        "unit",
        data,
        List.of(one, two),
        trial -> {
          assertTrue(one.length.getText().startsWith("3.97 mm"), one.length.getText());
          trial.robot.press('u', SWT.MOD1);
          trial.robot.pumpUntil(
              "lengths are in inches", () -> one.length.getText().startsWith("0.156 in"));
          assertEquals(LengthUnit.INCH, trial.window.unit());
        });
    assertEquals("in", new Memory(data.resolve("desktop.properties")).get("unit", ""));
  }

  @Test
  void whatWasDoneIsSaidAndUndone() throws Exception {
    AtomicInteger taken = new AtomicInteger(6);
    TrialWindow.run(
        "undo",
        data,
        List.of(one),
        trial -> {
          one.desk.say("Took 6 from drawer 3.", () -> taken.set(0));
          assertEquals("Took 6 from drawer 3.", trial.window.status().said());
          assertTrue(trial.window.status().offersUndo());
          trial.robot.press('z', SWT.MOD1);
          trial.robot.pumpUntil("it is taken back", () -> taken.get() == 0);
          assertEquals("Undone: Took 6 from drawer 3.", trial.window.status().said());
          assertFalse(trial.window.status().offersUndo());
          trial.window.undo();
          assertEquals("There is nothing to undo.", trial.window.status().said());
        });
  }

  @Test
  void longWorkIsShownAndCanBeStopped() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch interrupted = new CountDownLatch(1);
    TrialWindow.run(
        "stop",
        data,
        List.of(one),
        trial -> {
          one.desk.work(
              "Checking the kit",
              () -> {
                begun.countDown();
                try {
                  return new CountDownLatch(1).await(30, java.util.concurrent.TimeUnit.SECONDS);
                } finally {
                  interrupted.countDown();
                }
              },
              done -> one.calls.add("done"));
          begun.await();
          trial.robot.pumpUntil(
              "it is shown", () -> trial.window.status().running().startsWith("Checking the kit"));
          trial.robot.press('.', SWT.MOD1);
          trial.robot.pumpUntil("it has stopped", () -> interrupted.getCount() == 0);
          assertEquals("Stopped: Checking the kit.", trial.window.status().said());
          assertEquals("", trial.window.status().running());
          assertFalse(one.calls.contains("done"));
          assertEquals(List.of(), trial.faults, "stopping is no fault");
        });
  }

  @Test
  void failedWorkIsComplainedOfInWords() throws Exception {
    TrialWindow.run(
        "failed-work",
        data,
        List.of(one),
        trial -> {
          one.desk.work("Reading pump.kit.toml", WindowTest::unreadable, done -> {});
          trial.robot.pumpUntil("it is told", () -> !trial.window.complaints().shown().isEmpty());
          assertEquals(
              "Reading pump.kit.toml: line 3 has no thread.", trial.window.complaints().shown());
          assertEquals(List.of(), trial.faults, "words for a person are no fault of the module");
          trial.robot.press(SWT.ESC);
          trial.robot.pumpUntil(
              "Esc takes it away", () -> trial.window.complaints().shown().isEmpty());
        });
  }

  private static String unreadable() throws java.io.IOException {
    throw new java.io.IOException("line 3 has no thread");
  }

  @Test
  void aPageThatThrowsIsReportedAndHarmsNoOther() throws Exception {
    TrialPage bad =
        new TrialPage("bad", 5) {
          @Override
          public Control create(Composite parent, Desk newDesk) {
            throw new IllegalStateException("no drawing board");
          }

          @Override
          public List<Found> find(String typed) {
            throw new IllegalStateException("lost");
          }
        };
    TrialWindow.run(
        "throwing",
        data,
        List.of(bad, one),
        trial -> {
          assertEquals("bad", front(trial));
          assertTrue(trial.window.parts().area().front().orElseThrow().failing());
          assertEquals(List.of("showing the page Page bad: no drawing board"), trial.faults);
          assertEquals(1, trial.window.answers("pump").size(), "the other page still answers");
          assertEquals(1, trial.window.answers("pump").size());
          assertEquals(2, trial.faults.size(), "a failing find is reported once: " + trial.faults);
          trial.window.bring(1);
          assertEquals(List.of("create", "refresh"), one.calls);
        });
  }

  @Test
  void aPageThatThrowsWhileRefreshedMayBeTriedAgain() throws Exception {
    AtomicInteger tries = new AtomicInteger();
    TrialPage page =
        new TrialPage("shy", 5) {
          @Override
          public void refresh() {
            if (tries.incrementAndGet() == 1) {
              throw new NoClassDefFoundError("club/Rule");
            }
          }
        };
    TrialWindow.run(
        "try-again",
        data,
        List.of(page),
        trial -> {
          PageSlot slot = trial.window.parts().area().front().orElseThrow();
          assertTrue(slot.failing());
          trial.robot.press('t', SWT.ALT);
          trial.robot.pumpUntil("the page stands", () -> !slot.failing());
          assertEquals(2, tries.get());
        });
  }

  @Test
  void aFailureOnTheWindowsThreadIsToldAndWorkGoesOn() throws Exception {
    TrialWindow.run(
        "unexpected",
        data,
        List.of(one),
        trial -> {
          one.field.addListener(
              SWT.Modify,
              event -> {
                throw new IllegalStateException("the pencil broke");
              });
          one.field.setText("x");
          assertTrue(
              trial.window.complaints().shown().contains("the pencil broke"),
              trial.window.complaints().shown());
          assertEquals(List.of("answering mouse or keyboard: the pencil broke"), trial.faults);
          trial.window.status().say("still here");
          assertEquals("still here", trial.window.status().said());
        });
  }

  @Test
  void largerTextAndTheDarkThemeReachAPageThatStands() throws Exception {
    TrialWindow.run(
        "look",
        data,
        List.of(one),
        trial -> {
          int before = one.length.getFont().getFontData()[0].getHeight();
          trial.window.textSize(150);
          int after = one.length.getFont().getFontData()[0].getHeight();
          assertEquals(before * 1.5, after, 0.5);
          assertEquals(255, one.field.getBackground().getRed(), "the platform's own white");
          trial.window.dark(true);
          trial.robot.pumpUntil(
              "the platform's own field is dark", () -> one.field.getBackground().getRed() < 100);
          assertEquals(one.desk.look().ink(), one.length.getForeground());
          assertTrue(one.length.getForeground().getRed() > 200, "ink is light now");
          assertEquals(List.of("create", "refresh"), one.calls, "the page was not made anew");
        });
  }

  @Test
  void theKeyboardReachesEveryPartOfTheWindow() throws Exception {
    TrialWindow.run(
        "f6",
        data,
        List.of(one),
        trial -> {
          WindowParts parts = trial.window.parts();
          trial.robot.press(SWT.F6);
          trial.robot.pumpUntil("find box", parts.find().field()::isFocusControl);
          trial.robot.press(SWT.F6);
          trial.robot.pumpUntil("list of pages", parts.list()::isFocusControl);
          trial.robot.press(SWT.F6);
          trial.robot.pumpUntil("page", one.field::isFocusControl);
          trial.robot.press('p', SWT.MOD1);
          trial.robot.pumpUntil("the page prints", () -> one.calls.contains("print"));
        });
  }

  @Test
  void goingToAPageThatIsNotThereIsTold() throws Exception {
    TrialWindow.run(
        "not-there",
        data,
        List.of(one),
        trial -> {
          one.desk.go(new org.fettlebench.desktop.Page.Found("away", "k", "a tap", ""));
          assertTrue(trial.window.complaints().shown().contains("a tap"));
          assertEquals(Optional.of("one"), Optional.of(front(trial)));
        });
  }
}
