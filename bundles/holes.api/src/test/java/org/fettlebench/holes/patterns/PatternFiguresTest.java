package org.fettlebench.holes.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.holes.patterns.MeasuredPattern.Hole;
import org.fettlebench.holes.patterns.MeasuredPattern.MeasuredPart;
import org.fettlebench.measure.Point;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plays by the floating and fixed cases of ASME Y14.5's appendix B; the rest by hand. */
class PatternFiguresTest {
  private static final Source SOURCE = new Source("a test", Standing.PUBLISHED);
  private static final PlacingLaw PLACED = PlacingLaw.normal(0.1, "dot", SOURCE);
  private static final PlacingLaw OVER = PlacingLaw.within(0.3, "lean", SOURCE);
  private static final HolePattern PAIR =
      HolePattern.at("pair", List.of(new Point(0, 0), new Point(9, 0)));

  private static PatternPart plain(String name, double holeMm) {
    return new PatternPart(name, OptionalDouble.of(holeMm), PLACED);
  }

  private static PatternPart tapped(String name) {
    return new PatternPart(name, OptionalDouble.empty(), PLACED);
  }

  private static PatternQuestion ask(PatternPart upper, PatternPart lower) {
    return new PatternQuestion(PAIR, 4, upper, lower, 100, 1);
  }

  private static String refusal(Runnable bad) {
    return assertThrows(IllegalArgumentException.class, bad::run).getMessage();
  }

  @Test
  void playIsHalfOfEachClearance() {
    PatternQuestion floating = ask(plain("cover", 4.4), plain("base", 4.6));
    assertEquals(0.5, floating.playMm(), 1e-12);
    assertFalse(floating.fixed());
    assertEquals(4.5, floating.holeForPlayMm(0.5));
    PatternQuestion fixed = ask(plain("cover", 4.4), tapped("base"));
    assertEquals(0.2, fixed.playMm(), 1e-12);
    assertTrue(fixed.fixed());
    assertEquals(5, fixed.holeForPlayMm(0.5));
    assertTrue(ask(tapped("cover"), plain("base", 4.6)).fixed());
    assertEquals(0.3, ask(tapped("cover"), plain("base", 4.6)).playMm(), 1e-12);
    // A fastener that one part does not pass is not helped by the other.
    assertEquals(-0.1, ask(plain("cover", 3.8), plain("base", 6)).playMm(), 1e-12);
    assertEquals(0.5, ask(plain("cover", 4), plain("base", 5)).playMm());
  }

  @Test
  void partsAreChangedAsAsked() {
    PatternQuestion fixed = ask(plain("cover", 4.4), tapped("base").leaning(OVER));
    assertEquals(OVER, fixed.leaning());
    assertEquals(OVER, ask(tapped("cover").leaning(OVER), plain("base", 5)).leaning());
    assertEquals(ask(plain("cover", 5), tapped("base").leaning(OVER)), fixed.withHoles(5));
    assertEquals(ask(tapped("a"), plain("b", 5)), fixed.withParts(tapped("a"), plain("b", 5)));
    PatternPart placed = tapped("base").leaning(OVER).placed(PlacingLaw.exact());
    assertEquals(new PatternPart("base", OptionalDouble.empty(), PlacingLaw.exact(), OVER), placed);
    assertTrue(refusal(() -> plain("cover", 5).leaning(OVER)).startsWith("cover has plain holes"));
    assertTrue(refusal(() -> plain("cover", 0)).startsWith("clearance hole of cover 0.0 mm"));
    assertTrue(refusal(() -> ask(tapped("a"), tapped("b"))).startsWith("a and b are both tapped"));
  }

  @ParameterizedTest
  @CsvSource({"0, 100", "100001, 100", "NaN, 100", "4, 99", "4, 10000001"})
  void figuresOutOfRangeAreRefused(double fastener, int trials) {
    PatternPart cover = plain("cover", 4.4);
    refusal(() -> new PatternQuestion(PAIR, fastener, cover, cover, trials, 1));
    assertEquals(
        10_000_000, new PatternQuestion(PAIR, 100_000, cover, cover, 10_000_000, 1).trials());
  }

  /** One that is even within a half has that over the root of 3. */
  @Test
  void spreadsOfPlacing() {
    assertEquals(0.1, PLACED.sigmaPerAxisMm(), 1e-15);
    assertEquals(0.3 / Math.sqrt(3), OVER.sigmaPerAxisMm(), 1e-15);
    assertEquals(0, PlacingLaw.exact().sigmaPerAxisMm());
    PlacingLaw law = PlacingLaw.of(new HoleMethod("dot", "Scribe", List.of(), 0.2, SOURCE));
    assertEquals(0.2, law.sigmaPerAxisMm(), 1e-15);
    assertEquals("Scribe (published)", law.means());
    refusal(() -> PlacingLaw.normal(0, "dot", SOURCE));
    refusal(() -> PlacingLaw.within(0, "dot", SOURCE));
  }

  @Test
  void holesOnACircleAreEvenlyTurned() {
    HolePattern ring = HolePattern.circle("ring", 60, 4, 30);
    assertTrue(ring.circleHoles());
    double far = 15 * Math.sqrt(3);
    double[][] places = {{far, 15}, {-15, far}, {-far, -15}, {15, -far}};
    for (int i = 0; i < 4; i++) {
      assertEquals(places[i][0], ring.centres().get(i).xMm(), 1e-12);
      assertEquals(places[i][1], ring.centres().get(i).yMm(), 1e-12);
    }
    assertFalse(PAIR.circleHoles());
    assertEquals(500, HolePattern.circle("most", 100_000, 500, 0).centres().size());
    refusal(() -> HolePattern.circle("ring", 60, 501, 0));
    assertEquals(
        "number of holes 0 is outside 1 to 500",
        refusal(() -> HolePattern.circle("ring", 60, 0, 0)));
    refusal(() -> HolePattern.circle("ring", 0, 4, 0));
    refusal(() -> HolePattern.at("none", List.of()));
    assertEquals(
        "pattern two has two holes in one place",
        refusal(() -> HolePattern.at("two", List.of(new Point(1, 1), new Point(1, 1)))));
  }

  /** A part with holes 10 mm apart; a diameter of 0 stands for a tapped hole. */
  private static MeasuredPart part(String name, double... diameters) {
    List<Hole> holes =
        IntStream.range(0, diameters.length)
            .mapToObj(
                i ->
                    new Hole(
                        new Point(10 * i, 2),
                        diameters[i] == 0
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(diameters[i])))
            .toList();
    return new MeasuredPart(name, holes);
  }

  private static MeasuredPattern measured(MeasuredPart upper, MeasuredPart lower) {
    return new MeasuredPattern("cover", 4, upper, lower, false);
  }

  @Test
  void measuredHolesHaveTheirOwnPlay() {
    MeasuredPattern floating = measured(part("cover", 4.4, 4.6), part("base", 5, 4));
    assertEquals(0.7, floating.playMm(0, 0), 1e-12);
    assertEquals(0.3, floating.playMm(1, 1), 1e-12);
    assertEquals(0.8, floating.playMm(1, 0), 1e-12);
    assertEquals(0.2, measured(part("cover", 4.4), part("base", 0)).playMm(0, 0), 1e-12);
    assertTrue(part("base", 0, 0).tapped());
    assertFalse(part("base", 4).tapped());
    assertFalse(part("base").tapped());
    MeasuredPart mirrored = part("base", 4, 5).mirrored();
    assertEquals(
        List.of(new Point(0, 2), new Point(-10, 2)),
        mirrored.holes().stream().map(Hole::centre).toList());
    assertEquals(OptionalDouble.of(5), mirrored.holes().get(1).clearanceMm());
    assertEquals("base", mirrored.name());
  }

  @Test
  void measuredHolesThatCannotBeAreRefused() {
    assertEquals(
        "cover has 1 holes and base 2: measure the same holes in both",
        refusal(() -> measured(part("cover", 5), part("base", 5, 5))));
    assertTrue(
        refusal(() -> measured(part("cover", 0), part("base", 0))).contains("are both tapped"));
    assertTrue(
        refusal(() -> measured(part("cover", 5, 5), part("base", 5, 3.9)))
            .startsWith("hole 2 of base, 3.9 mm, is smaller than the fastener, 4.0 mm"));
    assertTrue(refusal(() -> part("base", 0, 5)).startsWith("base has tapped and plain holes"));
    refusal(() -> part("base", -1));
    refusal(() -> measured(part("cover"), part("base")));
    refusal(() -> new MeasuredPattern("x", 0, part("cover", 5), part("base", 5), false));
  }

  @Test
  void roomIsThatOfTheWorstHole() {
    Point at = new Point(0, 0);
    PatternFit.HoleFit close = new PatternFit.HoleFit(1, 1, at, at, 0.1, 0.4, false);
    PatternFit.HoleFit worst = new PatternFit.HoleFit(2, 2, at, at, 0.5, 0.3, true);
    assertEquals(0.3, close.roomMm(), 1e-12);
    PatternFit fit =
        new PatternFit(
            measured(part("cover", 5, 5), part("base", 5, 5)),
            false,
            new PatternFit.Movement(at, 0, 0, 0, 0),
            Arrays.asList(close, worst),
            List.of(),
            false);
    assertEquals(-0.2, fit.roomMm(), 1e-12);
  }

  @Test
  void anEdgeRuleAddsItsShares() {
    EdgeRule rule = new EdgeRule("x", "a rule", EdgeRule.To.END, 2, 0.5, 3, 6, SOURCE);
    assertEquals(8 + 2.2 + 2.1, rule.leastMm(4, 4.4, 0.7), 1e-12);
    assertEquals(8 + 2.2, rule.leastMm(4, 4.4, 0), 1e-12);
    assertFalse(rule.holdsFor(6));
    assertTrue(rule.holdsFor(6.1));
    assertEquals("end", rule.to().word());
    refusal(() -> rule.leastMm(0, 4, 1));
    refusal(() -> rule.leastMm(4, 0, 1));
    assertEquals(
        "pitch of the thread -0.1 mm is outside 0 to 100000 mm",
        refusal(() -> rule.leastMm(4, 4, -0.1)));
    refusal(() -> rule.leastMm(4, 4, 100_001));
  }
}
