package org.fettlebench.fits.internal;

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

  private final Envelope drawn;
  private final Map<Side, Double> taken = new EnumMap<>(Side.class);

  /**
   * Starts with the flat and the head.
   *
   * @param headReachMm how far what is drawn of the head reaches from the intended centre
   */
  Surround(Seat seat, double headReachMm) {
    drawn = AllowedCentres.polygon(seat.outline().points()).getEnvelopeInternal();
    Envelope round = new Envelope(new Coordinate(seat.intended().xMm(), seat.intended().yMm()));
    round.expandBy(headReachMm);
    drawn.expandToInclude(round);
  }

  /** Takes up something more that is drawn. */
  void drawn(List<Point> corners) {
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
