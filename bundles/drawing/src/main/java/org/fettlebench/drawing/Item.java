package org.fettlebench.drawing;

import java.util.List;
import org.fettlebench.measure.Point;

/** One thing drawn. Co-ordinates are millimetres of the real thing. */
public sealed interface Item {

  /**
   * A line through points.
   *
   * @param line kind of line
   * @param points at least two
   * @param closed whether the last joins the first
   */
  record Path(LineKind line, List<Point> points, boolean closed) implements Item {
    /** Copies what could change. */
    public Path {
      points = List.copyOf(points);
    }
  }

  /**
   * A circle.
   *
   * @param line kind of line
   * @param centre its centre
   * @param radiusMm its radius
   */
  record Circle(LineKind line, Point centre, double radiusMm) implements Item {}

  /**
   * A filled area.
   *
   * @param tone what it stands for
   * @param shell outer boundary
   * @param holes inner boundaries
   */
  record Area(Tone tone, List<Point> shell, List<List<Point>> holes) implements Item {
    /** Copies what could change. */
    public Area {
      shell = List.copyOf(shell);
      holes = holes.stream().map(List::copyOf).toList();
    }
  }

  /**
   * A cross or dot of constant size on paper.
   *
   * @param at where
   * @param mark its shape
   */
  record Marker(Point at, Mark mark) implements Item {}

  /**
   * Words, of constant size on paper; a line break in them begins another line.
   *
   * @param at point of the drawing the words belong to
   * @param words the text
   * @param side where the words stand from that point
   * @param strong whether they are set heavier
   */
  record Label(Point at, String words, Side side, boolean strong) implements Item {}

  /**
   * A dimension from one point to another, with arrowheads, extension lines and its figure.
   *
   * @param from first point
   * @param to second point
   * @param offsetMm how far the dimension line stands off to the left of from-to, on paper
   * @param words the figure with its unit
   * @param strong whether it is the governing one
   */
  record Dimension(Point from, Point to, double offsetMm, String words, boolean strong)
      implements Item {}

  /** Shapes of marker. */
  enum Mark {
    /** Intended place: upright cross. */
    CROSS,
    /** Best place: ring with a dot. */
    RING,
    /** Measured place: diagonal cross. */
    SALTIRE,
    /** One of many measured places: small diagonal cross. */
    SPOT
  }

  /** Where words stand from their point. */
  enum Side {
    /** Centred on it. */
    CENTRE,
    /** Right of it. */
    RIGHT,
    /** Left of it. */
    LEFT,
    /** Above it. */
    ABOVE,
    /** Below it. */
    BELOW
  }
}
