package org.fettlebench.tooling;

import java.util.List;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;

/**
 * Depths of a blind tapped hole, all from the face.
 *
 * @param fullThread depth of full thread asked
 * @param tapLead length of the incomplete threads that the tap's lead leaves
 * @param chipRoom room left below for chips
 * @param shoulder depth of drilling to the drill's shoulder: the sum of the three
 * @param pointLength length of the drill's point
 * @param drillTip depth of the drill's tip: shoulder and point
 * @param left metal left below the tip; negative when it breaks through
 * @param concerns an error for break-through, a warning for a thin floor; in words
 * @param breaksThrough whether the drill's tip reaches the far side
 * @param sources of the allowances used: lead, chip room, thin floor
 */
public record BlindHole(
    Length fullThread,
    Length tapLead,
    Length chipRoom,
    Length shoulder,
    Length pointLength,
    Length drillTip,
    Length left,
    List<String> concerns,
    boolean breaksThrough,
    List<Source> sources) {
  /** Copies what could change. */
  public BlindHole {
    concerns = List.copyOf(concerns);
    sources = List.copyOf(sources);
  }

  /** Makes a hole without sources of its allowances. */
  @SuppressWarnings("checkstyle:ParameterNumber")
  public BlindHole(
      Length fullThread,
      Length tapLead,
      Length chipRoom,
      Length shoulder,
      Length pointLength,
      Length drillTip,
      Length left,
      List<String> concerns,
      boolean breaksThrough) {
    this(
        fullThread,
        tapLead,
        chipRoom,
        shoulder,
        pointLength,
        drillTip,
        left,
        concerns,
        breaksThrough,
        List.of());
  }
}
