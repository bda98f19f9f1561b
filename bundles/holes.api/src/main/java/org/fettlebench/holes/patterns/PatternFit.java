package org.fettlebench.holes.patterns;

import java.util.List;
import org.fettlebench.measure.Point;

/**
 * How measured holes go together.
 *
 * @param question what was measured
 * @param goes whether every fastener enters
 * @param movement of the lower part that leaves most room at the worst hole
 * @param holes every hole with the lower part moved so
 * @param cures when it does not go, the least that would make it go, best first; else empty
 * @param mirroredGoes whether it would go if one part had been read from its other side
 */
public record PatternFit(
    MeasuredPattern question,
    boolean goes,
    Movement movement,
    List<HoleFit> holes,
    List<Cure> cures,
    boolean mirroredGoes) {
  /** Copies what could change. */
  public PatternFit {
    holes = List.copyOf(holes);
    cures = List.copyOf(cures);
  }

  /** Returns the room at the worst hole, a radius; negative when it does not go. */
  public double roomMm() {
    return holes.stream().mapToDouble(HoleFit::roomMm).min().orElse(0);
  }

  /**
   * A rigid movement of the lower part: turned about a place, then shifted.
   *
   * @param about the middle of the lower part's holes as measured
   * @param turnDegrees anticlockwise
   * @param shiftXMm to the right
   * @param shiftYMm away from the reader
   * @param holesOn by how many holes of the circle it is turned on, before the turn above: lower
   *     hole i + holesOn lies at upper hole i
   */
  public record Movement(
      Point about, double turnDegrees, double shiftXMm, double shiftYMm, int holesOn) {}

  /**
   * A pair of holes.
   *
   * @param upperNumber of the upper hole, from 1
   * @param lowerNumber of the lower hole, from 1
   * @param upper centre of the upper hole
   * @param lower centre of the lower hole, moved
   * @param apartMm distance between the two centres: a RADIUS of error, not the diameter of a zone
   * @param playMm how far they may lie apart
   * @param governs whether it is one of the holes that decide
   */
  public record HoleFit(
      int upperNumber,
      int lowerNumber,
      Point upper,
      Point lower,
      double apartMm,
      double playMm,
      boolean governs) {
    /** Returns what is left; negative when the fastener does not enter. */
    public double roomMm() {
      return playMm - apartMm;
    }
  }

  /**
   * Something that makes the parts go together, checked again with the holes so changed.
   *
   * @param part the part whose holes are opened
   * @param every whether all its holes are opened to one size, else those named
   * @param openings what is done to which hole
   * @param movement of the lower part that the cure goes with
   */
  public record Cure(String part, boolean every, List<Opening> openings, Movement movement) {
    /** Copies what could change. */
    public Cure {
      openings = List.copyOf(openings);
    }
  }

  /**
   * What is done to a hole: drilled larger about its own centre, or filed to one side only.
   *
   * @param number of the hole in its part, from 1
   * @param fromMm its diameter now
   * @param openToMm diameter that lets the fastener enter, about the same centre
   * @param fileMm how much to file off one side in place of that
   * @param fileDegrees in which direction from the hole's centre, anticlockwise from x, on the part
   *     as it was measured
   */
  public record Opening(
      int number, double fromMm, double openToMm, double fileMm, double fileDegrees) {}
}
