package org.fettlebench.castings;

import java.util.List;

/**
 * A flat face, square to an axis when finished.
 *
 * @param name for people, such as "foot"
 * @param towards which way it looks, out of the metal
 * @param finishedMm where it lies on the drawing, along its axis from the drawing's datum
 * @param leastCutMm the least cut that cleans it up, 0 or more
 * @param rough spots measured on the rough face; near its corners, since it is known there alone
 * @param uncertaintyMm how far a spot may lie from what was measured, square to the face
 */
public record FlatFace(
    String name,
    Towards towards,
    double finishedMm,
    double leastCutMm,
    List<Spot> rough,
    double uncertaintyMm)
    implements Feature {
  /**
   * Checks the face.
   *
   * @throws CastingException if a figure is out of range or nothing was measured
   */
  public FlatFace {
    name = Require.name("a face", name);
    Require.place(name + ": finished", finishedMm);
    Require.notNegative(name + ": least cut", leastCutMm);
    Require.notNegative(name + ": uncertainty", uncertaintyMm);
    rough = List.copyOf(rough);
    if (rough.isEmpty()) {
      throw new CastingException(name + ": nothing was measured; measure it near its corners");
    }
  }

  /** Returns the same face finished elsewhere. */
  public FlatFace finishedAt(double millimetres) {
    return new FlatFace(name, towards, millimetres, leastCutMm, rough, uncertaintyMm);
  }
}
