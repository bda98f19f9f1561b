package org.fettlebench.desktop.threads.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.fettlebench.desktop.threads.internal.sheet.FigureTable;
import org.fettlebench.desktop.threads.internal.sheet.Fold;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.testkit.trade.RealTrade;
import org.junit.jupiter.api.Test;

/** What stands beside the drawing, and the sheet made of it. */
class PageFoldsTest extends PageTrial {
  @Test
  void tapsAreSaidWithWhereTheyAre() throws IOException {
    run(
        robot -> {
          assertTrue(tabled("taper\tTap box / BA"));
          assertTrue(tabled("second\tworn, Tap box / BA"));
          assertTrue(tabled("bottoming\tout with Tom Reed until 3 May 2027"));
          type("M6");
          assertTrue(tabled("No tap for M6 is held."));
        });
  }

  @Test
  void aBlindHoleThatBreaksThroughSaysSo() throws IOException {
    open("blind");
    run(
        robot -> {
          blind("8 mm", "9 mm");
          assertTrue(says("break"), "the concern is on the page");
          blind("8 mm", "20 mm");
          assertFalse(says("break"));
        });
  }

  @Test
  void aFoldIsOpenedByTheKeyboardAndStaysSo() throws IOException {
    before.put("fold.sizes", "folded");
    run(
        robot -> {
          assertFalse(tabled("stress area"));
          Fold strength = fold(root, "the screw breaks at").orElseThrow();
          strength.getChildren()[0].setFocus();
          robot.press(' ');
          assertTrue(tabled("stress area"));
          assertEquals("open", desk.remembered("threads", "fold.strength", ""));
        });
  }

  @Test
  void theSheetOfAThreadHasAllItsParts() {
    ThreadAnswer answer =
        Bench.book()
            .answer(ThreadQuestion.of(RealTrade.THREADS.find("2 BA").orElseThrow()), Bench.rack());
    var rows =
        ThreadSheet.rows(
            answer,
            java.util.List.of(
                new ThreadSheet.Part("The thread", ThreadFigures.sizes(answer, LengthUnit.INCH)),
                new ThreadSheet.Part("Strength", FigureTable.EMPTY)),
            LengthUnit.INCH);
    assertTrue(rows.stream().allMatch(row -> row.size() == ThreadSheet.COLUMNS));
    assertTrue(rows.contains(java.util.List.of("  major diameter", "0.1850", "4.700", "", "")));
    assertTrue(rows.stream().noneMatch(row -> row.get(0).equals("Strength")));
  }
}
