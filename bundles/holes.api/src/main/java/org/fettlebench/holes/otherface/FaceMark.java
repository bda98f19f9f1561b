package org.fettlebench.holes.otherface;

import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.measure.Point;

/**
 * Where to mark the far face, as seen with that face towards the person. Places keep the datum: in
 * {@link Turn#SIDEWAYS} what was to its right is now to its left.
 *
 * @param question what was asked
 * @param mark the place to mark
 * @param face outline of the far face as seen, its arcs broken into chords
 * @param upper outline of the upper face as it would be seen through the part, likewise
 * @param distances from all edges that can be measured from, the best to mark from first
 * @param pair the two to mark from
 * @param slips how many times a slip of setting or of the square counts at the mark, root of the
 *     sum of squares: least for near edges that cross squarely and are long enough to bear on
 * @param metalMm metal left between the hole and the nearest edge of the far face; negative when
 *     the hole breaks out
 * @param above the seat with the error to be expected above; present when the question has a seat
 * @param cautions what to look out for, for people
 */
public record FaceMark(
    MarkQuestion question,
    Point mark,
    List<Point> face,
    List<Point> upper,
    List<EdgeDistance> distances,
    List<EdgeDistance> pair,
    double slips,
    double metalMm,
    Optional<SeatAnswer> above,
    List<String> cautions) {
  /** Copies what could change. */
  public FaceMark {
    face = List.copyOf(face);
    upper = List.copyOf(upper);
    distances = List.copyOf(distances);
    pair = List.copyOf(pair);
    cautions = List.copyOf(cautions);
  }

  /**
   * Distance of the mark from an edge, square to the edge.
   *
   * @param edge number of the edge, from 1: it runs from the corner of that number to the next
   * @param name for people, by the side where it is seen: {@code left-hand edge, corner 4 to 1}
   * @param start its first corner as seen
   * @param end its second corner as seen
   * @param foot the point of the edge opposite the mark
   * @param distanceMm from there to the mark
   * @param endRoomMm from there to the nearer end of the edge: what the square or the calliper's
   *     jaw has to bear on
   */
  public record EdgeDistance(
      int edge,
      String name,
      Point start,
      Point end,
      Point foot,
      double distanceMm,
      double endRoomMm) {}
}
