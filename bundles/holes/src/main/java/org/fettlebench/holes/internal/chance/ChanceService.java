package org.fettlebench.holes.internal.chance;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.PositionLaw;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.holes.chance.Aim;
import org.fettlebench.holes.chance.Chance;
import org.fettlebench.holes.chance.Chances;
import org.fettlebench.holes.chance.MethodChance;
import org.fettlebench.measure.Point;
import org.osgi.service.component.annotations.Component;

/** Chances over the allowed centres of a seat. */
@Component(service = Chances.class)
public final class ChanceService implements Chances {
  /**
   * The most that a chance can change with a shift of the whole boundary, in sigmas: of a circle as
   * wide as the density is steepest, r exp(-r r / 2) at r = 1.
   */
  private static final double STEEPEST = Math.exp(-0.5);

  private final SimulationService simulations = new SimulationService();

  @Override
  public Chance within(List<SeatAnswer.Region> allowed, Point aimed, PositionLaw law) {
    // Arcs are broken a little; the integration itself is finer (PositionLaw says how fine).
    double shifts = SeatAnswer.REGION_ERROR_MM / law.sigmaPerAxisMm();
    double neglected = allowed.isEmpty() ? 0 : Math.min(1, STEEPEST * shifts);
    return new Chance(law.chanceWithin(allowed, aimed), neglected, 0);
  }

  @Override
  public Chance simulated(List<SeatAnswer.Region> allowed, Point aimed, PositionLaw law, Aim aim) {
    Inside inside = new Inside(allowed);
    return simulations.chanceOf(
        draws -> {
          Places places = new Places(Optional.of(law), draws);
          return () -> {
            places.next();
            return inside.holds(aimed.xMm() + places.x(), aimed.yMm() + places.y());
          };
        },
        aim);
  }

  @Override
  public List<MethodChance> each(SeatAnswer answer, List<HoleMethod> methods) {
    Point intended = answer.question().seat().intended();
    return methods.stream()
        .map(
            method ->
                new MethodChance(
                    method,
                    within(answer.allowed(), intended, method.law()),
                    within(answer.allowed(), answer.best(), method.law())))
        .toList();
  }

  @Override
  public Optional<MethodChance> leastCareful(List<MethodChance> chances, double asked) {
    if (!(asked > 0 && asked < 1)) {
      throw new IllegalArgumentException("asked chance " + asked + " is outside 0 to 1");
    }
    return chances.stream()
        .filter(each -> each.atIntended().value() >= asked)
        .max(Comparator.comparingDouble(each -> each.method().sigmaPerAxisMm()));
  }
}
