package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.fettlebench.fits.SeatException;
import org.fettlebench.fits.Spanner;
import org.fettlebench.tables.FixedTables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpannerTablesTest {
  private final SpannerTables spanners =
      new SpannerTables(
          FixedTables.carriedBy(SpannerTables.class),
          (table, fault) -> {
            throw fault;
          });

  @Test
  void sizesOfNoTableGoByTheRuleAndSaySo() {
    Spanner ring = spanners.find(Spanner.Kind.RING, 8.23).orElseThrow();
    Spanner open = spanners.find(Spanner.Kind.OPEN, 10).orElseThrow();

    assertEquals(1.5 * 8.23 + 4, ring.headDiameterMm(), 1e-9);
    assertEquals("ring spanner for 8.23 mm", ring.title());
    assertTrue(ring.standing().endsWith("(from memory)"), ring.standing());
    assertEquals(28, open.headDiameterMm(), 1e-9);
    assertTrue(spanners.find(Spanner.Kind.SOCKET, 8.23).isEmpty());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, 1e9})
  void sizesThatCannotBe(double flats) {
    assertThrows(SeatException.class, () -> spanners.find(Spanner.Kind.RING, flats));
  }
}
