package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.locationtech.jts.geom.Polygon;

/** Finds hollows that lie wholly off the flat and its underside. */
final class Strays {
  private Strays() {}

  static List<String> of(Seat seat) {
    List<Polygon> faces = new ArrayList<>(List.of(polygon(seat.outline())));
    seat.underside().map(Strays::polygon).ifPresent(faces::add);
    List<String> cautions = new ArrayList<>();
    for (int i = 0; i < seat.cavities().size(); i++) {
      Outline hollow = seat.cavities().get(i);
      if (faces.stream().noneMatch(polygon(hollow)::intersects)) {
        cautions.add(
            "hollow "
                + (i + 1)
                + ", with a corner at "
                + SeatGuard.at(hollow.points().get(0))
                + ", lies wholly off the flat; check its places, which are from the same datum as"
                + " the outline");
      }
    }
    return List.copyOf(cautions);
  }

  private static Polygon polygon(Outline outline) {
    return AllowedCentres.polygon(outline.points());
  }
}
