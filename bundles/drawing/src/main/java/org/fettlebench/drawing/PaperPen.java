package org.fettlebench.drawing;

import java.util.List;
import org.fettlebench.measure.Point;
import org.osgi.annotation.versioning.ConsumerType;

/**
 * What a {@link Plotter} draws with. Places are millimetres of paper from the left top of the
 * sheet, x to the right, y down. The pen chooses widths, dashes and shades by what is drawn.
 */
@ConsumerType
public interface PaperPen {
  /** Draws a line through points; the last joins the first when closed. */
  void line(LineKind kind, List<Point> points, boolean closed);

  /** Draws a circle. */
  void circle(LineKind kind, Point centre, double radiusMm);

  /** Fills an area: its outer boundary, then its holes. */
  void fill(Tone tone, List<List<Point>> rings);

  /** Draws a stroke of a marker, heavier than a thin line. */
  void mark(List<Point> points);

  /** Draws the ring of a marker. */
  void markRing(Point centre, double radiusMm);

  /** Fills a dot of a marker. */
  void dot(Point centre, double radiusMm);

  /** Fills an arrowhead. */
  void arrow(List<Point> points);

  /**
   * Says whether the lines and arrowheads that follow belong to what governs, for pens that draw
   * those heavier.
   */
  default void emphasis(boolean governs) {}

  /** Writes words. */
  void words(Words words);

  /**
   * Words on paper.
   *
   * @param at where they stand: on their foot line, at their start, middle or end
   * @param degrees turn, clockwise
   * @param hold which point of them stands there
   * @param text what they say
   * @param strong whether they are set heavier
   */
  record Words(Point at, double degrees, Hold hold, String text, boolean strong) {}

  /** Which point of words stands at their place. */
  enum Hold {
    /** Their start. */
    START,
    /** Their middle. */
    MIDDLE,
    /** Their end. */
    END
  }
}
