package org.fettlebench.holes.chance;

import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.PositionLaw;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.measure.Point;
import org.osgi.annotation.versioning.ProviderType;

/** Chances that holes land where they may; pure, and quick enough to follow a pointer. */
@ProviderType
public interface Chances {
  /**
   * Returns the chance of landing in a region, by integration.
   *
   * @param allowed the region, such as {@link SeatAnswer#allowed()}; none gives 0
   * @param aimed where the hole is aimed at
   * @param law where it lands, seen from there
   */
  Chance within(List<SeatAnswer.Region> allowed, Point aimed, PositionLaw law);

  /**
   * Returns the same chance by simulation, which shares nothing with the integration but the
   * region: a check, and a way for who distrusts formulas.
   */
  Chance simulated(List<SeatAnswer.Region> allowed, Point aimed, PositionLaw law, Aim aim);

  /** Returns the chance of each method, in the order given. */
  List<MethodChance> each(SeatAnswer answer, List<HoleMethod> methods);

  /**
   * Returns the method with the widest spread whose chance at the intended centre is still at least
   * the asked one; empty when none reaches it.
   *
   * @param chances as {@link #each} gives them
   * @param asked above 0 and below 1
   * @throws IllegalArgumentException if the asked chance is outside
   */
  Optional<MethodChance> leastCareful(List<MethodChance> chances, double asked);
}
