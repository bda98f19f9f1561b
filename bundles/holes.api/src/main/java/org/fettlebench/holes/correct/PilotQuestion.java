package org.fettlebench.holes.correct;

import java.util.List;

/**
 * Which drill first, so that a hole that lands wrong can still be filed to its place?
 *
 * @param finishDiameterMm the hole in the end; above 0
 * @param cleanUp metal that the last drill must find on every side
 * @param expected how far the hole may be out, placed as intended
 * @param held drills at hand, in any order
 * @param catalogue drills that can be bought, in any order
 * @param otherMethods other ways of placing the hole, least careful first
 */
public record PilotQuestion(
    double finishDiameterMm,
    CleanUp cleanUp,
    ExpectedError expected,
    List<Cutter> held,
    List<Cutter> catalogue,
    List<ExpectedError> otherMethods) {
  /**
   * Copies what could change.
   *
   * @throws HoleException if the finished diameter is not above 0
   */
  public PilotQuestion {
    Require.positive("finished diameter", finishDiameterMm);
    held = List.copyOf(held);
    catalogue = List.copyOf(catalogue);
    otherMethods = List.copyOf(otherMethods);
  }
}
