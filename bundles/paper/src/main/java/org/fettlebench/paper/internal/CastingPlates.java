package org.fettlebench.paper.internal;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.fettlebench.castings.CastingDrawings;
import org.fettlebench.castings.CastingView;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.Placing;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.measure.LengthUnit;

/** The views of a casting that matter, the first across the page, the others below side by side. */
final class CastingPlates {
  private static final double GAP_MM = 3;

  /**
   * Shares of the height, in hundredths, that the first plate may have where others stand below.
   */
  private static final int LEAST_SHARE = 35;

  private static final int MOST_SHARE = 70;
  private static final int EVEN_SHARE = 52;

  private final List<CastingView> views;
  private final Placing placing;
  private final List<Drawing> drawn;

  CastingPlates(Placing placing, LengthUnit unit, CastingDrawings drawings) {
    this.placing = placing;
    this.views = CastingView.of(placing.casting());
    this.drawn =
        views.stream().map(view -> drawings.draw(placing, view, unit, fresh(view))).toList();
  }

  /** Returns what a view names that no view before it did: on a sheet each figure stands once. */
  private Set<Feature> fresh(CastingView view) {
    Set<Feature> fresh = new HashSet<>();
    for (Feature feature : placing.casting().features()) {
      Optional<CastingView> first = views.stream().filter(each -> each.names(feature)).findFirst();
      if (first.equals(Optional.of(view))) {
        fresh.add(feature);
      }
    }
    return fresh;
  }

  /** Draws them into a box. */
  void draw(PdfSheet sheet, double left, double top, double width, double height)
      throws IOException {
    int others = views.size() - 1;
    double each = others == 0 ? width : (width - (others - 1) * GAP_MM) / others;
    double first = others == 0 ? height : firstMm(width, each, height);
    double scale = DrawnPlate.scale(drawn.get(0), width, first);
    plate(0, new DrawnPlate(sheet, left, top, width, first), scale);
    for (int i = 1; i <= others; i++) {
      double at = left + (i - 1) * (each + GAP_MM);
      double below = top + first + GAP_MM;
      plate(i, new DrawnPlate(sheet, at, below, each, height - first - GAP_MM), scale);
    }
  }

  /**
   * Shares the height out so that the view drawn smallest is drawn as large as it can be, then the
   * rest, then about evenly.
   */
  private double firstMm(double width, double each, double height) {
    double best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int share : IntStream.rangeClosed(LEAST_SHARE, MOST_SHARE).toArray()) {
      double first = (height - GAP_MM) * share / 100;
      double least = DrawnPlate.scale(drawn.get(0), width, first);
      double all = least;
      for (Drawing other : drawn.subList(1, drawn.size())) {
        double scale = DrawnPlate.scale(other, each, height - GAP_MM - first);
        least = Math.min(least, scale);
        all += scale;
      }
      // Scales differ by halves at least, shares by hundredths: each weighs less than the one
      // before.
      double worth = least + all / 1e3 - Math.abs(share - EVEN_SHARE) / 1e6;
      if (worth > most) {
        most = worth;
        best = first;
      }
    }
    return best;
  }

  private void plate(int view, DrawnPlate plate, double largest) throws IOException {
    plate.draw(CardWords.begun(views.get(view).words()), drawn.get(view), largest);
  }
}
