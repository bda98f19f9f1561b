package org.fettlebench.desktop.kits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Shell;
import org.fettlebench.desktop.Page;
import org.fettlebench.desktop.widgets.trial.TrialDesk;
import org.fettlebench.desktop.widgets.trial.Windowed;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.fits.Verdict;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.testkit.ScreenRobot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KitPageTest {
  private final Club club = Club.demo();
  private final KitPage page = club.page();

  private KitView open(TrialDesk desk) {
    return club.open(desk, page, 1060, 690);
  }

  private static String joint(KitView view) {
    return view.panel().shown().orElseThrow().joint().name();
  }

  @Test
  void opensOnTheWorstJoint() {
    Windowed.run(
        "opens-on-worst",
        desk -> {
          KitView view = open(desk);
          assertEquals("delivery flange", joint(view));
          assertEquals(Verdict.FOULS, view.panel().shown().orElseThrow().verdict().orElseThrow());
          assertTrue(view.head().summary().startsWith("Kestrel bench pump: of 28 joints"));
        });
  }

  @Test
  void opensOnTheJointLeftLastTime() {
    Windowed.run(
        "opens-on-last",
        desk -> {
          desk.remember(KitPage.ID, "joint", "gland");
          assertEquals("gland", joint(open(desk)));
        });
  }

  @Test
  void arrowsInTheListChangeTheDrawing() {
    Windowed.run(
        "arrows",
        desk -> {
          KitView view = open(desk);
          Drawing first = view.panel().canvas().drawing().orElseThrow();
          page.focus();
          desk.until("the list has the keyboard", view.joints().list().table()::isFocusControl);
          new ScreenRobot(desk.shell().getDisplay()).press(SWT.ARROW_DOWN);
          desk.until("the next joint is shown", () -> !joint(view).equals("delivery flange"));
          assertEquals("valve chest cover", joint(view));
          assertFalse(first.equals(view.panel().canvas().drawing().orElseThrow()));
        });
  }

  @Test
  void triesACureOnTheDrawingAndGoesBack() {
    Windowed.run(
        "tries-cure",
        desk -> {
          KitView view = open(desk);
          view.showJoint("barrel flange");
          Drawing before = view.panel().canvas().drawing().orElseThrow();
          view.panel().choose(1);
          assertEquals(
              Choice.cures(view.panel().shown().orElseThrow()).get(0),
              view.panel().choice().orElseThrow());
          assertFalse(before.equals(view.panel().canvas().drawing().orElseThrow()));
          assertTrue(desk.said().get(desk.said().size() - 1).contains("with: Use 2 BA"));
          view.panel().choose(0);
          assertEquals(Optional.empty(), view.panel().choice());
          assertEquals(before, view.panel().canvas().drawing().orElseThrow());
        });
  }

  @Test
  void choosesCuresByTheKeyboard() {
    Windowed.run(
        "cure-by-key",
        desk -> {
          KitView view = open(desk);
          view.showJoint("barrel flange");
          desk.settle();
          new ScreenRobot(desk.shell().getDisplay()).press('2', SWT.CTRL);
          desk.until("the second cure is tried", () -> view.panel().choice().isPresent());
          assertEquals(
              Choice.cures(view.panel().shown().orElseThrow()).get(1),
              view.panel().choice().orElseThrow());
        });
  }

  @Test
  void checksAgainWhenTheStockChanged() {
    Windowed.run(
        "stock-changed",
        desk -> {
          KitView view = open(desk);
          view.showJoint("barrel flange");
          view.panel().choose(1);
          club.lines = List.of();
          club.stockRevision++;
          page.refresh();
          assertEquals("barrel flange", joint(view));
          assertTrue(view.panel().shown().orElseThrow().substitutes().isEmpty());
        });
  }

  @Test
  void leavesThePageAloneWhenNothingChanged() {
    Windowed.run(
        "nothing-changed",
        desk -> {
          KitView view = open(desk);
          var before = view.report().orElseThrow();
          page.refresh();
          assertSame(before, view.report().orElseThrow());
        });
  }

  @Test
  void narrowsByTyping() {
    Windowed.run(
        "narrows",
        desk -> {
          KitView view = open(desk);
          view.joints().filter().type("crank fouls");
          assertEquals(1, view.joints().list().model().size());
          page.show(page.find("gland").get(0));
          assertEquals("gland", joint(view));
          assertEquals(28, view.joints().list().model().size());
        });
  }

  @Test
  void findsJointsAndKits() {
    Windowed.run(
        "finds",
        desk -> {
          open(desk);
          List<Page.Found> found = page.find("6ba");
          assertEquals(
              List.of("drip tray", "eccentric strap"),
              found.stream().map(Page.Found::title).toList());
          assertEquals(Club.DEMO, page.find("kestrel").get(0).title());
          assertTrue(page.find(" ").isEmpty());
        });
  }

  @Test
  void showsAndCopiesTheShortList() {
    Windowed.run(
        "short-list",
        desk -> {
          KitView view = open(desk);
          view.showShortList(true);
          desk.settle();
          assertSame(view.shorts(), view.front());
          assertEquals(
              view.report().orElseThrow().shortages().size(), view.shorts().list().model().size());
          view.shorts().list().table().deselectAll();
          view.shorts().list().copy();
          Clipboard clipboard = new Clipboard(view.getDisplay());
          String copied = (String) clipboard.getContents(TextTransfer.getInstance());
          clipboard.dispose();
          assertTrue(copied.contains("6.6 mm drill"), copied);
          desk.picture(Windowed.folder().resolve("kits-short-list.png"));
        });
  }

  @Test
  void followsTheUnit() {
    Windowed.run(
        "unit",
        desk -> {
          KitView view = open(desk);
          Drawing millimetres = view.panel().canvas().drawing().orElseThrow();
          assertEquals("Allowance, mm", view.joints().list().table().getColumn(1).getText());
          desk.unit(LengthUnit.INCH);
          assertEquals("Allowance, in", view.joints().list().table().getColumn(1).getText());
          assertFalse(millimetres.equals(view.panel().canvas().drawing().orElseThrow()));
          String why = view.panel().shown().orElseThrow().findings().get(0).sentence();
          assertTrue(why.contains("lacks 0.013 in (0.34 mm)"), why);
        });
  }

  @Test
  void offersADemoWhenThereIsNoKit() {
    Windowed.run(
        "empty",
        desk -> {
          Club bare = new Club();
          KitPage first = bare.page();
          first.setDemo(bare.demoClub());
          KitView view = bare.open(desk, first, 1060, 690);
          assertTrue(view.front() instanceof EmptyKits);
          desk.picture(Windowed.folder().resolve("kits-empty.png"));
          view.deeds().lookRound();
          assertEquals(Club.DEMO, first.kit().orElseThrow());
          assertEquals("delivery flange", joint(view));
        });
  }

  @Test
  void opensTheSeatOfTheJointShown() {
    Windowed.run(
        "opens-seat",
        desk -> {
          KitView view = open(desk);
          view.showJoint("barrel flange");
          page.seat();
          assertEquals(
              List.of(
                  new Page.Found(
                      "seats",
                      "joint:" + Club.DEMO + "/barrel flange",
                      "barrel flange",
                      "seat of a joint")),
              desk.gone());
        });
  }

  @Test
  void removesAKitAndPutsItBack() {
    Windowed.run(
        "removes",
        desk -> {
          KitView view = open(desk);
          view.deeds().remove();
          assertTrue(view.front() instanceof EmptyKits);
          desk.undo();
          assertEquals(Club.DEMO, page.kit().orElseThrow());
        });
  }

  @Test
  void showsEveryFaultAndKeepsNothing(@TempDir Path folder) {
    Windowed.run(
        "faulty",
        desk -> {
          KitView view = open(desk);
          String kit =
              Club.text("bench-pump.kit.toml")
                  .replace("count = 4", "count = 0")
                  .replace("Kestrel", "Merlin");
          view.deeds().open(written(folder.resolve("bad.kit.toml"), kit));
          desk.settle();
          Shell[] open = desk.shell().getShells();
          assertEquals(1, open.length);
          assertTrue(open[0].getText().startsWith("bad.kit.toml has "), open[0].getText());
          assertEquals(1, club.shelf.kits().size());
          desk.picture(Windowed.folder().resolve("kits-behind-faults.png"));
          open[0].close();
        });
  }

  @Test
  void tellsWhyAKitOnTheShelfCannotBeRead() {
    Windowed.run(
        "unreadable",
        desk -> {
          KitView view = open(desk);
          club.shelf.keep(Club.DEMO, "[kit]\nname = 4\n");
          page.refresh();
          assertTrue(view.front() instanceof FaultyKit);
          club.shelf.keep(Club.DEMO, Club.text("bench-pump.kit.toml"));
          page.refresh();
          assertEquals("delivery flange", joint(view));
        });
  }

  private static Path written(Path file, String text) {
    try {
      return Files.writeString(file, text);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
