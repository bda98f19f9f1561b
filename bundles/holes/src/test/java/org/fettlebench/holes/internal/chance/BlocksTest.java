package org.fettlebench.holes.internal.chance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BlocksTest {
  private static double[] drawn(long seed, int... counts) {
    Blocks blocks = new Blocks(seed);
    double[] drawn = new double[Arrays.stream(counts).sum()];
    for (int count : counts) {
      blocks.next(
          count,
          (first, end, draws) -> {
            for (int i = first; i < end; i++) {
              drawn[i] = draws.rectangular(0, 1);
            }
            return 0;
          });
    }
    return drawn;
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 499, 500, 501, 1000, 12_345})
  void everyTrialIsMadeOnceAndCounted(int count) {
    int[] made = new int[count];
    long sum =
        new Blocks(1)
            .next(
                count,
                (first, end, draws) -> {
                  for (int i = first; i < end; i++) {
                    made[i]++;
                  }
                  return end - first;
                });

    assertEquals(count, sum);
    assertEquals(count, Arrays.stream(made).filter(times -> times == 1).count());
  }

  @Test
  void theAnswerDoesNotDependOnHowManyCoresShareIt() {
    double[] all = drawn(7, 5_000);
    for (int cores : new int[] {1, 3}) {
      ForkJoinPool pool = new ForkJoinPool(cores);
      try {
        assertArrayEquals(all, pool.submit(() -> drawn(7, 5_000)).join());
      } finally {
        pool.shutdownNow();
      }
    }
  }

  @Test
  void whatComesLaterGoesOnWhereTheFirstEnded() {
    assertArrayEquals(drawn(3, 2_000), drawn(3, 1_000, 500, 500));
  }

  /** Of 20 000 doubles out of 2^53 no two are alike but with a chance of one in forty million. */
  @Test
  void noTwoBlocksDrawTheSame() {
    assertEquals(20_000, Arrays.stream(drawn(11, 10_000, 10_000)).distinct().count());
    // One seed's figures are not those of the next.
    double[] next = drawn(12, 10_000);
    Arrays.sort(next);
    assertEquals(
        0,
        Arrays.stream(drawn(11, 10_000))
            .filter(each -> Arrays.binarySearch(next, each) >= 0)
            .count());
  }

  /** Blocks lie side by side in one sequence, so their means must scatter as those of one do. */
  @Test
  void blocksAreIndependent() {
    int blocks = 2_000;
    double[] drawn = drawn(5, 500 * blocks);
    double squares = 0;
    double products = 0;
    double before = 0;
    for (int block = 0; block < blocks; block++) {
      double mean = Arrays.stream(drawn, 500 * block, 500 * (block + 1)).average().orElseThrow();
      // Mean 1/2, variance 1/12 over 500: a figure of mean 0 and variance 1.
      double off = (mean - 0.5) * Math.sqrt(12 * 500);
      squares += off * off / blocks;
      products += off * before / blocks;
      before = off;
    }
    assertEquals(1, squares, 4 * Math.sqrt(2.0 / blocks));
    assertEquals(0, products, 4 / Math.sqrt(blocks));
  }
}
