package org.fettlebench.holes.internal.chance;

import java.util.Arrays;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.fettlebench.holes.chance.Aim;
import org.fettlebench.holes.chance.Chance;
import org.fettlebench.holes.chance.Draws;
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
    Blocks blocks = new Blocks(aim.seed());
    double[] results = new double[(int) Math.min(Math.max(BATCH, aim.least()), aim.most())];
    Running running = new Running();
    do {
      int until = (int) Math.min(aim.most(), (long) running.made + BATCH);
      results = until > results.length ? Arrays.copyOf(results, longer(until, aim)) : results;
      fill(results, until - running.made, trial, blocks);
      running.take(results, until);
    } while (running.made < aim.most() && !running.enough(aim));
    return new Simulated(Arrays.copyOf(results, running.made), aim.standardError());
  }

  private static int longer(int until, Aim aim) {
    return (int) Math.min(aim.most(), 2L * until);
  }

  private static void fill(double[] results, int count, Trial trial, Blocks blocks) {
    blocks.next(
        count,
        (first, end, draws) -> {
          for (int i = first; i < end; i++) {
            results[i] = trial.result(draws);
          }
          return 0;
        });
  }

  /** Welford's running mean and squares, so that no batch is summed twice. */
  private static final class Running {
    private int made;
    private double mean;
    private double squares;

    void take(double[] results, int until) {
      while (made < until) {
        double result = results[made++];
        if (!Double.isFinite(result)) {
          throw new IllegalArgumentException("trial " + made + " gave " + result);
        }
        double off = result - mean;
        mean += off / made;
        squares += off * (result - mean);
      }
    }

    boolean enough(Aim aim) {
      return made >= aim.least() && Math.sqrt(squares / (made - 1) / made) <= aim.standardError();
    }
  }

  @Override
  public Chance chance(Attempt attempt, Aim aim) {
    return chanceOf(draws -> () -> attempt.comesOff(draws), aim);
  }

  /**
   * Makes attempts that keep something for the whole of a block.
   *
   * @param begun an attempt that draws from what it is given, asked for again and again
   */
  Chance chanceOf(Function<Draws, BooleanSupplier> begun, Aim aim) {
    Blocks blocks = new Blocks(aim.seed());
    long made = 0;
    long cameOff = 0;
    double error;
    do {
      int batch = (int) Math.min(aim.most() - made, BATCH);
      cameOff += blocks.next(batch, (first, end, draws) -> count(begun.apply(draws), end - first));
      made += batch;
      error = standardError(cameOff, made);
    } while (made < aim.most() && !(made >= aim.least() && error <= aim.standardError()));
    return new Chance((double) cameOff / made, error, made);
  }

  private static long count(BooleanSupplier attempt, int times) {
    long cameOff = 0;
    for (int i = 0; i < times; i++) {
      cameOff += attempt.getAsBoolean() ? 1 : 0;
    }
    return cameOff;
  }

  private static double standardError(long cameOff, long made) {
    double all = made + 2.0 * ADDED;
    double share = (cameOff + ADDED) / all;
    return Math.sqrt(share * (1 - share) / all);
  }
}
