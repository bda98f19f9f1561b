package org.fettlebench.threads.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ScrewThread;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for every thread. */
class ThreadLawsTest {
  private static final List<ScrewThread> ALL =
      OurThreads.THREADS.series().stream().flatMap(s -> s.threads().stream()).toList();

  static LongStream seeds() {
    return LongStream.range(1, 41);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void perCentAndHoleAreInverse(long seed) {
    Random random = new Random(seed);
    ScrewThread thread = ALL.get(random.nextInt(ALL.size()));
    double percent = 1 + 99 * random.nextDouble();
    assertEquals(percent, thread.percentOfThread(thread.holeFor(percent)), 1e-3, "seed " + seed);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void moreThreadMeansASmallerHole(long seed) {
    Random random = new Random(seed);
    ScrewThread thread = ALL.get(random.nextInt(ALL.size()));
    double percent = 1 + 98 * random.nextDouble();
    assertTrue(thread.holeFor(percent + 1).compareTo(thread.holeFor(percent)) < 0, "seed " + seed);
  }

  static Stream<List<ScrewThread>> sameMajorAndForm() {
    return ALL.stream()
        .collect(
            Collectors.groupingBy(
                t -> t.form() + " " + t.major() + t.series().equals("G"), Collectors.toList()))
        .values()
        .stream()
        .filter(threads -> threads.size() > 1);
  }

  @ParameterizedTest
  @MethodSource("sameMajorAndForm")
  void aBiggerPitchHasASmallerCore(List<ScrewThread> threads) {
    List<ScrewThread> byPitch =
        threads.stream().sorted(Comparator.comparing(ScrewThread::pitch)).toList();
    for (int i = 1; i < byPitch.size(); i++) {
      ScrewThread finer = byPitch.get(i - 1);
      ScrewThread coarser = byPitch.get(i);
      if (!finer.pitch().equals(coarser.pitch())) {
        assertTrue(coarser.minorExternal().compareTo(finer.minorExternal()) < 0);
        assertTrue(coarser.minorInternal().compareTo(finer.minorInternal()) < 0);
        assertTrue(coarser.effective().compareTo(finer.effective()) < 0);
      }
    }
  }

  /** M6 with a 5 mm drill: 100 x 1 / (2 x 0.649519 x 1) = 76.98; 2 BA, 5/32 in: 75.23. */
  @Test
  void perCentOfThreadByHand() {
    ScrewThread m6 = OurThreads.THREADS.find("M6").orElseThrow();
    assertEquals(76.98, m6.percentOfThread(Length.ofMillimetres(5)), 0.005);
    ScrewThread twoBa = OurThreads.THREADS.find("2 BA").orElseThrow();
    assertEquals(75.23, twoBa.percentOfThread(Length.ofInchFraction(5, 32)), 0.005);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, 100.001, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesAPerCentThatNoHoleCanHave(double percent) {
    ScrewThread thread = ALL.get(0);
    assertThrows(MeasureException.class, () -> thread.holeFor(percent));
  }

  @Test
  void refusesSizesThatAreNoThread() {
    ScrewThread t = ALL.get(0);
    assertThrows(MeasureException.class, () -> withPitch(t, Length.ZERO));
    assertThrows(MeasureException.class, () -> withPitch(t, Length.ofMillimetres(-1)));
  }

  private static ScrewThread withPitch(ScrewThread t, Length pitch) {
    return new ScrewThread(
        t.series(),
        t.size(),
        t.designation(),
        t.form(),
        t.major(),
        pitch,
        t.threadsPerInch(),
        t.effective(),
        t.minorInternal(),
        t.minorExternal(),
        t.source());
  }
}
