package org.fettlebench.fits;

import java.util.List;
import org.fettlebench.measure.Point;

/**
 * What came of a seat question. All allowances are radii of position error.
 *
 * @param question what was asked
 * @param verdict in a word
 * @param allowed where the centre may be; empty when nowhere
 * @param best the centre farthest from every boundary; of equally good ones one close to the
 *     intended centre; when nowhere is allowed, the least bad one
 * @param allowanceAtBestMm how far the hole may be out from there; negative when nowhere is allowed
 * @param allowanceAtIntendedMm how far the hole may be out from the intended centre; when that
 *     fails already, less the distance to the nearest allowed centre (or, when nowhere is allowed,
 *     less the greatest lack of room)
 * @param governing the feature with the least room at the intended centre
 */
public record SeatAnswer(
    SeatQuestion question,
    Verdict verdict,
    List<Region> allowed,
    Point best,
    double allowanceAtBestMm,
    double allowanceAtIntendedMm,
    Governing governing) {
  /** Copies what could change. */
  public SeatAnswer {
    allowed = List.copyOf(allowed);
  }

  /**
   * A part of the plane.
   *
   * @param shell outer boundary
   * @param holes inner boundaries
   */
  public record Region(List<Point> shell, List<List<Point>> holes) {
    /** Copies what could change. */
    public Region {
      shell = List.copyOf(shell);
      holes = holes.stream().map(List::copyOf).toList();
    }
  }

  /**
   * The feature that leaves least room.
   *
   * @param kind what it is
   * @param name for people, such as "edge from corner 2 to corner 3" or "cylinder wall"
   * @param from one end of it
   * @param to other end of it; the same for a round one
   * @param nearest its point nearest to the intended centre
   * @param distanceMm from the intended centre to that point; negative when the centre lies on the
   *     wrong side of it: off the flat, or over the hollow
   * @param neededMm what the head or the metal needs there; {@code distanceMm - neededMm} is the
   *     room that is left
   */
  public record Governing(
      Kind kind,
      String name,
      Point from,
      Point to,
      Point nearest,
      double distanceMm,
      double neededMm) {
    /** Kinds of feature. */
    public enum Kind {
      /** An edge of the flat. */
      EDGE,
      /** A wall above the flat. */
      WALL,
      /** Metal between hole and edge on the upper face. */
      METAL,
      /** Metal between hole and edge on the far face. */
      METAL_BELOW,
      /** A hollow below the flat. */
      CAVITY,
      /** Another head. */
      NEIGHBOUR
    }
  }
}
