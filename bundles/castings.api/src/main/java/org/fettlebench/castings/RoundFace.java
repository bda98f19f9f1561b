package org.fettlebench.castings;

import java.util.List;

/**
 * A bore in the metal or a boss round it, its axis along one of the frame when finished.
 *
 * @param name for people, such as "crosshead bore"
 * @param kind bore or boss
 * @param along its axis
 * @param finishedCentre a point of its axis on the drawing
 * @param finishedDiameterMm on the drawing
 * @param leastCutMm the least cut per side that cleans it up, 0 or more
 * @param rough what was measured of the rough one, at one place along the axis or more
 * @param uncertaintyMm how far its rough skin may lie from what was measured
 */
public record RoundFace(
    String name,
    Kind kind,
    Axis along,
    Spot finishedCentre,
    double finishedDiameterMm,
    double leastCutMm,
    List<Rough> rough,
    double uncertaintyMm)
    implements Feature {
  /**
   * Checks the bore or boss.
   *
   * @throws CastingException if a figure is out of range or nothing was measured
   */
  public RoundFace {
    name = Require.name("a bore or boss", name);
    Require.size(name + ": finished diameter", finishedDiameterMm);
    Require.notNegative(name + ": least cut", leastCutMm);
    Require.notNegative(name + ": uncertainty", uncertaintyMm);
    rough = List.copyOf(rough);
    if (rough.isEmpty()) {
      throw new CastingException(
          name + ": nothing was measured; give centre and diameter of the rough one");
    }
  }

  /** Returns the same with another finished diameter. */
  public RoundFace finishedAt(double diameterMm) {
    return new RoundFace(
        name, kind, along, finishedCentre, diameterMm, leastCutMm, rough, uncertaintyMm);
  }

  /** Whether metal lies round it or inside it. */
  public enum Kind {
    /** A hole: cut larger. */
    BORE("bore"),
    /** An outside: turned smaller. */
    BOSS("boss");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** Returns the word for it. */
    public String word() {
      return word;
    }
  }

  /**
   * The rough one at a place along its axis.
   *
   * @param centre its centre there
   * @param diameterMm its diameter there; 0 for a bore that is not cored
   */
  public record Rough(Spot centre, double diameterMm) {
    /**
     * Checks the diameter.
     *
     * @throws CastingException if it is below nothing or no number
     */
    public Rough {
      Require.notNegative("rough diameter", diameterMm);
    }
  }
}
