package org.fettlebench.fits;

import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Point;

/**
 * The flat on which a head, nut or washer bears, seen from above.
 *
 * @param name for people
 * @param outline corners in order, either way round, not crossing; at least three
 * @param underside outline of the far face when the sides taper in depth
 * @param walls what stands above the flat
 * @param cavities outlines of hollows below the flat
 * @param neighbours other heads that sit on the same flat
 * @param intended where the centre of the hole should be
 * @param leastMetalMm metal wanted around the hole, on both faces; 0 when not asked
 */
public record Seat(
    String name,
    List<Point> outline,
    Optional<List<Point>> underside,
    List<Wall> walls,
    List<List<Point>> cavities,
    List<Neighbour> neighbours,
    Point intended,
    double leastMetalMm) {
  /** Copies what could change. */
  public Seat {
    outline = List.copyOf(outline);
    underside = underside.map(List::copyOf);
    walls = List.copyOf(walls);
    cavities = cavities.stream().map(List::copyOf).toList();
    neighbours = List.copyOf(neighbours);
  }

  /**
   * Something that stands above the flat along a line.
   *
   * @param name for people, such as "cylinder wall"
   * @param from one end of its foot
   * @param to other end of its foot
   * @param heightMm how far it stands above the flat
   * @param filletRadiusMm radius at its foot; 0 for a sharp corner
   */
  public record Wall(String name, Point from, Point to, double heightMm, double filletRadiusMm) {}

  /**
   * Another head that sits on the same flat.
   *
   * @param name for people
   * @param centre its centre
   * @param radiusMm the circle that it sweeps
   */
  public record Neighbour(String name, Point centre, double radiusMm) {}
}
