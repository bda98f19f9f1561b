package org.fettlebench.holes.internal.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.rng.JumpableUniformRandomProvider;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.fettlebench.holes.chance.Draws;

/**
 * Makes trials in blocks that all cores share. Each block draws from a stretch of its own of one
 * generator's sequence, so that the answer does not depend on how many cores there are and no two
 * blocks draw the same figures: the generator jumps by 2^128 figures from one block to the next.
 */
public final class Blocks {
  /** Enough to keep a core busy for longer than it takes to hand them over. */
  private static final int TRIALS = 500;

  private final JumpableUniformRandomProvider source;
  private int made;

  /** Starts at the beginning of the sequence that belongs to a seed. */
  public Blocks(long seed) {
    this.source = (JumpableUniformRandomProvider) RandomSource.XO_SHI_RO_256_PP.create(seed);
  }

  /** What is done in one block. Several may be at work at once, each with draws of its own. */
  @FunctionalInterface
  public interface Work {
    /**
     * Makes some trials.
     *
     * @param first number of the first one, from 0 over all blocks
     * @param end number after the last one
     * @param draws figures for this block alone
     * @return how many came off, where they can
     */
    long make(int first, int end, Draws draws);
  }

  /**
   * Makes the next trials.
   *
   * @param count how many
   * @return how many of these came off
   */
  public long next(int count, Work work) {
    int start = made;
    int end = start + count;
    made = end;
    List<UniformRandomProvider> stretches = new ArrayList<>();
    for (int first = start; first < end; first += TRIALS) {
      stretches.add(source.jump());
    }
    return IntStream.range(0, stretches.size())
        .parallel()
        .mapToLong(
            block -> {
              int first = start + block * TRIALS;
              int last = Math.min(end, first + TRIALS);
              return work.make(first, last, new LibraryDraws(stretches.get(block)));
            })
        .sum();
  }
}
