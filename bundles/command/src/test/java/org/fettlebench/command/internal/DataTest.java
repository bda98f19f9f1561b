package org.fettlebench.command.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DataTest {
  @Test
  void lengthsAreExactAndShort() {
    assertEquals(new BigDecimal("0.396875"), Data.mm(Length.ofInchFraction(1, 64)));
    assertEquals(new BigDecimal("0.015625"), Data.in(Length.ofInchFraction(1, 64)));
    assertEquals("4000", Data.mm(Length.ofMillimetres(4000)).toPlainString());
    assertEquals("4000", Data.mm(Length.ofMillimetres(4000)).toString());
    assertEquals("0.1", Data.mm(0.1).toString());
    assertEquals("0.3", Data.mm(0.1 + 0.2).toString());
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void refusesWhatIsNoNumber(double value) {
    assertThrows(ArithmeticException.class, () -> Data.mm(value));
  }

  @Test
  void keepsTheOrderAndLeavesOutWhatIsAbsent() {
    assertEquals(
        "[z, a]",
        Data.of("z", 1, "gone", Optional.empty(), "a", Optional.of(2)).keySet().toString());
  }

  @Test
  void jsonKeepsOrderAndWritesPlainNumbers() {
    String json = JsonText.of(Data.of("z", List.of(1, true, "½\"\n"), "a", new BigDecimal("1E+3")));
    assertEquals("{\"z\":[1,true,\"½\\\"\\n\"],\"a\":1000}", json.replaceAll("(?<!\\\\)\\s", ""));
  }

  @Test
  void jsonRefusesWhatItDoesNotKnow() {
    assertThrows(
        IllegalArgumentException.class, () -> JsonText.of(Data.of("a", Length.ofMillimetres(1))));
  }
}
