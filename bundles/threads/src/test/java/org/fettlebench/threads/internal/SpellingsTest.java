package org.fettlebench.threads.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.fettlebench.threads.ScrewThread;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;

/** The ways of writing that a thread claims, by how strong the claim is. */
@TestInstance(Lifecycle.PER_CLASS)
class SpellingsTest {
  private final ThreadRegistry threads = OurThreads.fresh();

  private Spellings of(String designation, String... names) {
    ScrewThread thread = threads.find(designation).orElseThrow();
    return Spellings.of(thread, List.of(names));
  }

  @Test
  void association() {
    Spellings two = of("2 BA", "ba");
    assertEquals(Set.of("2ba", "ba2"), two.exact());
    assertEquals(Set.of(), two.dashed());
    assertTrue(two.loose().containsAll(Set.of("#2ba", "ba#2")), two.toString());
  }

  @Test
  void metric() {
    Spellings fine = of("M6 x 0.75", "mf");
    assertTrue(fine.exact().containsAll(Set.of("m6x0.75", "m6x0.75mf")), fine.toString());
    assertEquals(Set.of("m6-0.75"), fine.dashed());
    assertTrue(fine.loose().contains("m6mf"), fine.toString());
    Spellings coarse = of("M6", "m");
    assertTrue(coarse.exact().containsAll(Set.of("m6", "m6x1")), coarse.toString());
    assertEquals(Set.of("m6-1"), coarse.dashed());
    assertFalse(coarse.exact().contains("6"), "a bare number is no designation");
  }

  @Test
  void unified() {
    Spellings ten = of("#10-32 UNF", "unf");
    assertTrue(ten.exact().containsAll(Set.of("#10-32unf", "#10x32unf", "#10unf")), ten.toString());
    assertEquals(Set.of("#10-32"), ten.dashed());
    assertTrue(ten.loose().containsAll(Set.of("10unf", "10-32", "10x32unf")), ten.toString());
    assertTrue(ten.loose().contains("#10unf32"), ten.toString());
    assertFalse(ten.exact().contains("#10"), "a size alone is no thread");
  }

  @Test
  void whitworth() {
    Spellings quarter = of("1/4 BSF", "bsf");
    assertTrue(
        quarter.exact().containsAll(Set.of("1/4bsf", "bsf1/4", "1/4x26bsf", "1/4x26")),
        quarter.toString());
    assertEquals(Set.of("1/4-26"), quarter.dashed());
    assertTrue(quarter.loose().contains("1/4bsf26"), quarter.toString());
    Set<String> all = quarter.all();
    assertTrue(
        all.containsAll(quarter.exact())
            && all.containsAll(quarter.dashed())
            && all.containsAll(quarter.loose()));
    Spellings half = of("1 7/8 BSW", "bsw");
    assertTrue(half.loose().contains("1+7/8bsw4.5"), half.toString());
    assertEquals(List.of("4.5", "4+1/2"), Spellings.pitches(threads.find("2 BSW").orElseThrow()));
    assertEquals(List.of(), Spellings.pitches(threads.find("2 BA").orElseThrow()));
  }

  @Test
  void modelEngineer() {
    Spellings me = of("1/4 x 40 ME", "me");
    assertTrue(
        me.exact().containsAll(Set.of("1/4x40me", "me1/4x40", "1/4x40", "1/4-40me")),
        me.toString());
    assertTrue(me.loose().containsAll(Set.of("1/4me", "me1/4", "1/4me40")), me.toString());
  }
}
