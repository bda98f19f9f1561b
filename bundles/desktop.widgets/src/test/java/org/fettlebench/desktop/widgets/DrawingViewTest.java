package org.fettlebench.desktop.widgets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.fettlebench.drawing.Drawing;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DrawingViewTest {
  private static final double PIXEL = 1e-6;

  @ParameterizedTest
  @CsvSource({"400,300,20", "100,500,10", "500,60,40"})
  void aFittedFrameLiesInTheMiddleInsideTheMargin(int width, int height, double margin) {
    Drawing.Frame frame = new Drawing.Frame(-3, 2, 27, 17);
    DrawingView view = DrawingView.fit(frame, width, height, DrawingView.Margins.all(margin));
    double left = view.x(-3);
    double top = view.y(17);
    assertEquals(width - left, view.x(27), PIXEL);
    assertEquals(height - top, view.y(2), PIXEL);
    double least = Math.min(margin, Math.min(width, height) / 4.0);
    assertEquals(least, Math.min(left, top), PIXEL, "one way it fills the room");
  }

  @Test
  void eachSideKeepsItsOwnMargin() {
    Drawing.Frame frame = new Drawing.Frame(0, 0, 10, 10);
    DrawingView view = DrawingView.fit(frame, 200, 160, new DrawingView.Margins(60, 10, 40, 50));
    assertEquals(10, view.pixelsPerMm(), PIXEL);
    assertEquals(60, view.x(0), PIXEL);
    assertEquals(110, view.y(0), PIXEL);
  }

  @Test
  void upOnTheDrawingIsUpOnTheSurface() {
    DrawingView view = new DrawingView(2, 100, 100);
    assertEquals(80, view.y(10), PIXEL);
    assertEquals(120, view.x(10), PIXEL);
  }

  @Test
  void zoomingKeepsThePlaceUnderThePointer() {
    DrawingView view = new DrawingView(7.5, 31, 240);
    Point under = view.at(123, 45);
    Point after = view.zoomed(1.25, 123, 45).moved(10, 0).at(133, 45);
    assertEquals(under.xMm(), after.xMm(), PIXEL);
    assertEquals(under.yMm(), after.yMm(), PIXEL);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void aScaleThatShowsNothingIsRefused(double scale) {
    assertThrows(IllegalArgumentException.class, () -> new DrawingView(scale, 0, 0));
  }
}
