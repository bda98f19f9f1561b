package org.fettlebench.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.doAnswer;
import static org.mockito.Mockito.mock;

import java.util.List;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlotterTest {
  private static Drawing drawing(double width, Item... items) {
    return new Drawing("lug", List.of(items), new Drawing.Frame(0, 0, width, 5));
  }

  /** ISO 5455: 50, 20, 10, 5, 2 and 1 to 1, and the same to reduce. */
  @ParameterizedTest
  @CsvSource({
    "1, 50:1",
    "4.6, 20:1",
    "9, 10:1",
    "18.4, 5:1",
    "40, 2:1",
    "92, 1:1",
    "93, 1:2",
    "400, 1:5",
    "4000, 1:50",
  })
  void takesTheLargestStandardScaleThatFits(double widthMm, String scale) {
    // The sheet leaves 92 mm between its edges, and is high enough for all of these.
    assertEquals(scale, Plotter.standardScale(drawing(widthMm), 100, 400).scaleWords());
  }

  @Test
  void placesTheFrameInTheMiddleWithYDownwards() {
    Item line = new Item.Path(LineKind.THIN, List.of(new Point(0, 0), new Point(10, 5)), false);
    PaperPen pen = mock(PaperPen.class);
    doAnswer(
            call -> {
              List<Point> points = call.getArgument(1);
              // 2:1 makes 20 x 10 mm of paper, in the middle of 40 x 30 mm.
              assertEquals(new Point(10, 20), points.get(0));
              assertEquals(new Point(30, 10), points.get(1));
              return null;
            })
        .when(pen)
        .line(any(), any(), org.mockito.ArgumentMatchers.anyBoolean());
    Plotter plotter = Plotter.standardScale(drawing(10, line), 40, 30);
    assertEquals("2:1", plotter.scaleWords());
    assertEquals(10, plotter.heightMm(), 1e-9);
    plotter.plot(pen);
    org.mockito.Mockito.verify(pen).line(any(), any(), org.mockito.ArgumentMatchers.anyBoolean());
  }

  @Test
  void fillsTheSheetWhenNotHeldToAScale() {
    Plotter plotter = Plotter.fit(drawing(10), 40, 30);
    assertEquals(3.2, plotter.scale(), 1e-9);
    assertEquals("3.2:1", plotter.scaleWords());
    assertTrue(Plotter.fit(drawing(100), 40, 30).scaleWords().startsWith("1:"));
  }

  @Test
  void leavesRoomForWhatStandsOffTheFrameOnPaper() {
    Item below = new Item.Dimension(new Point(0, 0), new Point(10, 0), -20, "10 mm", false);
    Item beside = new Item.Label(new Point(10, 2), "beside the edge", Item.Side.RIGHT, false);
    Plotter plain = Plotter.fit(drawing(10), 100, 60);
    Plotter plotter = Plotter.fit(drawing(10, below, beside), 100, 60);
    assertTrue(plotter.scale() < plain.scale());
    PaperPen pen = mock(PaperPen.class);
    plotter.plot(pen);
    org.mockito.ArgumentCaptor<List<Point>> lines = org.mockito.ArgumentCaptor.captor();
    org.mockito.Mockito.verify(pen, org.mockito.Mockito.atLeastOnce())
        .line(any(), lines.capture(), org.mockito.ArgumentMatchers.anyBoolean());
    for (List<Point> line : lines.getAllValues()) {
      for (Point at : line) {
        assertTrue(at.yMm() <= 60 && at.xMm() >= 0 && at.xMm() <= 100, at.toString());
      }
    }
    // The words are 15 letters of 2.1 mm, 2 mm off the frame, which ends before them.
    org.mockito.ArgumentCaptor<PaperPen.Words> words = org.mockito.ArgumentCaptor.captor();
    org.mockito.Mockito.verify(pen, org.mockito.Mockito.times(2)).words(words.capture());
    PaperPen.Words label =
        words.getAllValues().stream().filter(w -> w.text().startsWith("beside")).findFirst().get();
    double frameEnd = lines.getAllValues().get(1).get(0).xMm();
    assertEquals(frameEnd + 2, label.at().xMm(), 0.1);
    assertTrue(label.at().xMm() + 15 * 2.1 <= 100, label.toString());
  }
}
