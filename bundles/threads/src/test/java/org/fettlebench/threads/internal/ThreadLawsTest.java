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
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for every thread. */
@TestInstance(Lifecycle.PER_CLASS)
class ThreadLawsTest {
  private final ThreadRegistry threads = OurThreads.fresh();

  private final List<ScrewThread> all =
      threads.series().stream().flatMap(s -> s.threads().stream()).toList();

  /** p = 0.9^n and D = 6 p^1.2 mm with p unrounded, both to two figures (thread-form-formulas). */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 20, 25})
  void associationFollowsItsRule(int number) {
    ScrewThread thread = threads.find(number + " BA").orElseThrow();
    double pitch = Math.pow(0.9, number);
    double major = 6 * Math.pow(pitch, 1.2);
    assertEquals(pitch, thread.pitch().millimetres(), 0.005);
    assertEquals(major, thread.major().millimetres(), major < 1 ? 0.005 : 0.05);
  }

  static LongStream seeds() {
    return LongStream.range(1, 41);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void perCentAndHoleAreInverse(long seed) {
    Random random = new Random(seed);
    ScrewThread thread = all.get(random.nextInt(all.size()));
    double percent = 1 + 99 * random.nextDouble();
    assertEquals(percent, thread.percentOfThread(thread.holeFor(percent)), 1e-3, "seed " + seed);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void moreThreadMeansASmallerHole(long seed) {
    Random random = new Random(seed);
    ScrewThread thread = all.get(random.nextInt(all.size()));
    double percent = 1 + 98 * random.nextDouble();
    assertTrue(thread.holeFor(percent + 1).compareTo(thread.holeFor(percent)) < 0, "seed " + seed);
  }

  Stream<List<ScrewThread>> sameMajorAndForm() {
    return all.stream()
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
    ScrewThread m6 = threads.find("M6").orElseThrow();
    assertEquals(76.98, m6.percentOfThread(Length.ofMillimetres(5)), 0.005);
    ScrewThread twoBa = threads.find("2 BA").orElseThrow();
    assertEquals(75.23, twoBa.percentOfThread(Length.ofInchFraction(5, 32)), 0.005);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, 100.001, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesAPerCentThatNoHoleCanHave(double percent) {
    ScrewThread thread = all.get(0);
    assertThrows(MeasureException.class, () -> thread.holeFor(percent));
  }

  @Test
  void refusesSizesThatAreNoThread() {
    ScrewThread t = all.get(0);
    assertThrows(MeasureException.class, () -> withPitch(t, Length.ZERO));
    assertThrows(MeasureException.class, () -> withPitch(t, Length.ofMillimetres(-1)));
  }

  private ScrewThread withPitch(ScrewThread t, Length pitch) {
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
