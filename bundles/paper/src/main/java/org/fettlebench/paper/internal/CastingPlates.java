package org.fettlebench.paper.internal;

import java.io.IOException;
import java.util.List;
import org.fettlebench.castings.CastingDrawings;
import org.fettlebench.castings.CastingView;
import org.fettlebench.castings.Placing;
import org.fettlebench.measure.LengthUnit;

/** The views of a casting that matter, the first across the page, the others below side by side. */
final class CastingPlates {
  private static final double GAP_MM = 3;

  /** Share of the first plate's height where others stand below it. */
  private static final double FIRST_SHARE = 0.52;

  private final Placing placing;
  private final LengthUnit unit;
  private final CastingDrawings drawings;

  CastingPlates(Placing placing, LengthUnit unit, CastingDrawings drawings) {
    this.placing = placing;
    this.unit = unit;
    this.drawings = drawings;
  }

  /** Draws them into a box. */
  void draw(PdfSheet sheet, double left, double top, double width, double height)
      throws IOException {
    List<CastingView> views = CastingView.of(placing.casting());
    double first = views.size() == 1 ? height : FIRST_SHARE * (height - GAP_MM);
    plate(sheet, views.get(0), left, top, width, first);
    int others = views.size() - 1;
    double each = others == 0 ? width : (width - (others - 1) * GAP_MM) / others;
    for (int i = 0; i < others; i++) {
      double at = left + i * (each + GAP_MM);
      plate(sheet, views.get(i + 1), at, top + first + GAP_MM, each, height - first - GAP_MM);
    }
  }

  private void plate(
      PdfSheet sheet, CastingView view, double left, double top, double width, double height)
      throws IOException {
    new DrawnPlate(sheet, left, top, width, height)
        .draw(CardWords.begun(view.words()), drawings.draw(placing, view, unit));
  }
}
