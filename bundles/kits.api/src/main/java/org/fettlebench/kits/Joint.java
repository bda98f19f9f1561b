package org.fettlebench.kits;

import java.util.Optional;
import org.fettlebench.fits.Seat;
import org.fettlebench.measure.Length;
import org.fettlebench.tooling.ClearanceFit;
import org.fettlebench.tooling.TapLead;

/**
 * A place where a fastener goes: what it passes through, what it screws into, what it sits on.
 *
 * @param name unique within the kit
 * @param part the part it belongs to
 * @param count how many equal fasteners
 * @param fastener what the kit means to be used
 * @param clearance the plain hole it passes through, if any
 * @param tapped the threaded hole it screws into, if any
 * @param seat the flat the head sits on, if it was measured
 * @param method id of the way in which the hole will be placed; needed where there is a seat
 * @param holdsPressure whether the joint holds steam or other pressure
 * @param note for people; may be empty
 * @param line where the joint stands in its file, from 1
 */
public record Joint(
    String name,
    String part,
    int count,
    Fastener fastener,
    Optional<ClearanceHole> clearance,
    Optional<TappedHole> tapped,
    Optional<Seat> seat,
    Optional<String> method,
    boolean holdsPressure,
    String note,
    int line) {

  /**
   * A plain hole.
   *
   * @param fit wanted
   * @param depth thickness of what is passed through
   * @param drilled diameter when it is already there
   */
  public record ClearanceHole(ClearanceFit fit, Optional<Length> depth, Optional<Length> drilled) {}

  /**
   * A threaded hole.
   *
   * @param material tapped
   * @param fullThread depth of full thread wanted
   * @param metal thickness of metal from the face, when the hole must stay blind
   * @param lead of the last tap that reaches the thread's end
   * @param percent of thread wanted; empty takes the usual one for the material
   * @param drilled diameter when it is already there
   */
  public record TappedHole(
      String material,
      Length fullThread,
      Optional<Length> metal,
      TapLead lead,
      Optional<Double> percent,
      Optional<Length> drilled) {}
}
