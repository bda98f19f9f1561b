package org.fettlebench.holes.internal.patterns;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.fettlebench.holes.patterns.PatternQuestion;
import org.fettlebench.measure.Point;

/**
 * Simulates pairs of parts. Trials run in blocks, each with a generator of its own that follows
 * from the seed and the block's number, so that the answer does not depend on how many cores share
 * them.
 */
final class Simulation {
  /** Enough to keep a core busy for some milliseconds. */
  private static final int BLOCK = 500;

  /** Step between the seeds of blocks: the golden ratio in 64 bits, as splitmix64 has it. */
  private static final long SEED_STEP = 0x9E3779B97F4A7C15L;

  private final PatternQuestion question;
  private final List<Point> centres;

  Simulation(PatternQuestion question) {
    this.question = question;
    this.centres = question.pattern().centres();
  }

  /** Returns in how many trials every fastener enters. */
  long good() {
    double play = question.playMm();
    if (!(play >= 0)) {
      return 0;
    }
    return IntStream.range(0, blocks())
        .parallel()
        .mapToLong(
            block -> {
              long[] good = new long[1];
              each(block, play, (trial, motion) -> good[0] += motion.enters() ? 1 : 0);
              return good[0];
            })
        .sum();
  }

  /** Returns the play that each trial needs. */
  double[] needsMm() {
    double[] needs = new double[question.trials()];
    IntStream.range(0, blocks())
        .parallel()
        .forEach(
            block -> each(block, 0, (trial, motion) -> needs[trial] = Math.max(0, motion.least())));
    return needs;
  }

  private int blocks() {
    return (question.trials() + BLOCK - 1) / BLOCK;
  }

  /** Looks at one trial. */
  private interface Look {
    void at(int trial, Motion motion);
  }

  private void each(int block, double play, Look look) {
    UniformRandomProvider random =
        RandomSource.XO_SHI_RO_256_PP.create(question.seed() + block * SEED_STEP);
    PlaceDraws upper = new PlaceDraws(question.upper().placing().law(), random);
    PlaceDraws lower = new PlaceDraws(question.lower().placing().law(), random);
    Motion motion = new Motion(centres.size());
    int end = Math.min(question.trials(), (block + 1) * BLOCK);
    for (int trial = block * BLOCK; trial < end; trial++) {
      motion.clear();
      for (Point centre : centres) {
        upper.next();
        lower.next();
        motion.add(
            centre.xMm() + upper.x(),
            centre.yMm() + upper.y(),
            centre.xMm() + lower.x(),
            centre.yMm() + lower.y(),
            play);
      }
      look.at(trial, motion);
    }
  }
}
