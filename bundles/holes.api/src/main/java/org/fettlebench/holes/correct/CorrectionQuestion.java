package org.fettlebench.holes.correct;

import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.measure.Point;

/**
 * A hole is drilled and was measured: what now? Places are as seen from the face that is looked at.
 *
 * @param target where the centre should be
 * @param found the hole as it is
 * @param finishDiameterMm the hole in the end; not smaller than the hole as it is
 * @param rules margins to keep
 * @param tools drills and files at hand
 * @param around what else depends on the place
 */
public record CorrectionQuestion(
    Point target, Found found, double finishDiameterMm, Rules rules, Tools tools, Around around) {
  /**
   * Checks the sizes against each other.
   *
   * @throws HoleException if the finished hole would be smaller than the hole as it is
   */
  public CorrectionQuestion {
    Require.positive("finished diameter", finishDiameterMm);
    if (!(finishDiameterMm >= found.diameterMm())) {
      throw new HoleException(
          "finished diameter "
              + finishDiameterMm
              + " mm is smaller than the hole as it is, "
              + found.diameterMm()
              + " mm; a hole does not grow smaller: give the size it shall have in the end");
    }
  }

  /**
   * A hole as it was measured.
   *
   * @param centre its centre
   * @param diameterMm its diameter; above 0
   * @param withinMm radius that holds the true centre at 95 per cent; 0 or more
   */
  public record Found(Point centre, double diameterMm, double withinMm) {
    /**
     * Refuses what is no hole.
     *
     * @throws HoleException if a figure is out of range
     */
    public Found {
      Require.positive("hole diameter", diameterMm);
      Require.notNegative("uncertainty of the hole's centre", withinMm);
    }
  }

  /**
   * Margins.
   *
   * @param cleanUp metal that the last drill must find on every side
   * @param filing how far a hole filed to a line may end from its place
   * @param bushWallMm least wall of a bush; above 0
   * @param bushMeans where that figure comes from
   */
  public record Rules(CleanUp cleanUp, ExpectedError filing, double bushWallMm, String bushMeans) {
    /**
     * Refuses a bush without a wall.
     *
     * @throws HoleException if the wall is not above 0
     */
    public Rules {
      Require.positive("wall of a bush", bushWallMm);
    }
  }

  /**
   * Tools at hand, in any order.
   *
   * @param drills drills
   * @param roundFiles round and needle files by their greatest diameter
   * @param catalogue drills that can be bought, for what none at hand will do; may be empty
   */
  public record Tools(List<Cutter> drills, List<Cutter> roundFiles, List<Cutter> catalogue) {
    /** Copies what could change. */
    public Tools {
      drills = List.copyOf(drills);
      roundFiles = List.copyOf(roundFiles);
      catalogue = List.copyOf(catalogue);
    }

    /** Only what is at hand counts. */
    public Tools(List<Cutter> drills, List<Cutter> roundFiles) {
      this(drills, roundFiles, List.of());
    }
  }

  /**
   * What depends on the hole's place.
   *
   * @param seat the seat and its head, with the hole intended at the target; empty when nothing
   *     bears there
   * @param otherHeads heads that would hold as well, in order of preference
   * @param mateOpen whether the hole in the mating part is still to be drilled and may be moved
   */
  public record Around(Optional<SeatQuestion> seat, List<SeatedHead> otherHeads, boolean mateOpen) {
    /** Nothing is known round the hole, and the mating hole is there already. */
    public static final Around NOTHING = new Around(Optional.empty(), List.of(), false);

    /** Copies what could change. */
    public Around {
      otherHeads = List.copyOf(otherHeads);
    }
  }
}
