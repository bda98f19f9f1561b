package org.fettlebench.desktop.widgets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.desktop.widgets.trial.Windowed;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.junit.jupiter.api.Test;

class LengthFieldTest {
  @Test
  void whatIsTypedIsToldBothWays() {
    Windowed.run(
        "length",
        desk -> {
          List<Optional<Length>> told = new ArrayList<>();
          LengthField field = new LengthField(desk.shell(), desk).onChange(told::add);
          field.type("5/32");
          assertEquals(Optional.of(Length.ofInchFraction(5, 32)), field.value());
          assertTrue(field.told().contains("3.97 mm"), field.told());
          assertTrue(field.told().contains("0.156 in"), field.told());
          assertEquals(field.value(), told.get(told.size() - 1));
        });
  }

  @Test
  void aBareNumberTakesTheUnitBesideTheField() {
    Windowed.run(
        "bare",
        desk -> {
          LengthField field = new LengthField(desk.shell(), desk);
          field.type("2");
          assertEquals(Optional.of(Length.ofMillimetres(2)), field.value());
          desk.unit(LengthUnit.INCH);
          assertEquals(Optional.of(Length.ofInches(2)), field.value());
        });
  }

  @Test
  void whatIsNoLengthIsComplainedOfUnderTheField() {
    Windowed.run(
        "complaint",
        desk -> {
          LengthField field = new LengthField(desk.shell(), desk);
          field.type("abc");
          assertEquals(Optional.empty(), field.value());
          assertTrue(field.told().contains("abc"), field.told());
          field.type("");
          assertEquals("", field.told());
        });
  }
}
