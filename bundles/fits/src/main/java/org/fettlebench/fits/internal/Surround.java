package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.fettlebench.drawing.Item.Side;
import org.fettlebench.fits.Seat;
import org.fettlebench.measure.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * The paper round a seat: how far what is drawn reaches to each side, and how much paper beyond
 * that is taken by words and dimensions. Words keep their size on paper, so only places counted in
 * paper keep them apart at every scale.
 */
final class Surround {
  /** Between one dimension line and the next, mm of paper. */
  static final double STEP_MM = 7.5;

  /** Height of a line of words with its gap, mm of paper. */
  private static final double LINE_MM = 6;

  /** Width of a letter, mm of paper. */
  private static final double LETTER_MM = 2.1;

  /** Between words and their place, mm of paper. */
  private static final double GAP_MM = 2;

  /** Size of the drawn on a usual sheet, mm: a guess, to tell what words will stand beside. */
  private static final double SHEET_MM = 100;

  /** Corners for which a circle counts. */
  private static final int CORNERS = 24;

  private final Envelope flat;
  private final Envelope drawn;
  private final List<List<Point>> lines = new ArrayList<>();
  private final Map<Side, Double> taken = new EnumMap<>(Side.class);

  /**
   * Starts with the flat and the head.
   *
   * @param headReachMm how far what is drawn of the head reaches from the intended centre
   */
  Surround(Seat seat, double headReachMm) {
    flat = AllowedCentres.polygon(seat.outline().points()).getEnvelopeInternal();
    drawn = new Envelope(flat);
    Envelope round = new Envelope(new Coordinate(seat.intended().xMm(), seat.intended().yMm()));
    round.expandBy(headReachMm);
    drawn.expandToInclude(round);
    closed(seat.outline().points());
    Point at = seat.intended();
    lines.add(List.of(at.moved(0, -headReachMm), at.moved(0, headReachMm)));
    lines.add(List.of(at.moved(-headReachMm, 0), at.moved(headReachMm, 0)));
  }

  private void closed(List<Point> corners) {
    List<Point> ring = new ArrayList<>(corners);
    ring.add(corners.get(0));
    lines.add(ring);
  }

  /** Takes up something more that is drawn. */
  void drawn(List<Point> corners) {
    closed(corners);
    corners.forEach(at -> drawn.expandToInclude(new Coordinate(at.xMm(), at.yMm())));
  }

  /** Returns how far the drawn reaches to a side: an x or a y. */
  double reach(Side side) {
    return switch (side) {
      case LEFT -> drawn.getMinX();
      case RIGHT -> drawn.getMaxX();
      case BELOW -> drawn.getMinY();
      default -> drawn.getMaxY();
    };
  }

  /** Takes up a circle that is drawn. */
  void round(Point centre, double radiusMm) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < CORNERS; i++) {
      double turn = 2 * Math.PI * i / CORNERS;
      corners.add(centre.moved(radiusMm * Math.cos(turn), radiusMm * Math.sin(turn)));
    }
    drawn(corners);
  }

  /**
   * Returns the place beyond all that is drawn about a place, for words that stand on a side of it.
   *
   * @param near the place the words belong to
   * @param words what is said, whose width is guessed
   */
  Point clear(Side side, Point near, String words) {
    double mm = Math.max(drawn.getWidth(), drawn.getHeight()) / SHEET_MM;
    boolean upright = upright(side);
    double half = mm * (upright ? LETTER_MM * words.length() : LINE_MM) / 2;
    double at = upright ? near.xMm() : near.yMm();
    double way = side == Side.ABOVE || side == Side.RIGHT ? 1 : -1;
    double far = way * (upright ? near.yMm() : near.xMm());
    for (List<Point> line : lines) {
      for (int i = 0; i + 1 < line.size(); i++) {
        far =
            Math.max(
                far,
                farthest(
                    turned(line.get(i), upright, way),
                    turned(line.get(i + 1), upright, way),
                    at - half,
                    at + half));
      }
    }
    return upright ? new Point(near.xMm(), way * far) : new Point(way * far, near.yMm());
  }

  /** Returns whether words on a side of a place reach beyond the flat, as far as guessed. */
  boolean beyond(Side side, Point at, String words) {
    double mm = Math.max(drawn.getWidth(), drawn.getHeight()) / SHEET_MM;
    double length = mm * (LETTER_MM * words.length() + GAP_MM);
    return switch (side) {
      case RIGHT -> at.xMm() + length > flat.getMaxX();
      case LEFT -> at.xMm() - length < flat.getMinX();
      case ABOVE -> at.yMm() + mm * LINE_MM > flat.getMaxY() || past(at, length / 2);
      default -> at.yMm() - mm * LINE_MM < flat.getMinY() || past(at, length / 2);
    };
  }

  private boolean past(Point at, double half) {
    return at.xMm() + half > flat.getMaxX() || at.xMm() - half < flat.getMinX();
  }

  /** Returns a place as along and out. */
  private static Point turned(Point at, boolean upright, double way) {
    return upright ? new Point(at.xMm(), way * at.yMm()) : new Point(at.yMm(), way * at.xMm());
  }

  /** Returns how far out a line reaches between two places along; far in when it is not there. */
  private static double farthest(Point a, Point b, double least, double most) {
    Point from = a.xMm() <= b.xMm() ? a : b;
    Point to = from == a ? b : a;
    double begin = Math.max(least, from.xMm());
    double end = Math.min(most, to.xMm());
    if (begin > end) {
      return Double.NEGATIVE_INFINITY;
    }
    double run = to.xMm() - from.xMm();
    if (!(run > 0)) {
      return Math.max(from.yMm(), to.yMm());
    }
    double slope = (to.yMm() - from.yMm()) / run;
    return from.yMm() + Math.max(slope * (begin - from.xMm()), slope * (end - from.xMm()));
  }

  /** Notes that words stand on a side. */
  void words(Side side, String words) {
    boolean beside = side == Side.LEFT || side == Side.RIGHT;
    take(side, beside ? LETTER_MM * words.length() + 3 : LINE_MM);
  }

  /** Takes so many millimetres of paper more on a side. */
  void take(Side side, double paperMm) {
    taken.merge(side, paperMm, Double::sum);
  }

  double taken(Side side) {
    return taken.getOrDefault(side, 0.0);
  }

  /** Returns the side of two on which less is taken; the first when both are alike. */
  Side freer(Side first, Side second) {
    return taken(second) < taken(first) ? second : first;
  }

  static Side opposite(Side side) {
    return switch (side) {
      case LEFT -> Side.RIGHT;
      case RIGHT -> Side.LEFT;
      case ABOVE -> Side.BELOW;
      case BELOW -> Side.ABOVE;
      case CENTRE -> Side.CENTRE;
    };
  }

  static boolean upright(Side side) {
    return side == Side.ABOVE || side == Side.BELOW;
  }
}
