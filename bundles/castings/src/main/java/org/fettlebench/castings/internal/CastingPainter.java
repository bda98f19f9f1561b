package org.fettlebench.castings.internal;

import java.util.Set;
import org.fettlebench.castings.CastingDrawings;
import org.fettlebench.castings.CastingView;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.Placing;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.measure.LengthUnit;
import org.osgi.service.component.annotations.Component;

/** Draws a placed casting: rough skin thin, finished part wide, hatched what comes off. */
@Component
public final class CastingPainter implements CastingDrawings {
  @Override
  public Drawing draw(Placing placing, CastingView view, LengthUnit unit) {
    return draw(placing, view, unit, Set.copyOf(placing.casting().features()));
  }

  @Override
  public Drawing draw(Placing placing, CastingView view, LengthUnit unit, Set<Feature> named) {
    return new CastingPicture(placing, view, unit).draw(named);
  }
}
