package org.fettlebench.holes.otherface;

import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.holes.correct.ExpectedError;
import org.fettlebench.measure.Point;

/**
 * A hole is drilled from the far face, square to it, and must come out right on the upper one:
 * where is it marked? All places are as seen from above before the part is turned, from one datum.
 * Both faces count as parallel.
 *
 * @param name of the part or the place, for people
 * @param target where the hole's centre must be on the upper face
 * @param hole the hole to drill
 * @param faces outlines of both faces
 * @param turn how the part is turned over
 * @param chosen numbers of two edges of the far face to mark from, counted from 1: edge n runs from
 *     corner n to the next; empty to have them chosen
 * @param seat the seat above with its head; empty when nothing bears there
 */
public record MarkQuestion(
    String name,
    Point target,
    Hole hole,
    Faces faces,
    Turn turn,
    List<Integer> chosen,
    Optional<SeatQuestion> seat) {
  /** Copies what could change. */
  public MarkQuestion {
    chosen = List.copyOf(chosen);
  }

  /**
   * The hole to drill.
   *
   * @param diameterMm the drill that comes out above; above 0
   * @param depthMm from the far face up to the upper one; above 0
   * @param marking how far the hole may be out where it is marked
   * @param lead how far the drill may wander per millimetre of depth: a radius per length, 0 or
   *     more
   * @param leadMeans where that figure comes from
   */
  public record Hole(
      double diameterMm, double depthMm, ExpectedError marking, double lead, String leadMeans) {
    /** Returns how far the drill may have wandered where it comes out, as a radius. */
    public double wanderMm() {
      return lead * depthMm;
    }

    /** Returns the radius of position error to be expected above: marking and wander added. */
    public double errorAboveMm() {
      return marking.radiusMm() + wanderMm();
    }
  }

  /**
   * Outlines of both faces; an arc is no edge to mark from.
   *
   * @param upper of the face where the hole must come out
   * @param far of the face that is drilled
   */
  public record Faces(Outline upper, Outline far) {
    /** Takes faces with straight edges by their corners in order, either way round. */
    public Faces(List<Point> upper, List<Point> far) {
      this(Outline.of(upper), Outline.of(far));
    }
  }
}
