package org.fettlebench.tooling;

import java.util.Collection;
import java.util.List;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Source;
import org.fettlebench.threads.ScrewThread;
import org.osgi.annotation.versioning.ProviderType;

/** Chooses drills for a thread out of those at hand, and depths for a blind hole. */
@ProviderType
public interface HoleChooser {
  /**
   * Ranks drills as tapping drills by closeness to the asked per cent of thread; of two equally
   * close, the larger goes first, since it is easier on the tap. Left out are drills that leave
   * less than 20 per cent (no thread worth the name) and those that leave more than 100 per cent (a
   * tap would jam).
   *
   * <p>A choice carries a concern when the drill is outside the limits of the nut's minor diameter
   * in the thread's class or leaves more than 90 per cent (taps break; common practice, no source),
   * or, where no such limits are known, below the basic minor diameter or outside 50 to 85 per cent
   * (common practice, no source).
   *
   * @param thread the thread to tap
   * @param wantedPercent per cent of thread wanted, above 0 to 100
   * @param from drills at hand, or the whole catalogue
   * @return best first; empty when none will do
   * @throws MeasureException if the per cent is outside its range
   */
  List<TappingChoice> tapping(ScrewThread thread, double wantedPercent, Collection<DrillSize> from);

  /**
   * Ranks drills as the other {@code tapping} does. Where nobody told a per cent or a material, the
   * drills that lists name for the thread go first, those of most lists foremost, as long as they
   * leave within 10 per cent of what is wanted: so the choice is that of wall charts.
   *
   * @see PercentWanted#untold
   */
  List<TappingChoice> tapping(ScrewThread thread, PercentWanted wanted, Collection<DrillSize> from);

  /**
   * Returns the tapping drills that lists name for a thread, smallest first, whatever per cent they
   * leave; empty where no list has the thread.
   */
  List<ListedDrill> listed(ScrewThread thread);

  /**
   * Returns the per cent of thread usually asked in a material, in usual work, with where that
   * comes from. For a material that no table has, it is the figure for most work, and the source
   * says so. For a blank material it is that of wall charts.
   */
  default PercentWanted usualPercent(String material) {
    return usualPercent(material, ThreadDepth.USUAL);
  }

  /**
   * Returns the per cent of thread usually asked in a material at a depth: the middle of the range
   * that the source gives. Where no table has the depth, it is that for usual work, and the source
   * says so.
   */
  PercentWanted usualPercent(String material, ThreadDepth depth);

  /**
   * Chooses the smallest drill at hand that is not below the hole listed for a fit, for each fit
   * the thread has a listed hole for, closest fit first; a fit no drill at hand can make is left
   * out. Where no list has a close hole for the size (the British lists give one hole a size, which
   * stands as medium), the close choice is the smallest drill above the major diameter, and its
   * source says that there is no list. A medium or free hole is never made up.
   */
  List<ClearanceChoice> clearance(ScrewThread thread, Collection<DrillSize> from);

  /**
   * Works out the depths of a blind tapped hole: shoulder = full thread + lead of the tap + chip
   * room; point = d / 2 / tan(angle / 2).
   */
  BlindHole blindHole(BlindHoleRequest request);

  /**
   * A per cent of thread and where it comes from.
   *
   * @param percent of thread, above 0 to 100
   * @param source of the habit
   * @param untold whether nobody told a per cent or a material, so that it is that of wall charts
   */
  record PercentWanted(double percent, Source source, boolean untold) {
    /** Makes a per cent that was told, or is usual in a material that was told. */
    public PercentWanted(double percent, Source source) {
      this(percent, source, false);
    }

    /**
     * Checks the range.
     *
     * @throws MeasureException if the per cent is outside above 0 to 100
     */
    public PercentWanted {
      if (!(percent > 0 && percent <= 100)) {
        throw new MeasureException(percent + " per cent of thread is outside above 0 to 100");
      }
    }
  }

  /**
   * What a blind hole must be.
   *
   * @param thread the thread
   * @param drill tapping drill
   * @param fullThread depth of full thread from the face, above nothing
   * @param metal thickness of metal from the face to whatever lies below, above nothing
   * @param lead of the last tap used
   * @param pointAngleDegrees of the drill, above 0 to 180 (flat), usually 118
   */
  record BlindHoleRequest(
      ScrewThread thread,
      DrillSize drill,
      Length fullThread,
      Length metal,
      TapLead lead,
      double pointAngleDegrees) {
    /**
     * Checks the ranges.
     *
     * @throws MeasureException naming the figure that is outside
     */
    public BlindHoleRequest {
      if (!fullThread.isPositive()) {
        throw new MeasureException("depth of full thread " + fullThread + " must be above 0 mm");
      }
      if (!metal.isPositive()) {
        throw new MeasureException("thickness of metal " + metal + " must be above 0 mm");
      }
      if (!(pointAngleDegrees > 0 && pointAngleDegrees <= 180)) {
        throw new MeasureException(
            "point angle " + pointAngleDegrees + " degrees is outside above 0 to 180");
      }
    }
  }
}
