package org.fettlebench.threads.internal.wires;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadForm;
import org.fettlebench.threads.internal.OurThreads;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.fettlebench.threads.wires.WireSizes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;

/** Wires worked by hand, chosen and refused. */
@TestInstance(Lifecycle.PER_CLASS)
class WireServiceTest {
  private final ThreadRegistry threads = OurThreads.fresh();

  private final WireService wires = new WireService();
  private final ScrewThread m6 = threads.find("M6").orElseThrow();

  private Length mm(double millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  /** BA: least (0.6 + 1.136338) / 3.482950 = 0.498525 p; most (1 - 2 x 0.165490) / 0.915311. */
  @Test
  void britishAssociationOfOneMillimetre() {
    WireSizes sizes = wires.sizes(ThreadForm.BRITISH_ASSOCIATION, mm(1));
    assertEquals(0.498525, sizes.least().millimetres(), 3e-6);
    assertEquals(0.546263, sizes.best().millimetres(), 3e-6);
    assertEquals(0.730926, sizes.most().millimetres(), 3e-6);
  }

  /**
   * M6 with a wire of 0.577 mm at E 5.350 mm: plain 5.350 - 0.866025 + 1.731 = 6.214975; helix
   * 0.2885 x (1 / (pi x 5.35))^2 x 0.866025 x 1.732051 = 0.001532.
   */
  @Test
  void overWiresWithTheHelix() {
    var over = wires.over(m6, mm(0.577), mm(5.350));
    assertEquals(0.001532, over.helixCorrection().millimetres(), 2e-6);
    assertEquals(6.216507, over.overWires().millimetres(), 3e-6);
  }

  @Test
  void choosesTheNearestThatFits() {
    List<Length> held = List.of(mm(0.4), mm(0.52), mm(0.6), mm(0.55), mm(1.0), mm(1.1), mm(0.6));
    assertEquals(
        List.of(mm(0.6), mm(0.55), mm(0.52), mm(1.0)), wires.choose(ThreadForm.ISO, mm(1), held));
    assertEquals(List.of(), wires.choose(ThreadForm.ISO, mm(1), List.of(mm(0.5))));
  }

  @Test
  void refusesWhatDoesNotFit() {
    MeasureException small =
        assertThrows(MeasureException.class, () -> wires.over(m6, mm(0.3), mm(5.35)));
    assertTrue(small.getMessage().contains("best 0.577"), small.getMessage());
    assertThrows(MeasureException.class, () -> wires.over(m6, mm(0.577), mm(2)));
    assertThrows(MeasureException.class, () -> wires.effective(m6, mm(0.577), mm(60)));
    assertThrows(MeasureException.class, () -> wires.sizes(ThreadForm.ISO, Length.ZERO));
  }
}
