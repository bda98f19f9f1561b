package org.fettlebench.holes.correct;

import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/**
 * What to do about a hole that is there.
 *
 * @param question what was asked
 * @param outcome in a word
 * @param errorMm radius of position error: from the target to the hole's centre
 * @param error the way in which the hole is out; empty when it is not out at all
 * @param curableMm largest radius of position error that filing could cure; may be negative
 * @param filing how to file to the target; present when the hole is out and filing can cure it,
 *     even when it may be left
 * @param waysOut what remains possible besides filing to the target, the least trouble first, each
 *     worked out again before it is offered
 * @param asIs the seat with the hole where it is; present when the question has a seat
 */
public record CorrectionAnswer(
    CorrectionQuestion question,
    Outcome outcome,
    double errorMm,
    Optional<Direction> error,
    double curableMm,
    Optional<Filing> filing,
    List<WayOut> waysOut,
    Optional<SeatAnswer> asIs) {
  /** Copies what could change. */
  public CorrectionAnswer {
    waysOut = List.copyOf(waysOut);
  }

  /**
   * Returns what else to look at, for people: a hole that the head lets stay where it is still has
   * to meet its mating hole.
   */
  public List<String> cautions() {
    if (outcome != Outcome.LEAVE || question.around().mateOpen()) {
      return List.of();
    }
    return List.of(
        "that goes for the head only: the mating hole is off by "
            + LengthFormat.allowanceBoth(Length.ofMillimetres(errorMm), LengthUnit.MILLIMETRE)
            + ", radius; spot it through this hole, or see that the fastener has so much play");
  }

  /** What to do, in a word. */
  public enum Outcome {
    /** The measurement cannot tell the error from none. */
    ON_TARGET("on target"),
    /** The seat has room for the error: leave the hole where it is. */
    LEAVE("leave it"),
    /** Filing cures it. */
    FILE("file"),
    /** Filing cures it if the hole is where it was found, but not if it is as far as it may be. */
    FILE_IN_DOUBT("file, in doubt"),
    /** No filing inside the finished size brings it to the target. */
    PAST_CURE("past cure");

    private final String word;

    Outcome(String word) {
      this.word = word;
    }

    /** Returns the word shown to people. */
    public String word() {
      return word;
    }
  }

  /**
   * How to file: a crescent, deepest opposite the error, running out where the hole stands off
   * most. What is left is a round hole about the target.
   *
   * @param towards the side of the hole to file, from its centre: opposite the error
   * @param edge the edge of the face that lies that way, for people; empty when no outline is known
   * @param deepestMm what comes off in the middle of that side: twice the error
   * @param quartersMm what comes off a quarter of a turn to each side of it, seen from the target:
   *     little more than the error
   * @param filedDiameterMm diameter of the filed hole, about the target: the hole as it is and
   *     twice the error
   * @param lastCutMm what the last drill then cuts per side
   * @param file the largest round file at hand that goes into the hole; empty when none does
   * @param between a drill at hand to open out with first, that cleans the filing up and still
   *     leaves the clean-up margin: measure again after it, and what is left can be filed once more
   * @param finish the drill of the finished size; empty when it is not at hand
   * @param after the seat with the hole filed to the target; present when the question has a seat
   */
  public record Filing(
      Direction towards,
      String edge,
      double deepestMm,
      double quartersMm,
      double filedDiameterMm,
      double lastCutMm,
      Optional<Cutter> file,
      Optional<Cutter> between,
      Optional<Cutter> finish,
      Optional<SeatAnswer> after) {}

  /**
   * Something that remains possible.
   *
   * @param kind what it is
   * @param sentence what to do, with figures
   * @param centre where the finished hole's centre is then
   * @param diameterMm the finished hole, or the hole for the bush
   * @param toGet the drill of the catalogue that it takes when none at hand will do; empty when
   *     everything is at hand
   * @param after the seat then; present when the question has a seat
   */
  public record WayOut(
      Kind kind,
      String sentence,
      Point centre,
      double diameterMm,
      Optional<Cutter> toGet,
      Optional<SeatAnswer> after) {
    /** Kinds of way out. */
    public enum Kind {
      /** Leave it and let the mating hole follow. */
      MOVE_MATE,
      /** File as far as the finished size allows, which is near enough. */
      FILE_PART,
      /** Finish the hole larger. */
      BIGGER_HOLE,
      /** Open out where it is, fit a plug and drill through that where it should be. */
      BUSH,
      /** Leave it and use a head that sits there. */
      OTHER_HEAD
    }
  }
}
