package org.fettlebench.holes.internal.chance;

import java.util.Arrays;
import org.fettlebench.holes.chance.Aim;
import org.fettlebench.holes.chance.Chance;
import org.fettlebench.holes.chance.Simulated;
import org.fettlebench.holes.chance.Simulations;
import org.osgi.service.component.annotations.Component;

/** Makes trials in batches and looks after each whether it may stop. */
@Component(service = Simulations.class)
public final class SimulationService implements Simulations {
  private static final int BATCH = 10_000;

  /** Agresti and Coull: two more that came off, two more that did not. */
  private static final int ADDED = 2;

  @Override
  public Simulated run(Trial trial, Aim aim) {
    LibraryDraws draws = new LibraryDraws(aim.seed());
    double[] results = new double[(int) Math.min(Math.max(BATCH, aim.least()), aim.most())];
    int made = 0;
    // Welford's running mean and squares, so that no batch is summed twice.
    double mean = 0;
    double squares = 0;
    do {
      int until = (int) Math.min(aim.most(), (long) made + BATCH);
      results = until > results.length ? Arrays.copyOf(results, longer(made, aim)) : results;
      while (made < until) {
        double result = finite(trial.result(draws), made);
        results[made++] = result;
        double off = result - mean;
        mean += off / made;
        squares += off * (result - mean);
      }
    } while (made < aim.most() && !enough(made, squares, aim));
    return new Simulated(Arrays.copyOf(results, made), aim.standardError());
  }

  private static int longer(int made, Aim aim) {
    return (int) Math.min(aim.most(), 2L * made + BATCH);
  }

  private static double finite(double result, int before) {
    if (!Double.isFinite(result)) {
      throw new IllegalArgumentException("trial " + (before + 1) + " gave " + result);
    }
    return result;
  }

  private static boolean enough(int made, double squares, Aim aim) {
    return made >= aim.least() && Math.sqrt(squares / (made - 1) / made) <= aim.standardError();
  }

  @Override
  public Chance chance(Attempt attempt, Aim aim) {
    LibraryDraws draws = new LibraryDraws(aim.seed());
    long made = 0;
    long cameOff = 0;
    double error;
    do {
      long until = Math.min(aim.most(), made + BATCH);
      for (; made < until; made++) {
        cameOff += attempt.comesOff(draws) ? 1 : 0;
      }
      error = standardError(cameOff, made);
    } while (made < aim.most() && !(made >= aim.least() && error <= aim.standardError()));
    return new Chance((double) cameOff / made, error, made);
  }

  private static double standardError(long cameOff, long made) {
    double all = made + 2.0 * ADDED;
    double share = (cameOff + ADDED) / all;
    return Math.sqrt(share * (1 - share) / all);
  }
}
