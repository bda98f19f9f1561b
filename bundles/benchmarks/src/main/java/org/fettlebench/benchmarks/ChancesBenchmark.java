package org.fettlebench.benchmarks;

import java.util.List;
import java.util.Random;
import java.util.concurrent.ForkJoinPool;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.fettlebench.fits.ErrorLaw;
import org.fettlebench.fits.PositionLaw;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.internal.SeatChecker;
import org.fettlebench.holes.chance.Aim;
import org.fettlebench.holes.chance.Chance;
import org.fettlebench.holes.internal.chance.ChanceService;
import org.fettlebench.measure.Point;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/**
 * The chance that a hole lands where a head sits, to a tenth of a per cent: over the allowed
 * centres of a flat with 200 corners and 20 walls, aimed where about three in four land well, which
 * takes some 200 000 trials.
 */
@State(Scope.Benchmark)
public class ChancesBenchmark {
  private static final double SIGMA_MM = 1.2;
  private static final Source SOURCE = new Source("benchmark", Standing.RULE);

  private final ForkJoinPool single = new ForkJoinPool(1);
  private final ChanceService chances = new ChanceService();
  private List<SeatAnswer.Region> allowed;
  private Point aimed;
  private double[] ring;

  /** What errors follow. */
  @State(Scope.Benchmark)
  public static class Errors {
    /** Steps of the method, each with its law. */
    @Param({"normal", "normal+bounded", "normal+circle"})
    String law;

    private PositionLaw of;

    /** Makes the law. */
    @Setup
    public void make() {
      ErrorLaw normal = new ErrorLaw.Normal(SIGMA_MM, SIGMA_MM);
      of =
          switch (law) {
            case "normal" -> of(normal);
            case "normal+bounded" -> of(normal, new ErrorLaw.Bounded(0.5, 0.5));
            default -> of(normal, new ErrorLaw.Circle(0.5));
          };
    }

    private static PositionLaw of(ErrorLaw... laws) {
      return new PositionLaw(
          0,
          0,
          List.of(laws).stream().map(each -> new PositionLaw.Part("step", each, SOURCE)).toList());
    }
  }

  /** Finds the allowed centres once. */
  @Setup
  public void make() {
    SeatAnswer answer = new SeatChecker().check(SeatsBenchmark.question(200, 20));
    allowed = answer.allowed();
    aimed = answer.best().moved(12, 0);
    List<Point> shell = allowed.get(0).shell();
    ring = new double[2 * shell.size()];
    for (int i = 0; i < shell.size(); i++) {
      ring[2 * i] = shell.get(i).xMm();
      ring[2 * i + 1] = shell.get(i).yMm();
    }
  }

  /** By integration, as every page and command does. */
  @Benchmark
  public Chance integrated(Errors errors) {
    return chances.within(allowed, aimed, errors.of);
  }

  /** By simulation on all cores, to a standard error of 0.1 per cent. */
  @Benchmark
  public Chance simulated(Errors errors) {
    return chances.simulated(allowed, aimed, errors.of, new Aim(1, 1e-3, 1_000, 1_000_000));
  }

  /** The same trials on one thread. */
  @Benchmark
  public Chance simulatedOneThread(Errors errors) {
    return single.submit(() -> simulated(errors)).join();
  }

  /** Stops the pool of one thread. */
  @TearDown
  public void stop() {
    single.shutdownNow();
  }

  /** A plain loop over the same trials on one thread with the library's generator. */
  @Benchmark
  public double plainLoopLibrary() {
    UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(1L);
    ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(random);
    int hits = 0;
    int made = 0;
    do {
      for (int i = 0; i < 10_000; i++) {
        double x = aimed.xMm() + SIGMA_MM * normal.sample();
        hits += inside(x, aimed.yMm() + SIGMA_MM * normal.sample()) ? 1 : 0;
      }
      made += 10_000;
    } while (!enough(hits, made));
    return (double) hits / made;
  }

  /** The same with the generator of the Java library. */
  @Benchmark
  public double plainLoopJava() {
    Random random = new Random(1);
    int hits = 0;
    int made = 0;
    do {
      for (int i = 0; i < 10_000; i++) {
        double x = aimed.xMm() + SIGMA_MM * random.nextGaussian();
        hits += inside(x, aimed.yMm() + SIGMA_MM * random.nextGaussian()) ? 1 : 0;
      }
      made += 10_000;
    } while (!enough(hits, made));
    return (double) hits / made;
  }

  private static boolean enough(int hits, int made) {
    double share = (double) hits / made;
    return share * (1 - share) / made <= 1e-6;
  }

  private boolean inside(double x, double y) {
    boolean odd = false;
    for (int i = 0, last = ring.length - 2; i < ring.length; last = i, i += 2) {
      odd ^=
          ring[i + 1] > y != ring[last + 1] > y
              && x
                  < (ring[last] - ring[i]) * (y - ring[i + 1]) / (ring[last + 1] - ring[i + 1])
                      + ring[i];
    }
    return odd;
  }
}
