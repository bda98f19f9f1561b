package org.fettlebench.holes.internal.correct;

import static org.fettlebench.holes.internal.correct.Lug.RULES;
import static org.fettlebench.holes.internal.correct.Lug.TARGET;
import static org.fettlebench.holes.internal.correct.Lug.TOOLS;
import static org.fettlebench.holes.internal.correct.Lug.ask;
import static org.fettlebench.holes.internal.correct.Lug.cutters;
import static org.fettlebench.holes.internal.correct.Lug.round;
import static org.fettlebench.holes.internal.correct.Lug.seat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Verdict;
import org.fettlebench.fits.internal.SeatChecker;
import org.fettlebench.holes.correct.CorrectionAnswer;
import org.fettlebench.holes.correct.CorrectionAnswer.Outcome;
import org.fettlebench.holes.correct.CorrectionAnswer.WayOut;
import org.fettlebench.holes.correct.CorrectionQuestion;
import org.fettlebench.holes.correct.CorrectionQuestion.Around;
import org.fettlebench.holes.correct.CorrectionQuestion.Found;
import org.fettlebench.holes.correct.CorrectionQuestion.Tools;
import org.fettlebench.holes.correct.Cutter;
import org.junit.jupiter.api.Test;

/** What remains possible besides filing to the target. */
class WaysOutTest {
  private static final double EXACT = 1e-9;
  private final CorrectionFinder finder = new CorrectionFinder(new SeatChecker());

  private CorrectionAnswer alone(double dx, double dy) {
    return finder.correct(ask(dx, dy, 0.02, Around.NOTHING));
  }

  @Test
  void whereTheHeadFoulsEvenAtTheTargetMoreIsOffered() {
    // The right edge is 5 from the target and the head needs 7; one of 8 needs 4.
    CorrectionAnswer answer = finder.correct(ask(0.4, 0, 0.02, seat(15, 14, false, round(8))));
    assertEquals(Outcome.FILE, answer.outcome());
    assertEquals(Verdict.FOULS, answer.filing().orElseThrow().after().orElseThrow().verdict());
    assertEquals(
        List.of(WayOut.Kind.OTHER_HEAD), answer.waysOut().stream().map(WayOut::kind).toList());
  }

  @Test
  void theMatingHoleMayFollowWhenTheHeadSits() {
    CorrectionAnswer answer = finder.correct(ask(0, 0.29, 0.28, seat(20, 15.4, true)));
    // 0.3 of room away, less 0.29, measured within 0.28: tight, so not simply left.
    assertEquals(WayOut.Kind.MOVE_MATE, answer.waysOut().get(0).kind());
    assertEquals(Verdict.TIGHT, answer.waysOut().get(0).after().orElseThrow().verdict());
    assertTrue(
        answer.waysOut().get(0).sentence().contains("0.29 mm (0.011 in) away as seen from this"),
        answer.waysOut().get(0).sentence());
  }

  @Test
  void whatRemainsPastCureIsCheckedAgain() {
    // 0.3 of room to the right; 1.1 out is past 0.9 and filing in part leaves 0.2.
    CorrectionAnswer answer =
        finder.correct(ask(1.1, 0, 0.02, seat(17.3, 14, true, round(13.9), round(12))));
    assertEquals(Outcome.PAST_CURE, answer.outcome());
    List<WayOut> ways = answer.waysOut();
    assertEquals(
        List.of(
            WayOut.Kind.FILE_PART,
            WayOut.Kind.OTHER_HEAD,
            WayOut.Kind.BIGGER_HOLE,
            WayOut.Kind.BUSH),
        ways.stream().map(WayOut::kind).toList());
    WayOut part = ways.get(0);
    assertEquals(10.2, part.centre().xMm(), EXACT);
    assertEquals(0.1, part.after().orElseThrow().allowanceAtIntendedMm(), 1e-6);
    assertTrue(
        part.sentence().startsWith("file 1.80 mm (0.071 in) off the side towards 9 o'clock"));
    // 14 fouls by 0.8 and 13.9 by 0.75; 12 has 7.3 - 1.1 - 6 = 0.2.
    assertEquals(0.2, ways.get(1).after().orElseThrow().allowanceAtIntendedMm(), 1e-6);
    // 4 + 2 (1.1 + 0.02 + 0.1) = 6.44.
    assertEquals(7, ways.get(2).diameterMm());
    assertEquals(TARGET, ways.get(2).centre());
    // 6 + 2 (1.1 + 0.02 + 1) = 10.24.
    assertEquals(12, ways.get(3).diameterMm());
    assertTrue(ways.get(3).sentence().contains("thinnest wall is 1.90 mm"));
    ways.forEach(
        way -> assertTrue(way.after().orElseThrow().verdict() != Verdict.FOULS, way.sentence()));
  }

  @Test
  void noPlugWhereItWouldBreakOut() {
    // The plug of 12 mm at 11.1 would reach to 17.1: beyond an edge at 17.
    CorrectionAnswer answer = finder.correct(ask(1.1, 0, 0.02, seat(17, 13.9, false)));
    assertTrue(answer.waysOut().stream().noneMatch(way -> way.kind() == WayOut.Kind.BUSH));
  }

  @Test
  void noBiggerHoleThanTheHeadCovers() {
    CorrectionAnswer answer = finder.correct(ask(1.1, 0, 0.02, seat(20, 6.9, false)));
    assertEquals(Outcome.LEAVE, answer.outcome());
    CorrectionAnswer close = finder.correct(ask(0, 7.6, 0.02, seat(20, 6.9, false)));
    assertTrue(close.waysOut().stream().noneMatch(way -> way.kind() == WayOut.Kind.BIGGER_HOLE));
  }

  @Test
  void withoutASeatTheWaysStandUnchecked() {
    CorrectionAnswer answer = alone(1.1, 0);
    assertEquals(
        List.of(WayOut.Kind.FILE_PART, WayOut.Kind.BIGGER_HOLE, WayOut.Kind.BUSH),
        answer.waysOut().stream().map(WayOut::kind).toList());
    assertTrue(answer.asIs().isEmpty());
    assertTrue(answer.waysOut().stream().allMatch(way -> way.after().isEmpty()));
  }

  private List<WayOut> ways(CorrectionQuestion question) {
    return finder.correct(question).waysOut();
  }

  private static CorrectionQuestion holding(double error, Around around, double... drills) {
    return holding(error, around, new Tools(cutters(drills), List.of()));
  }

  private static CorrectionQuestion holding(double error, Around around, Tools tools) {
    return new CorrectionQuestion(
        TARGET, new Found(TARGET.moved(error, 0), 4, 0.02), 6, RULES, tools, around);
  }

  private Optional<WayOut> way(WayOut.Kind kind, CorrectionQuestion question) {
    return ways(question).stream().filter(each -> each.kind() == kind).findFirst();
  }

  /** To the right 1.11 of room: left where it is 0.01 remains, which is tight; filed it clears. */
  @Test
  void whatClearsComesBeforeWhatIsTight() {
    List<WayOut> ways = ways(holding(1.1, seat(18.11, 14, true)));
    assertEquals(
        List.of(WayOut.Kind.FILE_PART, WayOut.Kind.MOVE_MATE),
        ways.stream().map(WayOut::kind).toList());
    assertEquals(
        "leave the hole where it is and spot the mating hole through it, 1.10 mm (0.043 in) right"
            + " as seen from this face; then the head is tight, allowance 0.010 mm (0.4 thou)",
        ways.get(1).sentence());
    assertEquals(
        "file 1.80 mm (0.071 in) off the side towards 9 o'clock (left): that brings the hole"
            + " 0.90 mm (0.035 in) nearer, 0.20 mm (0.008 in) remain; then the head clears,"
            + " allowance 0.91 mm (0.036 in)",
        ways.get(0).sentence());
  }

  @Test
  void aHeadThatFoulsTooIsNotOffered() {
    assertTrue(
        way(WayOut.Kind.OTHER_HEAD, holding(1.1, seat(17.3, 14, false, round(13.9)))).isEmpty());
  }

  /** Left where it is, a head of 12.39 has 0.005 of room and one of 12 has 0.2. */
  @Test
  void theHeadThatClearsIsTakenAndItsFiguresAreDoubtedWhereTheyAre() {
    SeatedHead remembered =
        new SeatedHead(
            "hexagon",
            12,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            "from memory");
    assertEquals(
        "leave the hole where it is and use hexagon (figures from memory); then the head clears,"
            + " allowance 0.20 mm (0.008 in)",
        way(WayOut.Kind.OTHER_HEAD, holding(1.1, seat(17.3, 14, false, round(12.39), remembered)))
            .orElseThrow()
            .sentence());
    assertEquals(
        "leave the hole where it is and use round 12.0; then the head clears, allowance 0.20 mm"
            + " (0.008 in)",
        way(WayOut.Kind.OTHER_HEAD, holding(1.1, seat(17.3, 14, false, round(12))))
            .orElseThrow()
            .sentence());
  }

  /** 4 + 2 (1.1 + 0.02 + 0.1) = 6.44 is the least that cleans up about the target. */
  @Test
  void theBiggerHoleCleansUpAndNoMore() {
    WayOut bigger =
        way(WayOut.Kind.BIGGER_HOLE, holding(1.1, Around.NOTHING, 12, 6.45, 6.43, 9)).orElseThrow();
    assertEquals(6.45, bigger.diameterMm());
    assertEquals(
        "file 2.20 mm (0.087 in) off the side towards 9 o'clock (left) and finish with 6.45 mm,"
            + " 0.45 mm (0.018 in) larger: for a larger fastener, or with that much more"
            + " clearance",
        bigger.sentence());
    assertTrue(way(WayOut.Kind.BIGGER_HOLE, holding(1.1, Around.NOTHING, 6.43)).isEmpty());
  }

  /** The head fouls even at the target, so all is asked for: 4 + 2 (0.5 + 0.12) = 5.24. */
  @Test
  void aHoleThatIsNoBiggerIsNoWayOut() {
    Around narrow = seat(15, 14, false);
    assertTrue(way(WayOut.Kind.BIGGER_HOLE, holding(0.5, narrow, 5.25)).isEmpty());
    assertTrue(way(WayOut.Kind.BIGGER_HOLE, holding(0.5, Around.NOTHING, 6)).isEmpty());
  }

  /** A head of 9 in a seat where the hole must grow to 9: nothing would bear. */
  @Test
  void theBiggerHoleLeavesSomethingToBearOn() {
    Around around = seat(13.3, 9, false);
    assertTrue(way(WayOut.Kind.BIGGER_HOLE, holding(-1.9, around, 9)).isEmpty());
  }

  /** As above, 6.44 cleans up and 10.24 takes the plug: what is at hand goes before what is not. */
  @Test
  void whatNoDrillAtHandDoesIsOfferedFromTheCatalogue() {
    List<Cutter> listed = cutters(12, 10.3, 6.5, 6.43, 4);
    Tools few = new Tools(cutters(6.6), List.of(), listed);
    List<WayOut> ways = ways(holding(1.1, Around.NOTHING, few));
    WayOut bigger = ways.get(1);
    assertEquals(6.6, bigger.diameterMm());
    assertTrue(bigger.toGet().isEmpty());
    WayOut bush = ways.get(2);
    assertEquals(WayOut.Kind.BUSH, bush.kind());
    assertEquals(10.3, bush.toGet().orElseThrow().diameterMm());
    assertTrue(bush.sentence().startsWith("open out where it is with 10.3 mm (not at hand), fit"));
    // 4 + 2 (1.9 + 0.02 + 0.1) = 8.04; at 9 nothing would bear, 8.1 can be bought.
    Around seat = seat(15, 9, false);
    Tools wide = new Tools(cutters(9), List.of(), cutters(9, 8.1, 8));
    WayOut bought = way(WayOut.Kind.BIGGER_HOLE, holding(1.9, seat, wide)).orElseThrow();
    assertEquals(8.1, bought.toGet().orElseThrow().diameterMm());
    assertNotEquals(Verdict.FOULS, bought.after().orElseThrow().verdict());
  }

  /** A head of 6 drops through the hole of 6, and must not stop the other ways either. */
  @Test
  void anotherHeadThatDropsThroughIsPassedOver() {
    List<WayOut> ways = ways(holding(1.1, seat(17.3, 14, false, round(6), round(12))));
    assertEquals(
        12,
        ways.stream()
            .filter(way -> way.kind() == WayOut.Kind.OTHER_HEAD)
            .findFirst()
            .flatMap(WayOut::after)
            .orElseThrow()
            .question()
            .head()
            .sweepDiameterMm());
  }

  @Test
  void aHoleLeftForTheHeadStillHasToMeetItsMate() {
    CorrectionAnswer answer = finder.correct(holding(1.1, seat(30, 9, false)));
    assertEquals(CorrectionAnswer.Outcome.LEAVE, answer.outcome());
    assertEquals(
        List.of(
            "that goes for the head only: the mating hole is off by 1.10 mm (0.043 in), radius;"
                + " spot it through this hole, or see that the fastener has so much play"),
        answer.cautions());
    assertEquals(List.of(), finder.correct(holding(1.1, seat(30, 9, true))).cautions());
    assertEquals(List.of(), finder.correct(holding(1.1, Around.NOTHING)).cautions());
  }

  /** 6 + 2 (1.1 + 0.02 + 1) = 10.24 leaves a wall of 1 mm all round the hole drilled anew. */
  @Test
  void theBushKeepsItsWall() {
    WayOut bush =
        way(WayOut.Kind.BUSH, holding(1.1, Around.NOTHING, 12, 10.26, 10.23)).orElseThrow();
    assertEquals(10.26, bush.diameterMm());
    assertEquals(
        "open out where it is with 10.26 mm, fit a plug, and drill that anew where the hole should"
            + " be; its thinnest wall is 1.03 mm (0.041 in) (a test: at least 1.00 mm (0.039 in))",
        bush.sentence());
    assertTrue(way(WayOut.Kind.BUSH, holding(1.1, Around.NOTHING, 10.23)).isEmpty());
  }

  @Test
  void aHoleThatCannotBeFiledNearerIsNotFiled() {
    // Drilled to 5.9: (6 - 5.9) / 2 is less than the 0.1 that is left to clean up.
    CorrectionQuestion full =
        new CorrectionQuestion(
            TARGET, new Found(TARGET.moved(0.5, 0), 5.9, 0.02), 6, RULES, TOOLS, Around.NOTHING);
    assertTrue(way(WayOut.Kind.FILE_PART, full).isEmpty());
    // What can be filed away whole is filing, no way out.
    assertTrue(way(WayOut.Kind.FILE_PART, holding(0.9, Around.NOTHING)).isEmpty());
  }
}
