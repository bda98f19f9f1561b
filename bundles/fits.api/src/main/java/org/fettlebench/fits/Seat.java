package org.fettlebench.fits;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.measure.Point;

/**
 * The flat on which a head, nut or washer bears, seen from above.
 *
 * @param name for people
 * @param outline the flat's edge, not crossing itself
 * @param underside outline of the far face when the sides taper in depth
 * @param walls what stands above the flat
 * @param cavities outlines of hollows below the flat
 * @param neighbours other heads that sit on the same flat
 * @param intended where the centre of the hole should be
 * @param leastMetalMm metal wanted around the hole, on both faces; 0 when not asked
 */
public record Seat(
    String name,
    Outline outline,
    Optional<Outline> underside,
    List<Wall> walls,
    List<Outline> cavities,
    List<Neighbour> neighbours,
    Point intended,
    double leastMetalMm) {
  /** Copies what could change. */
  public Seat {
    walls = List.copyOf(walls);
    cavities = List.copyOf(cavities);
    neighbours = List.copyOf(neighbours);
  }

  /** Makes a bare flat. */
  public static Seat flat(String name, Outline outline, Point intended) {
    return new Seat(name, outline, Optional.empty(), List.of(), List.of(), List.of(), intended, 0);
  }

  /** Returns the same seat under another name. */
  public Seat withName(String other) {
    return new Seat(other, outline, underside, walls, cavities, neighbours, intended, leastMetalMm);
  }

  /** Returns the same seat with another outline. */
  public Seat withOutline(Outline other) {
    return new Seat(name, other, underside, walls, cavities, neighbours, intended, leastMetalMm);
  }

  /** Returns the same seat with another far face; empty when it is like the upper one. */
  public Seat withUnderside(Optional<Outline> other) {
    return new Seat(name, outline, other, walls, cavities, neighbours, intended, leastMetalMm);
  }

  /** Returns the same seat with other walls. */
  public Seat withWalls(List<Wall> others) {
    return new Seat(name, outline, underside, others, cavities, neighbours, intended, leastMetalMm);
  }

  /** Returns the same seat with one wall, counted from 0, changed. */
  public Seat withWall(int index, Wall wall) {
    List<Wall> changed = new ArrayList<>(walls);
    changed.set(index, wall);
    return withWalls(changed);
  }

  /** Returns the same seat with one wall more. */
  public Seat withWallAdded(Wall wall) {
    List<Wall> changed = new ArrayList<>(walls);
    changed.add(wall);
    return withWalls(changed);
  }

  /** Returns the same seat with other hollows. */
  public Seat withCavities(List<Outline> others) {
    return new Seat(name, outline, underside, walls, others, neighbours, intended, leastMetalMm);
  }

  /** Returns the same seat with other heads beside. */
  public Seat withNeighbours(List<Neighbour> others) {
    return new Seat(name, outline, underside, walls, cavities, others, intended, leastMetalMm);
  }

  /** Returns the same seat with the hole intended elsewhere. */
  public Seat withIntended(Point centre) {
    return new Seat(name, outline, underside, walls, cavities, neighbours, centre, leastMetalMm);
  }

  /** Returns the same seat with other metal wanted round the hole, in millimetres. */
  public Seat withLeastMetal(double mm) {
    return new Seat(name, outline, underside, walls, cavities, neighbours, intended, mm);
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
   * @param heightMm how far it stands above the flat; taken as in the way of everything when empty
   */
  public record Neighbour(String name, Point centre, double radiusMm, OptionalDouble heightMm) {
    /** Makes a neighbour of unknown height. */
    public Neighbour(String name, Point centre, double radiusMm) {
      this(name, centre, radiusMm, OptionalDouble.empty());
    }
  }
}
