package org.fettlebench.paper.internal;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Casting;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Freedom;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.castings.Towards;
import org.fettlebench.castings.internal.CastingPainter;
import org.fettlebench.castings.internal.CastingPlacer;
import org.fettlebench.measure.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Figures are sums done on paper, shown beside each. */
class CastingCardServiceTest {
  private final CastingCardService cards = new CastingCardService(new CastingPainter());

  private static FlatFace face(String name, Towards towards, double finished, Spot... rough) {
    return new FlatFace(name, towards, finished, 0.5, List.of(rough), 0.1);
  }

  private static Placing place(List<Feature> features, Freedom freedom) {
    return new CastingPlacer().place(new Casting("slide valve", features, freedom));
  }

  /** A plate finished 12 mm out of a rough one whose back lies at a height. */
  private static Placing plate(double backMm) {
    return place(
        List.of(
            face("face", Towards.DOWN, 0, new Spot(0, 0, 0)),
            face("back", Towards.UP, 12, new Spot(0, 0, backMm))),
        new Freedom(Set.of(Axis.Z), Set.of(), 1));
  }

  /** 14 rough, 12 finished: 1 off each side, of which 0.5 is the cut and 0.1 may be out. */
  @Test
  void whatIsScribedStandsOnTheCard() throws IOException {
    String text = CardText.read(pdf -> cards.card(plate(14), false, LengthUnit.MILLIMETRE, pdf));
    assertTrue(text.contains("Slide valve"), text);
    assertTrue(text.contains("cleans up"), text);
    assertTrue(text.contains("0.40 mm (0.016 in) to spare; face and back govern."), text);
    assertTrue(
        text.contains(
            "Along z from face: finished face 1.00 mm (0.039 in) under the rough; from that line"
                + " on: back 12.00 mm (0.472 in)."),
        text);
    assertTrue(text.contains("From the front"), text);
    assertFalse(text.contains("From above"), "nothing of the plate is seen from there: " + text);
    assertTrue(text.contains("50 mm when printed at full size"), text);
    assertTrue(text.contains("Swarf of cast iron is dust"), text);
    assertFalse(text.contains("inspector"), text);
  }

  /** 12.8 rough: 0.4 off each side, less 0.5 and 0.1 is 0.2 short; 0.4 deeper would do. */
  @Test
  void whatWouldHaveToGiveStandsOnTheCard() throws IOException {
    String text = CardText.read(pdf -> cards.card(plate(12.8), true, LengthUnit.INCH, pdf));
    assertTrue(text.contains("will not clean up"), text);
    assertTrue(text.contains("By 0.008 in (0.20 mm)"), text);
    assertTrue(text.contains("gives 0.016 in (0.40 mm) (deeper)"), text);
    assertTrue(text.contains("2 in when printed at full size"), text);
    assertTrue(text.contains("boiler inspector"), text);
  }

  /** 13.25 rough: 0.625 off each side leaves 0.025 to spare, less than the 0.1 it may be out. */
  @Test
  void whatJustCleansUpSaysSo() throws IOException {
    String text = CardText.read(pdf -> cards.card(plate(13.25), false, LengthUnit.MILLIMETRE, pdf));
    assertTrue(text.contains("just cleans up"), text);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 4, 30})
  void anyNumberOfFacesMakesOnePage(int bores) throws IOException {
    List<Feature> features = new ArrayList<>();
    for (Towards towards : Towards.values()) {
      double at = towards.sign() < 0 ? -1 : 31;
      double finished = towards.sign() < 0 ? 0 : 30;
      features.add(
          face(
              "the face that looks " + towards.word(),
              towards,
              finished,
              new Spot(
                  towards.axis() == Axis.X ? at : 2,
                  towards.axis() == Axis.Y ? at : 2,
                  towards.axis() == Axis.Z ? at : 2),
              new Spot(
                  towards.axis() == Axis.X ? at + 0.1 : 28,
                  towards.axis() == Axis.Y ? at - 0.1 : 28,
                  towards.axis() == Axis.Z ? at : 28)));
    }
    for (int i = 0; i < bores; i++) {
      features.add(
          new RoundFace(
              "bore " + i,
              RoundFace.Kind.BORE,
              Axis.Y,
              new Spot(4 + i % 6 * 4, 0, 4 + i / 6 * 4),
              3,
              0.2,
              List.of(new RoundFace.Rough(new Spot(4 + i % 6 * 4, 0, 4 + i / 6 * 4), 1)),
              0.05));
    }
    Placing placing = place(features, new Freedom(Set.of(Axis.values()), Set.of(Axis.values()), 2));
    for (LengthUnit unit : LengthUnit.values()) {
      String card = CardText.read(pdf -> cards.card(placing, true, unit, pdf));
      assertTrue(card.contains("From above") && card.contains("From the right"), card);
      CardText.read(pdf -> cards.views(placing, unit, pdf));
    }
  }
}
