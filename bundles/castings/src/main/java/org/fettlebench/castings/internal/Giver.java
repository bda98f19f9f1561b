package org.fettlebench.castings.internal;

import java.util.Optional;
import org.fettlebench.castings.Casting;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.RoundFace;

/**
 * Finds by how much one dimension of the drawing must give for the casting to clean up. Each trial
 * places the part anew; the least spare never falls as the dimension gives more, so halving finds
 * it.
 */
final class Giver {
  // A dimension that must give twenty times what lacks would make another part.
  private static final double MOST_TIMES = 20;
  private static final double CLOSE_MM = 1e-6;

  private final Casting casting;
  private final Feature feature;
  private final double mostMm;

  Giver(Casting casting, Feature feature, double shortMm) {
    this.casting = casting;
    this.feature = feature;
    this.mostMm = MOST_TIMES * shortMm;
  }

  /** Returns the giving; empty when this dimension alone cannot help. */
  Optional<Placing.Giving> giving() {
    double enough = mostMm;
    if (feature instanceof RoundFace round && round.kind() == RoundFace.Kind.BOSS) {
      enough = Math.min(enough, round.finishedDiameterMm() - CLOSE_MM);
    }
    if (!(enough > 0 && spareMm(enough) >= 0)) {
      return Optional.empty();
    }
    double tooLittle = 0;
    while (enough - tooLittle > CLOSE_MM) {
      double middle = (enough + tooLittle) / 2;
      if (spareMm(middle) >= 0) {
        enough = middle;
      } else {
        tooLittle = middle;
      }
    }
    return Optional.of(new Placing.Giving(feature, enough, finishedMm(enough), spareMm(enough)));
  }

  private double spareMm(double byMm) {
    return new Placer(casting.with(given(byMm))).spareMm();
  }

  private Feature given(double byMm) {
    return feature instanceof FlatFace flat
        ? flat.finishedAt(finishedMm(byMm))
        : ((RoundFace) feature).finishedAt(finishedMm(byMm));
  }

  private double finishedMm(double byMm) {
    if (feature instanceof FlatFace flat) {
      return flat.finishedMm() - flat.towards().sign() * byMm;
    }
    RoundFace round = (RoundFace) feature;
    return round.finishedDiameterMm() + (round.kind() == RoundFace.Kind.BORE ? byMm : -byMm);
  }
}
