package org.fettlebench.tooling;

import java.util.Collection;
import java.util.List;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;
import org.fettlebench.threads.ScrewThread;
import org.osgi.annotation.versioning.ProviderType;

/** Chooses drills for a thread out of those at hand, and depths for a blind hole. */
@ProviderType
public interface HoleChooser {
  /**
   * Ranks drills as tapping drills by closeness to the asked per cent of thread. Drills that leave
   * less than 20 per cent, or are below the minor diameter so far that a tap would jam, are left
   * out.
   *
   * @param thread the thread to tap
   * @param wantedPercent per cent of thread wanted, above 0 to 100
   * @param from drills at hand, or the whole catalogue
   */
  List<TappingChoice> tapping(ScrewThread thread, double wantedPercent, Collection<DrillSize> from);

  /** Returns the per cent of thread usually asked in a material, with where that comes from. */
  PercentWanted usualPercent(String material);

  /**
   * Chooses the smallest drill at hand that is not below the hole listed for a fit, for each fit
   * the thread has a listed hole for; a fit no drill at hand can make is left out.
   */
  List<ClearanceChoice> clearance(ScrewThread thread, Collection<DrillSize> from);

  /** Works out the depths of a blind tapped hole. */
  BlindHole blindHole(BlindHoleRequest request);

  /**
   * A per cent of thread and where it comes from.
   *
   * @param percent of thread
   * @param source of the habit
   */
  record PercentWanted(double percent, Source source) {}

  /**
   * What a blind hole must be.
   *
   * @param thread the thread
   * @param drill tapping drill
   * @param fullThread depth of full thread from the face
   * @param metal thickness of metal from the face to whatever lies below
   * @param lead of the last tap used
   * @param pointAngleDegrees of the drill, usually 118
   */
  record BlindHoleRequest(
      ScrewThread thread,
      DrillSize drill,
      Length fullThread,
      Length metal,
      TapLead lead,
      double pointAngleDegrees) {}
}
