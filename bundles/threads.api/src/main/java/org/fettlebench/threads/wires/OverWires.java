package org.fettlebench.threads.wires;

import java.util.List;
import org.fettlebench.measure.Length;

/**
 * A measurement over three wires and the effective diameter that belongs to it.
 *
 * @param wire diameter of each wire
 * @param overWires size measured over the wires
 * @param effective effective diameter, helix correction included
 * @param helixCorrection by how much the helix makes {@code overWires} larger than the plain
 *     formula; never negative
 * @param notes assumptions, to be shown with the figures
 */
public record OverWires(
    Length wire, Length overWires, Length effective, Length helixCorrection, List<String> notes) {
  /** Copies what could change. */
  public OverWires {
    notes = List.copyOf(notes);
  }

  /**
   * Returns the measurement that the plain formula gives for the effective diameter, without the
   * helix: handbooks print it so.
   */
  public Length plainOverWires() {
    return overWires.minus(helixCorrection);
  }

  /** Returns the effective diameter that the plain formula gives for the measurement. */
  public Length plainEffective() {
    return effective.plus(helixCorrection);
  }
}
