package org.fettlebench.castings.internal;

import static org.fettlebench.castings.internal.TrialDrawings.face;
import static org.fettlebench.castings.internal.TrialDrawings.place;
import static org.fettlebench.castings.internal.TrialDrawings.round;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.fettlebench.castings.CastingView;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.PlacingWords;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.castings.Towards;
import org.fettlebench.measure.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of a placing, and from where it is drawn. */
class WordsAndViewsTest {
  private static FlatFace side(Towards towards) {
    double at = towards.sign() > 0 ? 31 : -1;
    double[] spot = new double[3];
    spot[towards.axis().ordinal()] = at;
    return face(
        towards.word(), towards, towards.sign() > 0 ? 30 : 0, new Spot(spot[0], spot[1], spot[2]));
  }

  @ParameterizedTest
  @CsvSource({
    "x, FRONT",
    "y, PLAN",
    "z, FRONT",
    "xy, PLAN",
    "xz, FRONT",
    "yz, SIDE",
    "xyz, FRONT PLAN SIDE",
  })
  void onlyViewsThatShowWhatWasMeasuredMatter(String axes, String views) {
    Feature[] faces =
        List.of(Towards.values()).stream()
            .filter(way -> axes.contains(way.axis().word()))
            .map(WordsAndViewsTest::side)
            .toArray(Feature[]::new);
    assertEquals(
        List.of(views.split(" ")),
        CastingView.of(place(faces).casting()).stream().map(CastingView::name).toList());
  }

  @Test
  void aBoreIsNamedInTheViewFromItsEndAndAFaceInThoseFromItsEdge() {
    Placing placing = place(round(RoundFace.Kind.BORE, 0, 0, 20, 16));
    assertEquals(List.of(CastingView.FRONT), CastingView.of(placing.casting()));
    Feature bore = placing.casting().features().get(0);
    assertEquals(
        List.of(false, true, false),
        List.of(CastingView.values()).stream().map(view -> view.names(bore)).toList());
    assertEquals(
        List.of(false, true, true),
        List.of(CastingView.values()).stream().map(view -> view.names(side(Towards.UP))).toList());
  }

  private static Placing plate(double topMm, double mayBeOut) {
    return place(
        new FlatFace("foot", Towards.DOWN, 0, 0.5, List.of(new Spot(0, 0, 0)), mayBeOut),
        new FlatFace("top", Towards.UP, 12, 0.5, List.of(new Spot(0, 0, topMm)), mayBeOut));
  }

  /** 12 finished, 0.5 to cut, 0.1 or nothing out: what is left of the rough is halved. */
  @ParameterizedTest
  @CsvSource({
    "14, 0.1, CLEANS_UP", // 1 - 0.6 = 0.4
    "13.4, 0.1, CLEANS_UP", // 0.7 - 0.6 = 0.1, as much as a reading may be out
    "13.38, 0.1, JUST", // 0.69 - 0.6 = 0.09
    "13.2, 0.1, JUST", // 0.6 - 0.6 = 0
    "13.18, 0.1, SHORT", // 0.59 - 0.6
    "13, 0, JUST", // 0.5 - 0.5: nothing may be out, nothing is left
    "13.02, 0, CLEANS_UP", // 0.01
    "12.98, 0, SHORT",
  })
  void aCastingJustCleansUpWithLessToSpareThanAReadingMayBeOut(
      double top, double mayBeOut, Placing.Outcome outcome) {
    assertEquals(outcome, plate(top, mayBeOut).outcome());
  }

  @Test
  void spotsUnderWhichTheFaceLiesEquallyDeepAreNamedTogether() {
    Placing placing =
        place(
            face(
                "foot",
                Towards.DOWN,
                0,
                new Spot(0, 0, -1),
                new Spot(9, 0, -1.5),
                new Spot(0, 9, -1)),
            face("top", Towards.UP, 12, new Spot(0, 0, 13), new Spot(9, 0, 13)),
            round(RoundFace.Kind.BORE, 4, 5, 6, 3));
    PlacingWords words = new PlacingWords(placing, LengthUnit.MILLIMETRE);
    assertEquals(
        List.of(
            "along z from foot: finished face 1.00 mm (0.039 in) under spots 1 and 3 and 1.50 mm"
                + " (0.059 in) under spot 2"),
        words.settingOut());
    assertEquals(
        "from that line on: top 12.00 mm (0.472 in) and centre of bore 5.00 mm (0.197 in)",
        words.onwards(placing.settingOut().get(0)));
    Placing even = place(side(Towards.DOWN), side(Towards.UP));
    assertEquals(
        "along z from down: finished face 1.00 mm (0.039 in) under the rough",
        new PlacingWords(even, LengthUnit.MILLIMETRE).settingOut().get(0));
  }
}
