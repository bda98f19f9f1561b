package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.fits.Seat;
import org.locationtech.jts.geom.Geometry;

/** What a seat has that changes nothing, and is therefore likely a slip of the pen. */
final class Oddities {
  private Oddities() {}

  static List<String> of(Seat seat) {
    List<String> cautions = new ArrayList<>();
    for (int i = 0; i < seat.cavities().size(); i++) {
      if (outside(seat, i)) {
        cautions.add(
            "hollow "
                + (i + 1)
                + " lies wholly outside the outline and changes nothing; check its corners, which"
                + " are from the same datum as those of the flat");
      }
    }
    return cautions;
  }

  private static boolean outside(Seat seat, int hollow) {
    Geometry flat = AllowedCentres.polygon(seat.outline().points());
    return !flat.intersects(AllowedCentres.polygon(seat.cavities().get(hollow).points()));
  }
}
